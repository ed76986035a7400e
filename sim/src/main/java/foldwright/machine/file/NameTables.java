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
import java.util.function.Function;

/** The tables a machine file may name an entry of. */
final class NameTables {
    private NameTables() {}

    /** The material of that name. */
    static Optional<Material> material(String name) {
        return Materials.ALL.find(name);
    }

    /** Names of all materials. */
    static Names materials() {
        return names(Materials.ALL);
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
    static Names threads() {
        return names(TrapezoidalThread.catalog());
    }

    /** The full name of a table entry as the table prints it. */
    static Optional<String> find(NameTable table, String name) {
        return switch (table) {
            case NONE -> Optional.of(name);
            case WIRE_GRADES -> WireGrade.find(name).map(WireGrade::name);
        };
    }

    /** All names of a table. */
    static Names names(NameTable table) {
        return switch (table) {
            case NONE -> new Names(List.of(), asked -> List.of());
            case WIRE_GRADES -> names(WireGrade.catalog());
        };
    }

    private static Names names(Catalog<?> catalog) {
        return new Names(catalog.names(), asked -> catalog.nearest(asked, 2));
    }

    /**
     * The names of a table.
     *
     * @param all every name
     * @param search gives the names nearest to another one
     */
    record Names(List<String> all, Function<String, List<String>> search) {
        /** The names nearest to one that was asked for; none for an empty or very long text. */
        List<String> nearest(String asked) {
            return asked.isBlank() || asked.length() > 80 ? List.of() : search.apply(asked);
        }
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
