// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.machine.Machine;
import foldwright.machine.drive.HandCrank;

/**
 * What people call the thing that turns the screws.
 *
 * @param where it is asked for torque, e.g. "the motor"
 * @param giver who gives that torque, e.g. "the motor"; one word without its article
 * @param torque title of its torque
 */
record SourceWords(String where, String giver, String torque) {
    private static final SourceWords MOTOR = new SourceWords("the motor", "motor", "Motor torque");
    private static final SourceWords MOTORS = new SourceWords("each motor", "each", "Motor torque");
    private static final SourceWords CRANK = new SourceWords("the crank", "hand", "Crank torque");

    static SourceWords of(Machine machine) {
        if (machine.drive().source() instanceof HandCrank) {
            return CRANK;
        }
        return machine.drive().motors() > 1 ? MOTORS : MOTOR;
    }

    /** E.g. "the motor gives", to go on a sentence. */
    String gives() {
        return (this == MOTORS ? "" : "the ") + giver + " gives";
    }
}
