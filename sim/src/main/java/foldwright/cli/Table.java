// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import java.util.ArrayList;
import java.util.List;

/**
 * Lines of aligned columns for a terminal. Widths count code points, so that units with a middle
 * dot or a superscript line up; control sequences for colour count as nothing.
 */
final class Table {
    /** On which side of its column a cell stands. */
    enum Side {
        LEFT,
        RIGHT
    }

    private static final String GAP = "  ";

    /** Fewest places of a column that is broken into lines. */
    private static final int NARROWEST = 20;

    private final List<String> heads;
    private final List<Side> sides;
    private final List<List<String>> rows = new ArrayList<>();

    Table(List<String> heads, List<Side> sides) {
        this.heads = List.copyOf(heads);
        this.sides = List.copyOf(sides);
        if (heads.size() != sides.size()) {
            throw new IllegalArgumentException(heads.size() + " heads, " + sides.size() + " sides");
        }
    }

    /** Adds a row of as many cells as there are heads. */
    Table row(String... cells) {
        if (cells.length != heads.size()) {
            throw new IllegalArgumentException(cells.length + " cells, " + heads.size() + " heads");
        }
        rows.add(List.of(cells));
        return this;
    }

    /** The lines, heads first, without trailing blanks, as wide as they come. */
    String text() {
        return text(Integer.MAX_VALUE);
    }

    /** The same, the last column broken between words where a line would be wider than that. */
    String text(Prose page) {
        return text(page.width());
    }

    private String text(int width) {
        int[] widths = new int[heads.size()];
        measure(widths, heads);
        rows.forEach(r -> measure(widths, r));
        StringBuilder out = new StringBuilder();
        line(out, widths, heads);
        rows.forEach(r -> line(out, widths, r, width));
        return out.toString();
    }

    private static void measure(int[] widths, List<String> cells) {
        for (int i = 0; i < widths.length; i++) {
            widths[i] = Math.max(widths[i], Prose.length(cells.get(i)));
        }
    }

    /** A row, and below its last cell what of that cell does not fit. */
    private void line(StringBuilder out, int[] widths, List<String> cells, int width) {
        int last = widths.length - 1;
        int before = last * GAP.length();
        for (int i = 0; i < last; i++) {
            before += widths[i];
        }
        int room = Math.max(NARROWEST, width - before);
        if (sides.get(last) == Side.RIGHT || Prose.length(cells.get(last)) <= room) {
            line(out, widths, cells);
            return;
        }
        List<String> now = new ArrayList<>(cells);
        for (String piece : Prose.lines(cells.get(last), room)) {
            now.set(last, piece);
            line(out, widths, now);
            now.replaceAll(c -> "");
        }
    }

    private void line(StringBuilder out, int[] widths, List<String> cells) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < widths.length; i++) {
            String pad = " ".repeat(widths[i] - Prose.length(cells.get(i)));
            line.append(i == 0 ? "" : GAP);
            line.append(sides.get(i) == Side.RIGHT ? pad + cells.get(i) : cells.get(i) + pad);
        }
        out.append(line.toString().stripTrailing()).append('\n');
    }
}
