// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.belt;

import static foldwright.elements.table.Table.MILLI;
import static foldwright.elements.table.Table.ONE;

import foldwright.elements.table.Catalog;
import foldwright.elements.table.Table;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A synchronous belt by profile and width (table {@code belts.csv}). Its specific stiffness varies
 * by a factor of 1.8 between makers and falls in early life: a measured value takes its place.
 *
 * <p>Named by profile and width, e.g. {@code "2 mm curvilinear glass fibre rubber, 6 mm"}; the row
 * that holds a lower bound ends with {@code "(lower bound)"}.
 *
 * @param profile pitch, tooth form and material
 * @param pitch [m]
 * @param width b [m]
 * @param stretch how it gives
 * @param linearMass low and high value [kg/m]
 * @param pretension low and high advice for that width [N]
 * @param source where the row comes from
 */
public record BeltProfile(
        String profile,
        double pitch,
        double width,
        Stretch stretch,
        Range linearMass,
        Range pretension,
        String source) {

    private static final String LOWER_BOUND = "lower bound";

    /**
     * A low and a high value of one quantity, both in its SI unit.
     *
     * @param low smallest
     * @param high largest
     */
    public record Range(double low, double high) {
        /** Mean of both. */
        public double middle() {
            return (low + high) / 2;
        }
    }

    /**
     * Specific stiffness of a belt.
     *
     * @param specificStiffness c_sp = EA/b [N/m]
     * @param status how sure that is
     */
    public record Stretch(double specificStiffness, String status) {}

    /** Profile and width. */
    public String name() {
        String base = String.format(Locale.ROOT, "%s, %s mm", profile, trimmed(width / MILLI));
        return stretch.status().equals(LOWER_BOUND) ? base + " (" + LOWER_BOUND + ")" : base;
    }

    private static String trimmed(double mm) {
        String text = String.format(Locale.ROOT, "%.1f", mm);
        return text.endsWith(".0") ? text.substring(0, text.length() - 2) : text;
    }

    /** EA = c_sp b, force for a strain of one [N]. */
    public double stretchStiffness() {
        return stretch.specificStiffness() * width;
    }

    /** The same belt in another width: stiffness, mass and pretension grow with it. */
    public BeltProfile inWidth(double newWidth) {
        double r = newWidth / width;
        return new BeltProfile(
                profile,
                pitch,
                newWidth,
                stretch,
                new Range(linearMass.low() * r, linearMass.high() * r),
                new Range(pretension.low() * r, pretension.high() * r),
                source + "; scaled by width");
    }

    /** The belt of that name, or empty. */
    public static Optional<BeltProfile> find(String name) {
        return Shipped.CATALOG.find(name);
    }

    /**
     * The belt of that name.
     *
     * @throws foldwright.elements.table.UnknownNameException with the nearest names
     */
    public static BeltProfile get(String name) {
        return Shipped.CATALOG.get(name);
    }

    /** All belts by name. */
    public static Catalog<BeltProfile> catalog() {
        return Shipped.CATALOG;
    }

    private static BeltProfile of(Table.Row row) {
        return new BeltProfile(
                row.text("belt"),
                row.number("pitch_mm", MILLI),
                row.number("width_mm", MILLI),
                new Stretch(row.number("csp_N_per_mm_width", 1 / MILLI), row.text("csp_status")),
                new Range(
                        row.number("linear_mass_low_kg_per_m", ONE),
                        row.number("linear_mass_high_kg_per_m", ONE)),
                new Range(
                        row.number("pretension_low_N", ONE), row.number("pretension_high_N", ONE)),
                row.text("source"));
    }

    /** Read when the first belt is asked for. */
    private static final class Shipped {
        private static final Catalog<BeltProfile> CATALOG =
                Catalog.of("synchronous belt", entries(), BeltProfile::name, Catalog::plain);

        private static List<BeltProfile> entries() {
            return Table.shipped("belts.csv").rows().stream().map(BeltProfile::of).toList();
        }
    }
}
