// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.linkage;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;

/**
 * The angle of the lowest arms above horizontal.
 *
 * @param angle arm angle above horizontal [rad]
 */
@Kind(value = "The angle of the lowest arms above horizontal.", word = "angle")
public record ArmAngle(
        @Key(
                        value = "Arm angle above horizontal",
                        is = Dimension.ANGLE,
                        range = "(0 deg, 89.9 deg]")
                double angle)
        implements Opening {
    /** Checks every value against its key. */
    public ArmAngle {
        Keys.check(ArmAngle.class, angle);
    }
}
