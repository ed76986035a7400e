// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.part;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;

/**
 * A full round bar.
 *
 * @param diameter diameter [m]
 */
@Kind(value = "A full round bar.", word = "round")
public record Round(
        @Key(value = "Diameter", is = Dimension.LENGTH, range = "(0 mm, 1 m]", example = "8 mm")
                double diameter)
        implements Section {
    /** Checks every value against its key. */
    public Round {
        Keys.check(Round.class, diameter);
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
        return Math.PI * diameter * diameter / 4;
    }

    @Override
    public double drilledWidth() {
        return width();
    }

    @Override
    public double inPlaneMoment() {
        return Math.PI * Math.pow(diameter, 4) / 64;
    }

    @Override
    public double acrossMoment() {
        return inPlaneMoment();
    }
}
