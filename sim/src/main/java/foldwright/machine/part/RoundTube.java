// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.part;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;
import foldwright.quantity.Printed;

/**
 * A round tube.
 *
 * @param diameter outer diameter [m]
 * @param wall wall thickness [m]
 */
@Kind(value = "A round tube.", word = "round-tube")
public record RoundTube(
        @Key(
                        value = "Outer diameter",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 1 m]",
                        example = "20 mm")
                double diameter,
        @Key(
                        value = "Wall thickness",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 100 mm]",
                        example = "1 mm")
                double wall)
        implements Section {
    /** Checks every value against its key. */
    public RoundTube {
        Keys.check(RoundTube.class, diameter, wall);
        if (2 * wall >= diameter) {
            throw new IllegalArgumentException(
                    "RoundTube: a wall of "
                            + Printed.given(Dimension.LENGTH, wall)
                            + " leaves no hollow; allowed: less than "
                            + Printed.given(Dimension.LENGTH, diameter / 2));
        }
    }

    @Override
    public double depth() {
        return diameter;
    }

    @Override
    public double width() {
        return diameter;
    }

    @Override
    public double area() {
        return Math.PI * (diameter * diameter - inner() * inner()) / 4;
    }

    @Override
    public double drilledWidth() {
        return 2 * wall;
    }

    @Override
    public double inPlaneMoment() {
        return Math.PI * (Math.pow(diameter, 4) - Math.pow(inner(), 4)) / 64;
    }

    @Override
    public double acrossMoment() {
        return inPlaneMoment();
    }

    private double inner() {
        return diameter - 2 * wall;
    }
}
