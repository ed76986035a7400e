// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.part;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;
import foldwright.quantity.Printed;

/**
 * A rectangular tube of even wall.
 *
 * @param depth outer size in the plane of the scissor, for a bridge upwards [m]
 * @param width outer size across that plane [m]
 * @param wall wall thickness [m]
 */
@Kind(value = "A rectangular tube of even wall.", word = "rectangular-tube")
public record RectangularTube(
        @Key(
                        value = "Outer size in the plane of the scissor, for a bridge upwards",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 1 m]",
                        example = "20 mm")
                double depth,
        @Key(
                        value = "Outer size across that plane",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 1 m]",
                        example = "20 mm")
                double width,
        @Key(
                        value = "Wall thickness",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 100 mm]",
                        example = "1.5 mm")
                double wall)
        implements Section {
    /** Checks every value against its key. */
    public RectangularTube {
        Keys.check(RectangularTube.class, depth, width, wall);
        if (2 * wall >= Math.min(depth, width)) {
            throw new IllegalArgumentException(
                    "RectangularTube: a wall of "
                            + Printed.given(Dimension.LENGTH, wall)
                            + " leaves no hollow; allowed: less than "
                            + Printed.given(Dimension.LENGTH, Math.min(depth, width) / 2));
        }
    }

    @Override
    public double area() {
        return depth * width - innerDepth() * innerWidth();
    }

    @Override
    public double drilledWidth() {
        return 2 * wall;
    }

    @Override
    public double inPlaneMoment() {
        return (width * Math.pow(depth, 3) - innerWidth() * Math.pow(innerDepth(), 3)) / 12;
    }

    @Override
    public double acrossMoment() {
        return (depth * Math.pow(width, 3) - innerDepth() * Math.pow(innerWidth(), 3)) / 12;
    }

    private double innerDepth() {
        return depth - 2 * wall;
    }

    private double innerWidth() {
        return width - 2 * wall;
    }
}
