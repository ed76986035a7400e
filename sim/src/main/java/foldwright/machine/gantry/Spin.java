// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.gantry;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;

/**
 * What a wheel brings with it when it turns.
 *
 * @param inertia moment of inertia [kg·m²]
 * @param drag friction torque of its bearing [N·m]
 */
@Kind("What a wheel brings with it when it turns.")
public record Spin(
        @Key(
                        value = "Moment of inertia",
                        is = Dimension.INERTIA,
                        range = "[0 g*cm2, 100000 g*cm2]",
                        orElse = "0 g*cm2",
                        example = "2 g*cm2")
                double inertia,
        @Key(
                        value = "Friction torque of its bearing",
                        is = Dimension.TORQUE,
                        range = "[0 N*m, 10 N*m]",
                        orElse = "0 N*m",
                        example = "0.0005 N*m")
                double drag) {
    /** Checks every value against its key. */
    public Spin {
        Keys.check(Spin.class, inertia, drag);
    }
}
