// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.safety;

import static foldwright.elements.table.Table.MILLI;

import foldwright.elements.table.Table;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How far behind an opening a danger must lie (ISO 13857:2019 Table 4, 14 years and over; table
 * {@code safety_gaps_forces.csv}).
 *
 * @param shape of the opening
 * @param opening largest opening of the row [m]
 * @param distance from it to the danger, at least [m]
 * @param source where the row comes from
 */
public record ReachDistance(Shape shape, double opening, double distance, String source) {
    /** Form of an opening in a guard. */
    public enum Shape {
        SLOT,
        SQUARE,
        ROUND
    }

    private static final Pattern ITEM =
            Pattern.compile("reach through (slot|square|round hole), opening up to (\\d+) mm");

    /** All rows of a shape, the narrowest opening first. */
    public static List<ReachDistance> rows(Shape shape) {
        return Shipped.ROWS.stream()
                .filter(row -> row.shape() == shape)
                .sorted(Comparator.comparingDouble(ReachDistance::opening))
                .toList();
    }

    /**
     * Distance to keep behind an opening [m].
     *
     * @return empty for openings beyond the last row, which do not guard anything
     */
    public static OptionalDouble needed(Shape shape, double opening) {
        return rows(shape).stream()
                .filter(row -> opening <= row.opening())
                .mapToDouble(ReachDistance::distance)
                .findFirst();
    }

    /** Read when the first distance is asked for. */
    private static final class Shipped {
        private static final List<ReachDistance> ROWS =
                Table.shipped("safety_gaps_forces.csv").rows().stream()
                        .filter(row -> ITEM.matcher(row.text("item")).matches())
                        .map(Shipped::of)
                        .toList();

        private static ReachDistance of(Table.Row row) {
            Matcher item = ITEM.matcher(row.text("item"));
            if (!item.matches()) {
                throw new IllegalStateException("not a reach distance: line " + row.line());
            }
            String shape = item.group(1).toUpperCase(Locale.ROOT).replace(" HOLE", "");
            return new ReachDistance(
                    Shape.valueOf(shape),
                    Integer.parseInt(item.group(2)) * MILLI,
                    row.number("value", MILLI),
                    row.text("source"));
        }
    }
}
