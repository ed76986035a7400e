// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.drive;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;
import java.util.OptionalDouble;

/**
 * A coupling: the screw turns with the motor.
 *
 * @param stiffness torsional stiffness of the coupling [N·m/rad]
 */
@Kind(value = "A coupling: the screw turns with the motor.", word = "direct")
public record Direct(
        @Key(
                        value = "Torsional stiffness of the coupling",
                        is = Dimension.TORSION_STIFFNESS,
                        range = "(0 N*m/rad, 1000000 N*m/rad]",
                        example = "20 N*m/rad")
                OptionalDouble stiffness)
        implements Transmission {
    /** Checks every value against its key. */
    public Direct {
        Keys.check(Direct.class, stiffness);
    }
}
