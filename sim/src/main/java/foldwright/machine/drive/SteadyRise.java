// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.drive;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;

/**
 * The deck rises at one speed, so the motor turns faster the higher it is.
 *
 * @param speed rise speed of the deck [m/s]
 * @param acceleration acceleration of the deck at start and stop [m/s²]
 */
@Kind(
        value = "The deck rises at one speed, so the motor turns faster the higher it is.",
        word = "steady")
public record SteadyRise(
        @Key(
                        value = "Rise speed of the deck",
                        is = Dimension.SPEED,
                        range = "(0 mm/s, 1 m/s]",
                        example = "4 mm/s")
                double speed,
        @Key(
                        value = "Acceleration of the deck at start and stop",
                        is = Dimension.ACCELERATION,
                        range = "(0 mm/s2, 10 m/s2]",
                        orElse = "20 mm/s2",
                        example = "20 mm/s2")
                double acceleration)
        implements Rise {
    /** Checks every value against its key. */
    public SteadyRise {
        Keys.check(SteadyRise.class, speed, acceleration);
    }
}
