// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.material;

import foldwright.elements.table.Catalog;
import foldwright.elements.table.Table;
import java.util.List;
import java.util.Optional;

/**
 * Friction of two parts as a range (table {@code friction.csv}). Holding is judged with the low
 * end, driving with the high end.
 *
 * @param contact kind of contact: screw thread, thrust collar, rolling bearing, plain bearing,
 *     profile rail
 * @param partA first part or kind of bearing, "-" if it does not matter
 * @param partB second part, "-" if it does not matter
 * @param condition lubrication or state of motion
 * @param low lowest coefficient [1]
 * @param high highest coefficient [1]
 * @param source where the row comes from
 */
public record FrictionPair(
        String contact,
        String partA,
        String partB,
        String condition,
        double low,
        double high,
        String source) {

    /** Name by which it is found, e.g. {@code "screw thread, steel, bronze, machine oil"}. */
    public String name() {
        return String.join(", ", contact, partA, partB, condition);
    }

    /** Middle of the range [1]. */
    public double middle() {
        return (low + high) / 2;
    }

    /** The pair of that name, or empty; punctuation does not matter. */
    public static Optional<FrictionPair> find(String name) {
        return Shipped.CATALOG.find(name);
    }

    /**
     * The pair of that name.
     *
     * @throws foldwright.elements.table.UnknownNameException with the nearest names
     */
    public static FrictionPair get(String name) {
        return Shipped.CATALOG.get(name);
    }

    /** All pairs with their names. */
    public static Catalog<FrictionPair> catalog() {
        return Shipped.CATALOG;
    }

    private static FrictionPair of(Table.Row row) {
        return new FrictionPair(
                row.text("contact"),
                row.text("part_a"),
                row.text("part_b"),
                row.text("condition"),
                row.number("f_low", Table.ONE),
                row.number("f_high", Table.ONE),
                row.text("source"));
    }

    /** Read when the first pair is asked for. */
    private static final class Shipped {
        private static final Catalog<FrictionPair> CATALOG =
                Catalog.of("friction pair", entries(), FrictionPair::name, Catalog::plain);

        private static List<FrictionPair> entries() {
            return Table.shipped("friction.csv").rows().stream().map(FrictionPair::of).toList();
        }
    }
}
