// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.spring;

import static foldwright.elements.table.Table.MEGA;
import static foldwright.elements.table.Table.MILLI;

import foldwright.elements.table.Table;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A preferred diameter of spring wire (table {@code spring_wire.csv}).
 *
 * @param diameter d [m]
 * @param tabulatedTensileSm R_m,min of grade SM as printed in a reproduction of EN 10270-1 [Pa],
 *     empty where it shows none
 * @param massPerLength of steel [kg/m]
 * @param source where the row comes from
 */
public record WireSize(
        double diameter, OptionalDouble tabulatedTensileSm, double massPerLength, String source) {

    /** All preferred diameters from thin to thick. */
    public static List<WireSize> all() {
        return Shipped.SIZES;
    }

    /** The preferred diameter nearest to the wanted one. */
    public static WireSize nearest(double diameter) {
        return Shipped.SIZES.stream()
                .min(Comparator.comparingDouble(size -> Math.abs(size.diameter() - diameter)))
                .orElseThrow();
    }

    /** Read when the first size is asked for. */
    private static final class Shipped {
        private static final List<WireSize> SIZES =
                Table.shipped("spring_wire.csv").rows().stream()
                        .map(
                                row ->
                                        new WireSize(
                                                row.number("d_mm", MILLI),
                                                row.optional("Rm_min_SM_table_MPa", MEGA),
                                                row.number("mass_kg_per_m", Table.ONE),
                                                row.text("source")))
                        .toList();
    }
}
