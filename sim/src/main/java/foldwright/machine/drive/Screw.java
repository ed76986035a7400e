// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.drive;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.machine.part.Material;
import foldwright.quantity.Dimension;
import java.util.OptionalDouble;

/**
 * A lead screw with nut, collar and ends.
 *
 * @param thread its thread: a designation from the table, or numbers
 * @param nut its nut
 * @param collar the collar or thrust bearing that takes the force
 * @param length free length between its bearings, or to its free end [m]
 * @param ends how its ends are held
 * @param endStiffness axial stiffness of its end bearing and bracket [N/m]
 * @param material its material
 */
@Kind("A lead screw with nut, collar and ends.")
public record Screw(
        @Key(value = "Its thread: a designation from the table, or numbers", example = "Tr10x2")
                ScrewThread thread,
        @Key("Its nut") Nut nut,
        @Key("The collar or thrust bearing that takes the force") Collar collar,
        @Key(
                        value = "Free length between its bearings, or to its free end",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 5 m]",
                        example = "150 mm")
                double length,
        @Key(value = "How its ends are held", orElse = "fixed-free", example = "fixed-free")
                ScrewEnds ends,
        @Key(
                        value = "Axial stiffness of its end bearing and bracket",
                        is = Dimension.STIFFNESS,
                        range = "(0 N/mm, 10000000 N/mm]",
                        example = "8000 N/mm")
                OptionalDouble endStiffness,
        @Key(value = "Its material", orElse = "steel, carbon, general") Material material) {
    /** Checks every value against its key. */
    public Screw {
        Keys.check(Screw.class, thread, nut, collar, length, ends, endStiffness, material);
    }
}
