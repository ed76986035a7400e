// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.gantry;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.machine.part.Stepper;
import java.util.Optional;

/**
 * A motor of the gantry.
 *
 * @param name what it is called
 * @param on what it is fixed to
 * @param stepper the motor
 * @param microsteps microsteps in a full step
 * @param crossShaft a shaft that carries its motion to the other side
 */
@Kind("A motor of the gantry.")
public record GantryMotor(
        @Key(value = "What it is called", example = "left motor") String name,
        @Key(value = "What it is fixed to", orElse = "frame") RouteBody on,
        @Key("The motor") Stepper stepper,
        @Key(value = "Microsteps in a full step", range = "[1, 256]", orElse = "16", example = "16")
                int microsteps,
        @Key("A shaft that carries its motion to the other side") Optional<CrossShaft> crossShaft) {
    /** Checks every value against its key. */
    public GantryMotor {
        Keys.check(GantryMotor.class, name, on, stepper, microsteps, crossShaft);
    }
}
