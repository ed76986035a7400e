// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.drive;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;
import foldwright.quantity.Printed;
import java.util.OptionalDouble;

/**
 * The nut.
 *
 * @param friction friction coefficient in the thread [1]
 * @param frictionLow lowest friction to expect, freshly oiled [1]
 * @param frictionHigh highest friction to expect, dry [1]
 * @param length length of engaged thread [m]
 * @param play axial play [m]
 * @param allowedPressure pressure the thread flanks may carry [Pa]
 */
@Kind("The nut.")
public record Nut(
        @Key(value = "Friction coefficient in the thread", range = "[0, 1]", example = "0.15")
                double friction,
        @Key(value = "Lowest friction to expect, freshly oiled", range = "[0, 1]", example = "0.10")
                OptionalDouble frictionLow,
        @Key(value = "Highest friction to expect, dry", range = "[0, 1]", example = "0.20")
                OptionalDouble frictionHigh,
        @Key(
                        value = "Length of engaged thread",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 500 mm]",
                        example = "15 mm")
                double length,
        @Key(
                        value = "Axial play",
                        is = Dimension.LENGTH,
                        range = "[0 mm, 5 mm]",
                        orElse = "0 mm",
                        example = "0.08 mm")
                double play,
        @Key(
                        value = "Pressure the thread flanks may carry",
                        is = Dimension.STRESS,
                        range = "(0 MPa, 1000 MPa]",
                        example = "5 MPa")
                OptionalDouble allowedPressure) {
    /** Checks every value against its key. */
    public Nut {
        Keys.check(Nut.class, friction, frictionLow, frictionHigh, length, play, allowedPressure);
        if (frictionLow.orElse(friction) > friction) {
            throw wrong(friction, "at least its low", frictionLow.getAsDouble());
        }
        if (frictionHigh.orElse(friction) < friction) {
            throw wrong(friction, "at most its high", frictionHigh.getAsDouble());
        }
    }

    /** Least friction to expect: as given for fresh oil, else the usual one [1]. */
    public double leastFriction() {
        return frictionLow.orElse(friction);
    }

    private static IllegalArgumentException wrong(double friction, String allowed, double limit) {
        return new IllegalArgumentException(
                "Nut: friction is "
                        + Printed.given(Dimension.RATIO, friction)
                        + "; allowed: "
                        + allowed
                        + ", "
                        + Printed.given(Dimension.RATIO, limit));
    }
}
