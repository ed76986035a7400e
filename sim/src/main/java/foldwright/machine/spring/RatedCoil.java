// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.spring;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.machine.keys.NameTable;
import foldwright.quantity.Dimension;
import java.util.OptionalDouble;

/**
 * A cylindrical spring by its rate.
 *
 * @param rate spring rate [N/m]
 * @param freeLength free length [m]
 * @param solidLength length with all coils closed [m]
 * @param wire wire diameter, for the stress [m]
 * @param meanDiameter mean coil diameter, for the stress [m]
 * @param grade grade of its wire, for the stress
 */
@Kind(value = "A cylindrical spring by its rate.", word = "coil-by-rate")
public record RatedCoil(
        @Key(
                        value = "Spring rate",
                        is = Dimension.STIFFNESS,
                        range = "(0 N/mm, 100000 N/mm]",
                        example = "36 N/mm")
                double rate,
        @Key(value = "Free length", is = Dimension.LENGTH, range = "(0 mm, 2 m]", example = "40 mm")
                double freeLength,
        @Key(
                        value = "Length with all coils closed",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 2 m]",
                        example = "25 mm")
                double solidLength,
        @Key(
                        value = "Wire diameter, for the stress",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 50 mm]",
                        example = "1.6 mm")
                OptionalDouble wire,
        @Key(
                        value = "Mean coil diameter, for the stress",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 500 mm]",
                        example = "30 mm")
                OptionalDouble meanDiameter,
        @Key(
                        value = "Grade of its wire, for the stress",
                        names = NameTable.WIRE_GRADES,
                        orElse = "hard drawn A227",
                        example = "music wire A228")
                String grade)
        implements SpringLaw {
    /** Checks every value against its key. */
    public RatedCoil {
        Keys.check(RatedCoil.class, rate, freeLength, solidLength, wire, meanDiameter, grade);
    }
}
