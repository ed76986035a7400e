// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.gantry;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.machine.part.Point;
import foldwright.quantity.Dimension;
import java.util.OptionalDouble;

/**
 * What carries the tool along the bridge.
 *
 * @param mass mass of the whole head, tool and seat included [kg]
 * @param massCentre its centre of mass from the middle of its blocks
 * @param toolPoint where the tool works, from the middle of its blocks
 * @param yawInertia moment of inertia about the vertical through its centre of mass; left out: none
 *     [kg·m²]
 */
@Kind("What carries the tool along the bridge.")
public record Carriage(
        @Key(
                        value = "Mass of the whole head, tool and seat included",
                        is = Dimension.MASS,
                        range = "(0 kg, 200 kg]",
                        example = "0.75 kg")
                double mass,
        @Key(
                        value = "Its centre of mass from the middle of its blocks",
                        orElse = "[\"0 mm\", \"0 mm\", \"0 mm\"]",
                        example = "[\"0 mm\", \"30 mm\", \"-10 mm\"]")
                Point massCentre,
        @Key(
                        value = "Where the tool works, from the middle of its blocks",
                        orElse = "[\"0 mm\", \"0 mm\", \"0 mm\"]",
                        example = "[\"0 mm\", \"45 mm\", \"-44 mm\"]")
                Point toolPoint,
        @Key(
                        value =
                                "Moment of inertia about the vertical through its centre of mass; left out: none",
                        is = Dimension.INERTIA,
                        range = "(0 g*cm2, 1000000000 g*cm2]")
                OptionalDouble yawInertia) {
    /** Checks every value against its key. */
    public Carriage {
        Keys.check(Carriage.class, mass, massCentre, toolPoint, yawInertia);
    }
}
