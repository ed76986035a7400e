// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.drive;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;

/**
 * A crank turned by hand.
 *
 * @param radius radius of the crank [m]
 * @param allowedForce force a hand is asked for at most [N]
 * @param speed speed at which it is turned [rad/s]
 */
@Kind(value = "A crank turned by hand.", word = "hand-crank")
public record HandCrank(
        @Key(
                        value = "Radius of the crank",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 1 m]",
                        example = "40 mm")
                double radius,
        @Key(
                        value = "Force a hand is asked for at most",
                        is = Dimension.FORCE,
                        range = "(0 N, 500 N]",
                        example = "20 N")
                double allowedForce,
        @Key(
                        value = "Speed at which it is turned",
                        is = Dimension.ROTATION_SPEED,
                        range = "(0 rev/s, 10 rev/s]",
                        orElse = "1 rev/s",
                        example = "1 rev/s")
                double speed)
        implements DriveSource {
    /** Checks every value against its key. */
    public HandCrank {
        Keys.check(HandCrank.class, radius, allowedForce, speed);
    }
}
