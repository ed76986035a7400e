// SPDX-License-Identifier: Apache-2.0
package foldwright.machine;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;
import java.util.Optional;

/**
 * The tool in its seat.
 *
 * @param name what it is
 * @param mass mass of what is held in the seat, part of the mass of the carriage [kg]
 * @param reach how far it hangs below the underside of the gantry [m]
 * @param lever distance of its tip and centre of mass from the seat [m]
 * @param processForce largest sideways force of the process at its tip [N]
 * @param whenFolded whether it stays on when folded
 * @param seat what holds it
 */
@Kind("The tool in its seat.")
public record Tool(
        @Key(value = "What it is", example = "dispensing head") String name,
        @Key(
                        value =
                                "Mass of what is held in the seat, part of the mass of the carriage",
                        is = Dimension.MASS,
                        range = "(0 kg, 200 kg]",
                        example = "0.75 kg")
                double mass,
        @Key(
                        value = "How far it hangs below the underside of the gantry",
                        is = Dimension.LENGTH,
                        range = "[0 mm, 2 m]",
                        example = "44 mm")
                double reach,
        @Key(
                        value = "Distance of its tip and centre of mass from the seat",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 2 m]",
                        example = "45 mm")
                double lever,
        @Key(
                        value = "Largest sideways force of the process at its tip",
                        is = Dimension.FORCE,
                        range = "[0 N, 10000 N]",
                        orElse = "0 N",
                        example = "12 N")
                double processForce,
        @Key(value = "Whether it stays on when folded", orElse = "taken-off") WhenFolded whenFolded,
        @Key("What holds it") Optional<ToolSeat> seat) {
    /** Checks every value against its key. */
    public Tool {
        Keys.check(Tool.class, name, mass, reach, lever, processForce, whenFolded, seat);
    }
}
