// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.bearing;

import static foldwright.elements.table.Table.GIGA;
import static foldwright.elements.table.Table.KILO;
import static foldwright.elements.table.Table.MILLI;

import foldwright.elements.Domain;
import foldwright.elements.table.Catalog;
import foldwright.elements.table.Table;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A single-row deep groove ball bearing with its equivalent loads (ISO 281 and ISO 76), by
 * designation from table {@code bearings_deep_groove.csv} or by numbers.
 *
 * <p>The table's dimensions are ISO 15; its ratings are typical and on the low side of several
 * makers.
 *
 * @param designation e.g. "625"
 * @param bore d [m]
 * @param outside D [m]
 * @param width B [m]
 * @param dynamicRating C [N]
 * @param staticRating C0: gives a contact pressure of 4200 MPa, about 0.0001 of the ball diameter
 *     as permanent set [N]
 * @param source where the row comes from
 */
public record DeepGrooveBearing(
        String designation,
        double bore,
        double outside,
        double width,
        double dynamicRating,
        double staticRating,
        String source) {

    /** X of ISO 281 for an axial share above e. */
    public static final double X = 0.56;

    /** Friction over bore, M = mu P d/2: upper end for a normal deep groove bearing. */
    public static final double FRICTION = 0.0015;

    public DeepGrooveBearing {
        Domain.positive("bore", bore, "m");
        Domain.positive("outside diameter", outside, "m");
        Domain.positive("bearing width", width, "m");
        Domain.positive("dynamic rating C", dynamicRating, "N");
        Domain.positive("static rating C0", staticRating, "N");
    }

    /** The bearing of that designation, or empty. */
    public static Optional<DeepGrooveBearing> find(String designation) {
        return Shipped.CATALOG.find(designation);
    }

    /**
     * The bearing of that designation.
     *
     * @throws foldwright.elements.table.UnknownNameException with the nearest designations
     */
    public static DeepGrooveBearing get(String designation) {
        return Shipped.CATALOG.get(designation);
    }

    /** All bearings by designation. */
    public static Catalog<DeepGrooveBearing> catalog() {
        return Shipped.CATALOG;
    }

    /** e of ISO 281 at that axial load [1]. */
    public double axialThreshold(double axial) {
        return AxialFactors.at(Math.abs(axial) / staticRating).threshold();
    }

    /** Y of ISO 281 at that axial load [1]. */
    public double axialFactor(double axial) {
        return AxialFactors.at(Math.abs(axial) / staticRating).factor();
    }

    /** P = F_r, or 0.56 F_r + Y F_a where F_a/F_r exceeds e [N]. */
    public double equivalentLoad(double radial, double axial) {
        double r = Math.abs(radial);
        double a = Math.abs(axial);
        if (a <= axialThreshold(a) * r) {
            return r;
        }
        return X * r + axialFactor(a) * a;
    }

    /** P0 = max(0.6 F_r + 0.5 F_a, F_r) of ISO 76 [N]. */
    public double equivalentStaticLoad(double radial, double axial) {
        double r = Math.abs(radial);
        return Math.max(0.6 * r + 0.5 * Math.abs(axial), r);
    }

    /** s0 = C0/P0; ask 1, for quiet running 2; below 0.5 balls leave marks [1]. */
    public double staticSafety(double radial, double axial) {
        return staticRating / equivalentStaticLoad(radial, axial);
    }

    /** Friction torque mu P d/2 with the upper end of mu [N·m]. */
    public double frictionTorque(double load) {
        return FRICTION * Math.abs(load) * bore / 2;
    }

    /**
     * Life in turns under those loads, or empty where the axial load lies beyond the factors of ISO
     * 281, F_a/C0 above 0.56.
     */
    public OptionalDouble lifeTurns(double radial, double axial) {
        return Math.abs(axial) / staticRating > AxialFactors.greatestRatio()
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        BearingLife.turns(dynamicRating, equivalentLoad(radial, axial)));
    }

    private static DeepGrooveBearing of(Table.Row row) {
        if (row.number("hertz_limit_at_C0_GPa", GIGA) != 4.2 * GIGA) {
            throw new IllegalStateException("C0 of another definition in line " + row.line());
        }
        return new DeepGrooveBearing(
                row.text("designation"),
                row.number("bore_mm", MILLI),
                row.number("outside_mm", MILLI),
                row.number("width_mm", MILLI),
                row.number("C_kN_typical", KILO),
                row.number("C0_kN_typical", KILO),
                row.text("source"));
    }

    /** Read when the first bearing is asked for. */
    private static final class Shipped {
        private static final Catalog<DeepGrooveBearing> CATALOG =
                Catalog.of(
                        "deep groove ball bearing",
                        Table.shipped("bearings_deep_groove.csv").rows().stream()
                                .map(DeepGrooveBearing::of)
                                .toList(),
                        DeepGrooveBearing::designation,
                        Catalog::plain);
    }

    /** All bearings with that bore, the slimmest first. */
    public static List<DeepGrooveBearing> withBore(double bore) {
        return Shipped.CATALOG.all().stream()
                .filter(bearing -> Math.abs(bearing.bore() - bore) < 1e-6)
                .sorted(Comparator.comparingDouble(DeepGrooveBearing::outside))
                .toList();
    }
}
