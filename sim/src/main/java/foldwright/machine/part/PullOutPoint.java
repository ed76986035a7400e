// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.part;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;

/**
 * One point of a pull-out curve.
 *
 * @param speed speed of the motor [rad/s]
 * @param torque torque at which it loses steps [N·m]
 */
@Kind("One point of a pull-out curve.")
public record PullOutPoint(
        @Key(
                        value = "Speed of the motor",
                        is = Dimension.ROTATION_SPEED,
                        range = "[0 rev/s, 500 rev/s]",
                        example = "4 rev/s")
                double speed,
        @Key(
                        value = "Torque at which it loses steps",
                        is = Dimension.TORQUE,
                        range = "[0 N*m, 100 N*m]",
                        example = "0.28 N*m")
                double torque) {
    /** Checks every value against its key. */
    public PullOutPoint {
        Keys.check(PullOutPoint.class, speed, torque);
    }
}
