// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.part;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;

/**
 * A place in three coordinates, written as a list of three lengths.
 *
 * @param x coordinate along the scissor, from the fixed end towards the slider end [m]
 * @param y coordinate across, from front to back [m]
 * @param z coordinate upwards [m]
 */
@Kind("A place in three coordinates, written as a list of three lengths.")
public record Point(
        @Key(
                        value =
                                "Coordinate along the scissor, from the fixed end towards the slider end",
                        is = Dimension.LENGTH,
                        range = "[-10 m, 10 m]")
                double x,
        @Key(
                        value = "Coordinate across, from front to back",
                        is = Dimension.LENGTH,
                        range = "[-10 m, 10 m]")
                double y,
        @Key(value = "Coordinate upwards", is = Dimension.LENGTH, range = "[-10 m, 10 m]")
                double z) {
    /** Checks every value against its key. */
    public Point {
        Keys.check(Point.class, x, y, z);
    }

    /** The origin. */
    public static final Point ORIGIN = new Point(0, 0, 0);
}
