// SPDX-License-Identifier: Apache-2.0
package foldwright.machine;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;
import java.util.OptionalDouble;

/**
 * The removable mount of the tool.
 *
 * @param kind how it holds
 * @param holdingForce force that presses the tool into its seat [N]
 * @param halfWidth half the distance between its contacts [m]
 * @param friction friction coefficient of its contacts [1]
 * @param stiffness stiffness of one contact [N/m]
 * @param safetyFactor by how much the force must exceed what is needed [1]
 */
@Kind("The removable mount of the tool.")
public record ToolSeat(
        @Key(value = "How it holds", example = "magnetic") SeatKind kind,
        @Key(
                        value = "Force that presses the tool into its seat",
                        is = Dimension.FORCE,
                        range = "(0 N, 100000 N]",
                        example = "100 N")
                double holdingForce,
        @Key(
                        value = "Half the distance between its contacts",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 1 m]",
                        example = "18 mm")
                double halfWidth,
        @Key(
                        value = "Friction coefficient of its contacts",
                        range = "[0, 1]",
                        orElse = "0.15",
                        example = "0.15")
                double friction,
        @Key(
                        value = "Stiffness of one contact",
                        is = Dimension.STIFFNESS,
                        range = "(0 N/mm, 10000000 N/mm]",
                        example = "20000 N/mm")
                OptionalDouble stiffness,
        @Key(
                        value = "By how much the force must exceed what is needed",
                        range = "[1, 10]",
                        orElse = "2",
                        example = "2")
                double safetyFactor) {
    /** Checks every value against its key. */
    public ToolSeat {
        Keys.check(
                ToolSeat.class, kind, holdingForce, halfWidth, friction, stiffness, safetyFactor);
    }
}
