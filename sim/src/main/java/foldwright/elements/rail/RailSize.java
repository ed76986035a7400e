// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.rail;

import static foldwright.elements.table.Table.KILO;
import static foldwright.elements.table.Table.MILLI;
import static foldwright.elements.table.Table.ONE;

import foldwright.elements.table.Catalog;
import foldwright.elements.table.Table;
import java.util.List;
import java.util.Optional;

/**
 * A block of a miniature profile rail (ISO 12090 family; table {@code rails_miniature.csv}, typical
 * values on the low side of several makers). Named like {@code "9 short"}.
 *
 * @param name rail width in mm and block length
 * @param dimensions of block and rail
 * @param rating what it carries
 * @param blockMass [kg]
 * @param railMass [kg/m]
 * @param source where the row comes from
 */
public record RailSize(
        String name,
        Dimensions dimensions,
        BlockRating rating,
        double blockMass,
        double railMass,
        String source) {

    /**
     * Outer dimensions.
     *
     * @param railWidth [m]
     * @param assemblyHeight rail foot to block top [m]
     * @param blockWidth [m]
     * @param blockLength with end caps [m]
     * @param steelLength over which balls carry [m]
     */
    public record Dimensions(
            double railWidth,
            double assemblyHeight,
            double blockWidth,
            double blockLength,
            double steelLength) {}

    /** The block of that name, or empty. */
    public static Optional<RailSize> find(String name) {
        return Shipped.CATALOG.find(name);
    }

    /**
     * The block of that name.
     *
     * @throws foldwright.elements.table.UnknownNameException with the nearest names
     */
    public static RailSize get(String name) {
        return Shipped.CATALOG.get(name);
    }

    /** All blocks by name. */
    public static Catalog<RailSize> catalog() {
        return Shipped.CATALOG;
    }

    private static RailSize of(Table.Row row) {
        Dimensions dimensions =
                new Dimensions(
                        row.number("rail_width_mm", MILLI),
                        row.number("assembly_height_mm", MILLI),
                        row.number("block_width_mm", MILLI),
                        row.number("block_length_mm", MILLI),
                        row.number("steel_length_mm", MILLI));
        BlockRating rating =
                new BlockRating(
                        row.number("C_kN_100km_typical", KILO),
                        row.number("C0_kN_typical", KILO),
                        row.number("Mx0_roll_Nm", ONE),
                        row.number("My0_pitch_Nm", ONE),
                        row.number("Mz0_yaw_Nm", ONE));
        return new RailSize(
                row.text("block"),
                dimensions,
                rating,
                row.number("block_mass_kg", ONE),
                row.number("rail_mass_kg_per_m", ONE),
                row.text("source"));
    }

    /** Read when the first block is asked for. */
    private static final class Shipped {
        private static final Catalog<RailSize> CATALOG =
                Catalog.of("profile rail block", entries(), RailSize::name, Catalog::plain);

        private static List<RailSize> entries() {
            return Table.shipped("rails_miniature.csv").rows().stream().map(RailSize::of).toList();
        }
    }
}
