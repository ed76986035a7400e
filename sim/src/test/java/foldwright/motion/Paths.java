// SPDX-License-Identifier: Apache-2.0
package foldwright.motion;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Toolpaths given as text, read whole: for tests only. */
final class Paths {
    private Paths() {}

    static IsoReader reader(String text) {
        return reader(text, ReaderSettings.standard());
    }

    static IsoReader reader(String text, ReaderSettings settings) {
        return new IsoReader(
                new ByteArrayInputStream(text.getBytes(StandardCharsets.ISO_8859_1)), settings);
    }

    static List<Move> read(String text) throws ToolpathException {
        return all(reader(text));
    }

    static List<Move> all(MoveSource source) throws ToolpathException {
        List<Move> moves = new ArrayList<>();
        Move move = new Move();
        while (source.next(move)) {
            Move copy = new Move();
            copy.copyFrom(move);
            moves.add(copy);
        }
        return moves;
    }
}
