// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.linkage;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Ball bearings.
 *
 * @param friction friction coefficient referred to the radius of the bore [1]
 * @param clearance diametral clearance seen at the arm [m]
 * @param count bearings on each pin
 * @param staticRating static load rating of one bearing [N]
 * @param designation designation, for the order list
 */
@Kind(value = "Ball bearings.", word = "ball")
public record BallBearing(
        @Key(
                        value = "Friction coefficient referred to the radius of the bore",
                        range = "[0, 1]",
                        orElse = "0.0015",
                        example = "0.01")
                double friction,
        @Key(
                        value = "Diametral clearance seen at the arm",
                        is = Dimension.LENGTH,
                        range = "[0 mm, 5 mm]",
                        orElse = "0 mm",
                        example = "0.015 mm")
                double clearance,
        @Key(value = "Bearings on each pin", range = "[1, 8]", orElse = "2", example = "2")
                int count,
        @Key(
                        value = "Static load rating of one bearing",
                        is = Dimension.FORCE,
                        range = "(0 N, 1000000 N]",
                        example = "380 N")
                OptionalDouble staticRating,
        @Key(value = "Designation, for the order list", example = "625")
                Optional<String> designation)
        implements Bearing {
    /** Checks every value against its key. */
    public BallBearing {
        Keys.check(BallBearing.class, friction, clearance, count, staticRating, designation);
    }
}
