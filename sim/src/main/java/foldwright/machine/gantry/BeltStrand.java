// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.gantry;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;

/**
 * A toothed belt.
 *
 * @param pitch tooth pitch [m]
 * @param width width [m]
 * @param specificStiffness force for unit strain and width [N/m]
 * @param massPerLength mass of a length [kg/m]
 */
@Kind("A toothed belt.")
public record BeltStrand(
        @Key(
                        value = "Tooth pitch",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 25 mm]",
                        orElse = "2 mm",
                        example = "2 mm")
                double pitch,
        @Key(value = "Width", is = Dimension.LENGTH, range = "(0 mm, 200 mm]", example = "6 mm")
                double width,
        @Key(
                        value = "Force for unit strain and width",
                        is = Dimension.STIFFNESS,
                        range = "(0 N/mm, 1000000 N/mm]",
                        example = "1600 N/mm")
                double specificStiffness,
        @Key(
                        value = "Mass of a length",
                        is = Dimension.MASS_PER_LENGTH,
                        range = "(0 g/m, 10 kg/m]",
                        example = "8.3 g/m")
                double massPerLength) {
    /** Checks every value against its key. */
    public BeltStrand {
        Keys.check(BeltStrand.class, pitch, width, specificStiffness, massPerLength);
    }

    /** Force for unit strain [N]. */
    public double stiffness() {
        return specificStiffness * width;
    }
}
