// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

import foldwright.elements.screw.TrapezoidalThread;
import foldwright.elements.spring.WireGrade;
import foldwright.elements.table.Catalog;
import foldwright.elements.table.Table;
import foldwright.machine.drive.ScrewThread;
import foldwright.machine.keys.NameTable;
import foldwright.machine.part.Material;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The tables a machine file may name an entry of. */
final class NameTables {
    private NameTables() {}

    /** The material of that name. */
    static Optional<Material> material(String name) {
        return Materials.ALL.find(name);
    }

    /** Names of all materials. */
    static List<String> materials() {
        return Materials.ALL.names();
    }

    /** The trapezoidal thread of that designation. */
    static Optional<ScrewThread> thread(String designation) {
        return TrapezoidalThread.find(designation)
                .map(
                        found ->
                                new ScrewThread(
                                        found.designation(),
                                        found.thread().majorDiameter(),
                                        found.thread().pitchDiameter(),
                                        found.thread().rootDiameter(),
                                        found.thread().pitch(),
                                        found.thread().starts(),
                                        found.thread().halfFlankAngle()));
    }

    /** Designations of all threads. */
    static List<String> threads() {
        return TrapezoidalThread.catalog().names();
    }

    /** The full name of a table entry as the table prints it. */
    static Optional<String> find(NameTable table, String name) {
        return switch (table) {
            case NONE -> Optional.of(name);
            case WIRE_GRADES -> WireGrade.find(name).map(WireGrade::name);
        };
    }

    /** All names of a table. */
    static List<String> names(NameTable table) {
        return switch (table) {
            case NONE -> List.of();
            case WIRE_GRADES -> WireGrade.catalog().names();
        };
    }

    /** Read when the first material is asked for. */
    private static final class Materials {
        private static final Catalog<Material> ALL =
                Catalog.of(
                        "material",
                        Table.shipped("materials.csv").rows().stream().map(Materials::of).toList(),
                        Material::name,
                        name -> name.strip().toLowerCase(Locale.ROOT));

        private static Material of(Table.Row row) {
            return new Material(
                    row.text("material"),
                    row.number("E_GPa", Table.GIGA),
                    row.number("G_GPa", Table.GIGA),
                    row.number("density_kg_m3", Table.ONE),
                    row.optional("yield_or_strength_MPa", Table.MEGA));
        }
    }
}
