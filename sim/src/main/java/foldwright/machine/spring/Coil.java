// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.spring;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.machine.keys.NameTable;
import foldwright.quantity.Dimension;
import java.util.OptionalDouble;

/**
 * A cylindrical compression spring by its wire.
 *
 * @param wire wire diameter [m]
 * @param meanDiameter mean coil diameter [m]
 * @param activeCoils active coils [1]
 * @param freeLength free length [m]
 * @param solidLength length with all coils closed; left out: two more coils than active ones, times
 *     the wire [m]
 * @param grade grade of its wire
 */
@Kind(value = "A cylindrical compression spring by its wire.", word = "coil")
public record Coil(
        @Key(
                        value = "Wire diameter",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 50 mm]",
                        example = "1.6 mm")
                double wire,
        @Key(
                        value = "Mean coil diameter",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 500 mm]",
                        example = "30 mm")
                double meanDiameter,
        @Key(value = "Active coils", range = "(0, 500]", example = "15.5") double activeCoils,
        @Key(
                        value = "Free length",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 2 m]",
                        example = "115 mm")
                double freeLength,
        @Key(
                        value =
                                "Length with all coils closed; left out: two more coils than active ones, times the wire",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 2 m]",
                        example = "28 mm")
                OptionalDouble solidLength,
        @Key(
                        value = "Grade of its wire",
                        names = NameTable.WIRE_GRADES,
                        orElse = "hard drawn A227",
                        example = "music wire A228")
                String grade)
        implements SpringLaw {
    /** Checks every value against its key. */
    public Coil {
        Keys.check(Coil.class, wire, meanDiameter, activeCoils, freeLength, solidLength, grade);
    }

    /** Length with all coils closed: as given, or else active coils plus two times the wire [m]. */
    public double closedLength() {
        return solidLength.orElse((activeCoils + 2) * wire);
    }
}
