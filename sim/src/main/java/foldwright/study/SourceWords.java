// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.machine.Machine;
import java.util.Locale;

/**
 * What people call the thing that turns the screws.
 *
 * @param noun what it is, e.g. "motor"
 * @param where it is asked for torque, e.g. "the motor"
 * @param giver who gives that torque, e.g. "the motor"; one word without its article
 */
public record SourceWords(String noun, String where, String giver) {
    private static final SourceWords MOTOR = new SourceWords("motor", "the motor", "motor");
    private static final SourceWords MOTORS = new SourceWords("motor", "each motor", "each");
    private static final SourceWords CRANK = new SourceWords("crank", "the crank", "hand");

    /** The words for the source of a machine. */
    public static SourceWords of(Machine machine) {
        if (machine.drive().byHand()) {
            return CRANK;
        }
        return machine.drive().motors() > 1 ? MOTORS : MOTOR;
    }

    /** Title of its torque, e.g. "Motor torque". */
    String torque() {
        return noun.substring(0, 1).toUpperCase(Locale.ROOT) + noun.substring(1) + " torque";
    }

    /** The torque at which a run ends, e.g. "pull-out". */
    String limit() {
        return this == CRANK ? "hand gives" : "pull-out";
    }

    /** E.g. "the motor gives", to go on a sentence. */
    String gives() {
        return (this == MOTORS ? "" : "the ") + giver + " gives";
    }
}
