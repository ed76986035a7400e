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

    /** The lines, heads first, without trailing blanks. */
    String text() {
        int[] widths = new int[heads.size()];
        measure(widths, heads);
        rows.forEach(r -> measure(widths, r));
        StringBuilder out = new StringBuilder();
        line(out, widths, heads);
        rows.forEach(r -> line(out, widths, r));
        return out.toString();
    }

    private static void measure(int[] widths, List<String> cells) {
        for (int i = 0; i < widths.length; i++) {
            widths[i] = Math.max(widths[i], width(cells.get(i)));
        }
    }

    private void line(StringBuilder out, int[] widths, List<String> cells) {
        StringBuilder line = new StringBuilder();
        for (int i = 0; i < widths.length; i++) {
            String pad = " ".repeat(widths[i] - width(cells.get(i)));
            line.append(i == 0 ? "" : GAP);
            line.append(sides.get(i) == Side.RIGHT ? pad + cells.get(i) : cells.get(i) + pad);
        }
        out.append(line.toString().stripTrailing()).append('\n');
    }

    private static int width(String cell) {
        String plain = cell.replaceAll("\u001b\\[[0-9;]*m", "");
        return plain.codePointCount(0, plain.length());
    }
}
