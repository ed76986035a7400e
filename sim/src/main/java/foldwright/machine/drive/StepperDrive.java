// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.drive;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.machine.part.Stepper;

/**
 * Stepping motors.
 *
 * @param motor the motor
 * @param motors one for all screws, or one for each
 * @param microsteps microsteps in a full step
 */
@Kind(value = "Stepping motors.", word = "stepper")
public record StepperDrive(
        @Key("The motor") Stepper motor,
        @Key(value = "One for all screws, or one for each", orElse = "one-for-all")
                MotorCount motors,
        @Key(value = "Microsteps in a full step", range = "[1, 256]", orElse = "16", example = "16")
                int microsteps)
        implements DriveSource {
    /** Checks every value against its key. */
    public StepperDrive {
        Keys.check(StepperDrive.class, motor, motors, microsteps);
    }
}
