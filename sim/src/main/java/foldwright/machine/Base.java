// SPDX-License-Identifier: Apache-2.0
package foldwright.machine;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.machine.part.Point;
import foldwright.quantity.Dimension;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The base. Its frame: origin midway between the fixed base pins, x along the scissor towards the
 * slider ends, y to the back, z up.
 *
 * @param length outer length along the scissor [m]
 * @param width outer width [m]
 * @param pinHeight height of the base pins above the table [m]
 * @param pinInset distance from the end of the base to the fixed pins [m]
 * @param mass its mass with all that is fixed to it [kg]
 * @param massCentre its centre of mass; left out: in the middle, half the pin height below the pins
 * @param bedHeight height of the bed the work lies on, above the table [m]
 */
@Kind(
        "The base. Its frame: origin midway between the fixed base pins, x along the scissor towards the slider ends, y to the back, z up.")
public record Base(
        @Key(
                        value = "Outer length along the scissor",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 10 m]",
                        example = "420 mm")
                double length,
        @Key(
                        value = "Outer width",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 10 m]",
                        example = "340 mm")
                double width,
        @Key(
                        value = "Height of the base pins above the table",
                        is = Dimension.LENGTH,
                        range = "[0 mm, 2 m]",
                        example = "22 mm")
                double pinHeight,
        @Key(
                        value = "Distance from the end of the base to the fixed pins",
                        is = Dimension.LENGTH,
                        range = "[-2 m, 5 m]",
                        example = "40 mm")
                double pinInset,
        @Key(
                        value = "Its mass with all that is fixed to it",
                        is = Dimension.MASS,
                        range = "(0 kg, 1000 kg]",
                        example = "4.6 kg")
                double mass,
        @Key("Its centre of mass; left out: in the middle, half the pin height below the pins")
                Optional<Point> massCentre,
        @Key(
                        value = "Height of the bed the work lies on, above the table",
                        is = Dimension.LENGTH,
                        range = "[0 mm, 2 m]",
                        example = "30 mm")
                OptionalDouble bedHeight) {
    /** Checks every value against its key. */
    public Base {
        Keys.check(Base.class, length, width, pinHeight, pinInset, mass, massCentre, bedHeight);
    }
}
