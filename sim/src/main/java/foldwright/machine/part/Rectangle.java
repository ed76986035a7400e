// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.part;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;

/**
 * A full rectangle.
 *
 * @param depth outer size in the plane of the scissor, for a bridge upwards [m]
 * @param width outer size across that plane [m]
 */
@Kind(value = "A full rectangle.", word = "rectangle")
public record Rectangle(
        @Key(
                        value = "Outer size in the plane of the scissor, for a bridge upwards",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 1 m]",
                        example = "16 mm")
                double depth,
        @Key(
                        value = "Outer size across that plane",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 1 m]",
                        example = "6 mm")
                double width)
        implements Section {
    /** Checks every value against its key. */
    public Rectangle {
        Keys.check(Rectangle.class, depth, width);
    }

    @Override
    public double area() {
        return depth * width;
    }

    @Override
    public double drilledWidth() {
        return width;
    }

    @Override
    public double inPlaneMoment() {
        return width * Math.pow(depth, 3) / 12;
    }

    @Override
    public double acrossMoment() {
        return depth * Math.pow(width, 3) / 12;
    }
}
