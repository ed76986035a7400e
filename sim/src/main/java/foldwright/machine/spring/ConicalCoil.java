// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.spring;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.machine.keys.NameTable;
import foldwright.quantity.Dimension;

/**
 * A conical compression spring: its coils close one after the other and it grows stiffer.
 *
 * @param wire wire diameter [m]
 * @param smallDiameter mean diameter of its smallest coil [m]
 * @param largeDiameter mean diameter of its largest coil [m]
 * @param activeCoils active coils [1]
 * @param freeLength free length [m]
 * @param grade grade of its wire
 */
@Kind(
        value =
                "A conical compression spring: its coils close one after the other and it grows stiffer.",
        word = "conical")
public record ConicalCoil(
        @Key(
                        value = "Wire diameter",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 50 mm]",
                        example = "1.6 mm")
                double wire,
        @Key(
                        value = "Mean diameter of its smallest coil",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 500 mm]",
                        example = "16 mm")
                double smallDiameter,
        @Key(
                        value = "Mean diameter of its largest coil",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 500 mm]",
                        example = "34 mm")
                double largeDiameter,
        @Key(value = "Active coils", range = "(0, 500]", example = "7") double activeCoils,
        @Key(value = "Free length", is = Dimension.LENGTH, range = "(0 mm, 2 m]", example = "70 mm")
                double freeLength,
        @Key(
                        value = "Grade of its wire",
                        names = NameTable.WIRE_GRADES,
                        orElse = "hard drawn A227",
                        example = "music wire A228")
                String grade)
        implements SpringLaw {
    /** Checks every value against its key. */
    public ConicalCoil {
        Keys.check(
                ConicalCoil.class,
                wire,
                smallDiameter,
                largeDiameter,
                activeCoils,
                freeLength,
                grade);
    }
}
