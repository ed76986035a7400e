// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.gantry;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.machine.part.Point;
import foldwright.quantity.Dimension;

/**
 * Where the gantry stands.
 *
 * @param on what carries it
 * @param origin origin of the gantry frame in the frame of what carries it
 * @param turn angle from the x axis of what carries it to the x axis of the gantry,
 *     counter-clockwise seen from above [rad]
 */
@Kind("Where the gantry stands.")
public record Stand(
        @Key(value = "What carries it", orElse = "deck") StandsOn on,
        @Key(
                        value = "Origin of the gantry frame in the frame of what carries it",
                        example = "[\"95 mm\", \"0 mm\", \"10 mm\"]")
                Point origin,
        @Key(
                        value =
                                "Angle from the x axis of what carries it to the x axis of the gantry, counter-clockwise seen from above",
                        is = Dimension.ANGLE,
                        range = "[-360 deg, 360 deg]",
                        orElse = "0 deg",
                        example = "-90 deg")
                double turn) {
    /** Checks every value against its key. */
    public Stand {
        Keys.check(Stand.class, on, origin, turn);
    }
}
