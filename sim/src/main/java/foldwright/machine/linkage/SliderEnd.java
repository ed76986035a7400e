// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.linkage;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;
import java.util.OptionalDouble;

/**
 * A sliding end with its guide.
 *
 * @param kind how it moves in its guide
 * @param friction friction coefficient in the guide, for rollers their rolling resistance [1]
 * @param guideLength length over which it is guided [m]
 * @param pushOffset height of the pushing force above the middle of the guide [m]
 * @param clearance clearance in the guide [m]
 * @param stiffness stiffness of guide and slider upwards [N/m]
 */
@Kind("A sliding end with its guide.")
public record SliderEnd(
        @Key(value = "How it moves in its guide", example = "rollers") SliderKind kind,
        @Key(
                        value =
                                "Friction coefficient in the guide, for rollers their rolling resistance",
                        range = "[0, 1]",
                        example = "0.005")
                double friction,
        @Key(
                        value = "Length over which it is guided",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 1 m]",
                        example = "24 mm")
                double guideLength,
        @Key(
                        value = "Height of the pushing force above the middle of the guide",
                        is = Dimension.LENGTH,
                        range = "[-200 mm, 200 mm]",
                        orElse = "0 mm",
                        example = "6 mm")
                double pushOffset,
        @Key(
                        value = "Clearance in the guide",
                        is = Dimension.LENGTH,
                        range = "[0 mm, 10 mm]",
                        orElse = "0 mm",
                        example = "0.1 mm")
                double clearance,
        @Key(
                        value = "Stiffness of guide and slider upwards",
                        is = Dimension.STIFFNESS,
                        range = "(0 N/mm, 10000000 N/mm]",
                        example = "5000 N/mm")
                OptionalDouble stiffness) {
    /** Checks every value against its key. */
    public SliderEnd {
        Keys.check(SliderEnd.class, kind, friction, guideLength, pushOffset, clearance, stiffness);
    }
}
