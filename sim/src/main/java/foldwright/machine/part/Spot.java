// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.part;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;

/**
 * A place in plan, written as a list of two lengths.
 *
 * @param x first coordinate of the frame in use [m]
 * @param y second coordinate of the frame in use [m]
 */
@Kind("A place in plan, written as a list of two lengths.")
public record Spot(
        @Key(
                        value = "First coordinate of the frame in use",
                        is = Dimension.LENGTH,
                        range = "[-10 m, 10 m]")
                double x,
        @Key(
                        value = "Second coordinate of the frame in use",
                        is = Dimension.LENGTH,
                        range = "[-10 m, 10 m]")
                double y) {
    /** Checks every value against its key. */
    public Spot {
        Keys.check(Spot.class, x, y);
    }

    /** The origin. */
    public static final Spot ORIGIN = new Spot(0, 0);
}
