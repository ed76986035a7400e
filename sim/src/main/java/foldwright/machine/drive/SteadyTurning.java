// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.drive;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;

/**
 * The motor turns at one speed, so the deck rises fast when flat and slowly at the top.
 *
 * @param speed speed of the motor or crank [rad/s]
 * @param acceleration acceleration of the motor at start and stop [rad/s²]
 */
@Kind(
        value =
                "The motor turns at one speed, so the deck rises fast when flat and slowly at the top.",
        word = "steady-motor")
public record SteadyTurning(
        @Key(
                        value = "Speed of the motor or crank",
                        is = Dimension.ROTATION_SPEED,
                        range = "(0 rev/s, 200 rev/s]",
                        example = "2 rev/s")
                double speed,
        @Key(
                        value = "Acceleration of the motor at start and stop",
                        is = Dimension.ROTATION_ACCELERATION,
                        range = "(0 rev/s2, 10000 rev/s2]",
                        orElse = "5 rev/s2",
                        example = "5 rev/s2")
                double acceleration)
        implements Rise {
    /** Checks every value against its key. */
    public SteadyTurning {
        Keys.check(SteadyTurning.class, speed, acceleration);
    }
}
