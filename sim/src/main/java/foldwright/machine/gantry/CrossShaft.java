// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.gantry;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;

/**
 * A shaft from a motor to wheels farther away.
 *
 * @param name what it is called; the wheels at its far end are turned by this name
 * @param stiffness torsional stiffness from the motor to its far end [N·m/rad]
 * @param inertia moment of inertia [kg·m²]
 */
@Kind("A shaft from a motor to wheels farther away.")
public record CrossShaft(
        @Key(
                        value =
                                "What it is called; the wheels at its far end are turned by this name",
                        example = "cross shaft")
                String name,
        @Key(
                        value = "Torsional stiffness from the motor to its far end",
                        is = Dimension.TORSION_STIFFNESS,
                        range = "(0 N*m/rad, 1000000 N*m/rad]",
                        example = "30 N*m/rad")
                double stiffness,
        @Key(
                        value = "Moment of inertia",
                        is = Dimension.INERTIA,
                        range = "[0 g*cm2, 1000000 g*cm2]",
                        orElse = "0 g*cm2",
                        example = "10 g*cm2")
                double inertia) {
    /** Checks every value against its key. */
    public CrossShaft {
        Keys.check(CrossShaft.class, name, stiffness, inertia);
    }
}
