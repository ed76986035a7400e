// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.part;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;

/**
 * Tooth numbers of a belt reduction, written as one text.
 *
 * @param motor teeth of the pulley on the motor
 * @param screw teeth of the pulley on each screw
 */
@Kind("Tooth numbers of a belt reduction, written as one text.")
public record Teeth(
        @Key(value = "Teeth of the pulley on the motor", range = "[6, 400]") int motor,
        @Key(value = "Teeth of the pulley on each screw", range = "[6, 400]") int screw) {
    /** Checks every value against its key. */
    public Teeth {
        Keys.check(Teeth.class, motor, screw);
    }

    /** Motor turns for one screw turn [1]. */
    public double ratio() {
        return (double) screw / motor;
    }
}
