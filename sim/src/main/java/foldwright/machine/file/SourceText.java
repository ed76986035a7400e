// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The text of a machine file and the place of each of its characters.
 *
 * @param name name of the file as given
 * @param text its characters, without a byte order mark
 */
record SourceText(String name, String text) {
    private static final int LARGEST = 4 * 1024 * 1024;

    /** Reads a file as UTF-8. */
    static SourceText read(Path file) throws BadMachineFile {
        String name = file.toString();
        try {
            if (Files.isDirectory(file)) {
                throw whole(name, ProblemCode.CANNOT_READ, "is a folder", "a machine file");
            }
            try (InputStream in = Files.newInputStream(file)) {
                return decode(name, in.readNBytes(LARGEST + 1));
            }
        } catch (NoSuchFileException e) {
            throw whole(name, ProblemCode.CANNOT_READ, "no such file", "");
        } catch (AccessDeniedException e) {
            throw whole(name, ProblemCode.CANNOT_READ, "you may not read this file", "");
        } catch (IOException e) {
            throw whole(name, ProblemCode.CANNOT_READ, "cannot be read", "");
        }
    }

    /** Decodes the bytes of a file. */
    static SourceText decode(String name, byte[] bytes) throws BadMachineFile {
        if (bytes.length > LARGEST) {
            throw whole(name, ProblemCode.TOO_LARGE, "larger than 4 MB", "a machine file");
        }
        String utf = "UTF-8 text; choose UTF-8 where the editor saves the file";
        if (startsWith(bytes, 0xFE, 0xFF) || startsWith(bytes, 0xFF, 0xFE)) {
            throw whole(name, ProblemCode.WRONG_ENCODING, "UTF-16 text", utf);
        }
        int skip = startsWith(bytes, 0xEF, 0xBB, 0xBF) ? 3 : 0;
        for (int i = 0; i < bytes.length; i++) {
            if (bytes[i] == 0) {
                String found = "byte 0 at position " + i + ": not a text file";
                throw whole(name, ProblemCode.BINARY, found, "UTF-8 text");
            }
        }
        CharsetDecoder decoder =
                StandardCharsets.UTF_8
                        .newDecoder()
                        .onMalformedInput(CodingErrorAction.REPORT)
                        .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes, skip, bytes.length - skip);
        CharBuffer out = CharBuffer.allocate(bytes.length);
        CoderResult result = decoder.decode(in, out, true);
        SourceText source = new SourceText(name, out.flip().toString());
        if (result.isError()) {
            int wrong = bytes[in.position()] & 0xFF;
            String found = String.format(Locale.ROOT, "byte 0x%02X is not UTF-8", wrong);
            Place place = source.place(source.text.length());
            throw one(ProblemCode.WRONG_ENCODING, place, found, utf);
        }
        return source;
    }

    private static boolean startsWith(byte[] bytes, int... start) {
        boolean same = bytes.length >= start.length;
        for (int i = 0; same && i < start.length; i++) {
            same = (bytes[i] & 0xFF) == start[i];
        }
        return same;
    }

    private static BadMachineFile whole(
            String name, ProblemCode code, String found, String allowed) {
        return one(code, new Place(name, 0, 0), found, allowed);
    }

    private static BadMachineFile one(ProblemCode code, Place place, String found, String allowed) {
        return new BadMachineFile(
                List.of(new Problem(code, place, "", found, allowed, Optional.empty())));
    }

    /** Line and column of an offset; columns count characters, not bytes. */
    Place place(int offset) {
        int line = 1;
        int lineStart = 0;
        int end = Math.max(0, Math.min(offset, text.length()));
        for (int i = 0; i < end; i++) {
            char c = text.charAt(i);
            boolean pair = c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n';
            if ((c == '\n' || c == '\r') && !pair) {
                line++;
                lineStart = i + 1;
            }
        }
        return new Place(name, line, text.codePointCount(lineStart, end) + 1);
    }
}
