// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntBinaryOperator;

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

    /** Fewest places to which a text is broken where nothing else fits the page. */
    private static final int LEAST = 12;

    /** Fewest places of a column that is broken into lines. */
    private static final int NARROWEST = 20;

    /** Least width to which a label is broken so that the last column stands beside it. */
    private static final int LABEL = 24;

    /** Width of the last column that is worth breaking a label. */
    private static final int BESIDE = 26;

    /** How far a cell is set in that stands below its row. */
    private static final int INDENT = 6;

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

    /**
     * The same within the width of a page. Where it is too narrow, heads are broken between words,
     * then the last column if it is a text, which stands below its row when little room is left,
     * then the widest text.
     */
    String text(Prose page) {
        return text(page.width());
    }

    private String text(int page) {
        return new Layout(page).text();
    }

    /** Widths of the columns for one page. */
    private final class Layout {
        private final int page;
        private final int last = heads.size() - 1;
        private final int[] widths = new int[heads.size()];
        private boolean below;

        Layout(int page) {
            this.page = page;
            measure(heads);
            rows.forEach(this::measure);
            if (total(last) > page) {
                narrow();
            }
        }

        private void measure(List<String> cells) {
            for (int i = 0; i <= last; i++) {
                widths[i] = Math.max(widths[i], Prose.length(cells.get(i)));
            }
        }

        /** Width of the columns up to that one. */
        private int total(int to) {
            int sum = to * GAP.length();
            for (int i = 0; i <= to; i++) {
                sum += widths[i];
            }
            return sum;
        }

        private void narrow() {
            Arrays.fill(widths, 0);
            rows.forEach(this::measure);
            for (int i = 0; i <= last; i++) {
                widths[i] = Math.max(widths[i], overTwoLines(heads.get(i)));
            }
            int end = last;
            if (sides.get(last) == Side.LEFT && last > 0) {
                int room = page - total(last - 1) - GAP.length();
                room = roomBeside(room);
                below = room < Math.min(NARROWEST, widths[last]);
                widths[last] = below ? page - INDENT : Math.min(room, widths[last]);
                end = below ? last - 1 : last;
            }
            int over = total(end) - page;
            if (over > 0) {
                int widest = widestText(end);
                if (widest >= 0) {
                    widths[widest] = Math.max(LEAST, widths[widest] - over);
                }
            }
        }

        /** Room for the last column, made by breaking a wide text before it where that does. */
        private int roomBeside(int room) {
            int missing = BESIDE - room;
            int widest = widestText(last - 1);
            if (room >= NARROWEST
                    || widths[last] <= room
                    || widest < 0
                    || widths[widest] - missing < LABEL) {
                return room;
            }
            widths[widest] -= missing;
            return room + missing;
        }

        /** The widest column of text up to that one, or -1 where there is none. */
        private int widestText(int end) {
            int widest = -1;
            for (int i = 0; i <= end; i++) {
                if (sides.get(i) == Side.LEFT && (widest < 0 || widths[i] > widths[widest])) {
                    widest = i;
                }
            }
            return widest;
        }

        /** Least width at which a head takes two lines. */
        private int overTwoLines(String head) {
            int width = (Prose.length(head) + 1) / 2;
            while (Prose.lines(head, width).size() > 2) {
                width++;
            }
            return Prose.lines(head, width).stream().mapToInt(Prose::length).max().orElse(0);
        }

        String text() {
            StringBuilder out = new StringBuilder();
            heads(out);
            rows.forEach(r -> row(out, r));
            return out.toString();
        }

        /** Heads stand at the foot of their lines, beside what they are heads of. */
        private void heads(StringBuilder out) {
            lines(out, heads, (lines, high) -> high - lines);
        }

        private void row(StringBuilder out, List<String> cells) {
            lines(out, cells, (lines, high) -> 0);
        }

        /**
         * Cells beside each other.
         *
         * @param first line at which a cell of so many lines begins, of so many in all
         */
        private void lines(StringBuilder out, List<String> cells, IntBinaryOperator first) {
            List<List<String>> pieces = new ArrayList<>();
            for (int i = 0; i <= last; i++) {
                pieces.add(below && i == last ? List.of("") : pieces(cells.get(i), widths[i]));
            }
            int high = pieces.stream().mapToInt(List::size).max().orElse(1);
            for (int k = 0; k < high; k++) {
                List<String> now = new ArrayList<>();
                for (List<String> p : pieces) {
                    int at = k - first.applyAsInt(p.size(), high);
                    now.add(at >= 0 && at < p.size() ? p.get(at) : "");
                }
                line(out, now);
            }
            if (below) {
                beside(out, cells.get(last));
            }
        }

        /** The last cell on lines of its own. */
        private void beside(StringBuilder out, String cell) {
            if (!cell.isEmpty()) {
                out.append(new Prose(page).of(" ".repeat(INDENT), cell)).append('\n');
            }
        }

        /** A cell in lines; what is set in at its beginning stays set in. */
        private List<String> pieces(String cell, int width) {
            if (Prose.length(cell) <= width) {
                return List.of(cell);
            }
            String bare = cell.stripLeading();
            String lead = " ".repeat(cell.length() - bare.length());
            return Prose.lines(bare, width - lead.length()).stream().map(p -> lead + p).toList();
        }

        private void line(StringBuilder out, List<String> cells) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i <= last; i++) {
                String cell = cells.get(i);
                int room = below && i == last ? 0 : widths[i];
                String pad = " ".repeat(Math.max(0, room - Prose.length(cell)));
                line.append(i == 0 ? "" : GAP);
                line.append(sides.get(i) == Side.RIGHT ? pad + cell : cell + pad);
            }
            out.append(line.toString().stripTrailing()).append('\n');
        }
    }
}
