// SPDX-License-Identifier: Apache-2.0
package foldwright.motion;

import foldwright.motion.Codes.Meaning;
import foldwright.motion.ToolpathException.Fault;

/**
 * What the codes of one line may not be together, by the modal groups of NISTIR 6556, tables 4 to
 * 6.
 */
final class LineRules {
    private static final int MOST_M = 4;

    private LineRules() {}

    /**
     * Checks a line before anything of it is carried out.
     *
     * @throws ToolpathException where a code is not read or two contradict each other
     */
    static void check(Words words, ByteLines lines) throws ToolpathException {
        int seen = 0;
        for (int i = 0; i < words.gCount(); i++) {
            int code = words.g(i);
            Meaning meaning = Codes.of(code);
            if (meaning == Meaning.REFUSED) {
                throw lines.fault(
                        Fault.OUTSIDE_SUBSET,
                        Codes.name('G', code)
                                + ", which changes the path in a way that is not read",
                        "G0 to G4, G17 to G21, G28, G90 to G92");
            }
            int group = meaning.group;
            if (group != 0 && (seen & 1 << group) != 0) {
                throw lines.fault(
                        Fault.SAME_GROUP,
                        Codes.name('G', code) + " beside another of its group",
                        "one of a group a line");
            }
            seen |= 1 << group;
        }
        if (words.mCount() > MOST_M) {
            throw lines.fault(Fault.TOO_MANY_WORDS, "more than four M words", "at most four");
        }
        boolean moved = words.means(Meaning.MOTION) && words.hasAny(Words.AXES);
        if (moved && (words.means(Meaning.HOME) || words.means(Meaning.OFFSET))) {
            throw lines.fault(
                    Fault.SAME_GROUP,
                    "a move and a code that both use the axis words",
                    "one of them a line");
        }
    }
}
