// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import java.util.ArrayList;
import java.util.List;

/**
 * Sentences for a terminal, broken between words. The launcher says how wide the terminal is in
 * {@code COLUMNS}; without it lines are 100 wide, which most windows and all logs have.
 *
 * @param width widest line [characters]
 */
record Prose(int width) {
    private static final int USUAL = 100;
    private static final int NARROWEST = 40;

    /** Lines longer than this are hard to read, however wide the terminal. */
    private static final int WIDEST = 120;

    Prose {
        if (width < 1) {
            throw new IllegalArgumentException("a page " + width + " wide");
        }
    }

    /** As wide as the terminal, between 40 and 120. */
    static Prose forTerminal() {
        return new Prose(widthOf(System.getenv("COLUMNS")));
    }

    /** The width for a value of {@code COLUMNS}, which may be missing or no number. */
    static int widthOf(String columns) {
        if (columns == null || !columns.matches("[0-9]{1,4}")) {
            return USUAL;
        }
        return Math.min(WIDEST, Math.max(NARROWEST, Integer.parseInt(columns)));
    }

    /** The sentence over as many lines as it needs, each after the first below its beginning. */
    String of(String sentence) {
        return of("", sentence);
    }

    /**
     * A lead such as a bullet with the sentence beside it; later lines stand below the sentence.
     */
    String of(String lead, String sentence) {
        String hang = " ".repeat(length(lead));
        return lead + String.join("\n" + hang, lines(sentence, width - length(lead)));
    }

    /** The words of a sentence in lines at most that wide; a longer word has a line of its own. */
    static List<String> lines(String sentence, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : sentence.split(" ")) {
            if (!line.isEmpty() && length(line) + 1 + length(word) > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.isEmpty() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    /** Places that a text takes: code points, colour not counted. */
    static int length(CharSequence text) {
        String plain = text.toString().replaceAll("\u001b\\[[0-9;]*m", "");
        return plain.codePointCount(0, plain.length());
    }
}
