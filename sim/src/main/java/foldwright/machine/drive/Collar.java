// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.drive;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;

/**
 * The collar or thrust bearing of a screw.
 *
 * @param friction friction coefficient [1]
 * @param diameter mean diameter on which it rubs [m]
 */
@Kind("The collar or thrust bearing of a screw.")
public record Collar(
        @Key(value = "Friction coefficient", range = "[0, 1]", example = "0.003") double friction,
        @Key(
                        value = "Mean diameter on which it rubs",
                        is = Dimension.LENGTH,
                        range = "[0 mm, 200 mm]",
                        example = "12 mm")
                double diameter) {
    /** Checks every value against its key. */
    public Collar {
        Keys.check(Collar.class, friction, diameter);
    }
}
