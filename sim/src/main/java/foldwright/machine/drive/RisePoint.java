// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.drive;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;

/**
 * One point of a rise profile.
 *
 * @param height height of the deck pins above the base pins [m]
 * @param speed rise speed there [m/s]
 */
@Kind("One point of a rise profile.")
public record RisePoint(
        @Key(
                        value = "Height of the deck pins above the base pins",
                        is = Dimension.LENGTH,
                        range = "[0 mm, 20 m]",
                        example = "60 mm")
                double height,
        @Key(
                        value = "Rise speed there",
                        is = Dimension.SPEED,
                        range = "(0 mm/s, 1 m/s]",
                        example = "6 mm/s")
                double speed) {
    /** Checks every value against its key. */
    public RisePoint {
        Keys.check(RisePoint.class, height, speed);
    }
}
