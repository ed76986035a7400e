// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.material;

import static foldwright.elements.table.Table.MEGA;

import foldwright.elements.table.Catalog;
import foldwright.elements.table.Table;
import java.util.List;
import java.util.Optional;

/**
 * What a plastic joint or printed part may carry (table {@code plastics_allowables.csv}); mostly
 * common practice without source, and so marked.
 *
 * @param situation e.g. "pin in printed hole, static, PLA"
 * @param quantity what is limited: a pressure or stress [Pa], or pressure times speed [Pa·m/s]
 * @param shortTerm limit for minutes
 * @param longTerm limit to design with for loads that stay on
 * @param source where the row comes from
 */
public record PlasticAllowable(
        String situation, String quantity, double shortTerm, double longTerm, String source) {

    /** The row of that situation, or empty. */
    public static Optional<PlasticAllowable> find(String situation) {
        return Shipped.CATALOG.find(situation);
    }

    /**
     * The row of that situation.
     *
     * @throws foldwright.elements.table.UnknownNameException with the nearest ones
     */
    public static PlasticAllowable get(String situation) {
        return Shipped.CATALOG.get(situation);
    }

    /** All rows by their situation. */
    public static Catalog<PlasticAllowable> catalog() {
        return Shipped.CATALOG;
    }

    private static PlasticAllowable of(Table.Row row) {
        return new PlasticAllowable(
                row.text("case"),
                row.text("quantity"),
                row.number("short_term_MPa_or_pv", MEGA),
                row.number("long_term_or_design_MPa_or_pv", MEGA),
                row.text("source"));
    }

    /** Read when the first row is asked for. */
    private static final class Shipped {
        private static final Catalog<PlasticAllowable> CATALOG =
                Catalog.of(
                        "allowable load of a plastic part",
                        entries(),
                        PlasticAllowable::situation,
                        Catalog::plain);

        private static List<PlasticAllowable> entries() {
            return Table.shipped("plastics_allowables.csv").rows().stream()
                    .map(PlasticAllowable::of)
                    .toList();
        }
    }
}
