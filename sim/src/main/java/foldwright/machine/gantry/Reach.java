// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.gantry;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;
import foldwright.quantity.Printed;

/**
 * A travel.
 *
 * @param low lower end in the gantry frame [m]
 * @param high upper end in the gantry frame [m]
 */
@Kind("A travel.")
public record Reach(
        @Key(
                        value = "Lower end in the gantry frame",
                        is = Dimension.LENGTH,
                        range = "[-10 m, 10 m]",
                        example = "30 mm")
                double low,
        @Key(
                        value = "Upper end in the gantry frame",
                        is = Dimension.LENGTH,
                        range = "[-10 m, 10 m]",
                        example = "210 mm")
                double high) {
    /** Checks every value against its key. */
    public Reach {
        Keys.check(Reach.class, low, high);
        if (!(low < high)) {
            throw new IllegalArgumentException(
                    "Reach: low is "
                            + Printed.given(Dimension.LENGTH, low)
                            + "; allowed: below high, "
                            + Printed.given(Dimension.LENGTH, high));
        }
    }

    /** Length of the travel [m]. */
    public double length() {
        return high - low;
    }

    /** Middle of the travel [m]. */
    public double middle() {
        return (low + high) / 2;
    }
}
