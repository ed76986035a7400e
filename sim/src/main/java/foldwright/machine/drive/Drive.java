// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.drive;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import java.util.List;

/**
 * What opens the lift: a source of motion, a transmission and one or more equal screws.
 *
 * @param screw the screw, equal for all lines
 * @param lines where the screws are
 * @param transmission what is between motor and screws
 * @param source what turns them
 * @param rise how fast it is asked to rise
 */
@Kind("What opens the lift: a source of motion, a transmission and one or more equal screws.")
public record Drive(
        @Key("The screw, equal for all lines") Screw screw,
        @Key(value = "Where the screws are", range = "[1, 8]") List<ScrewLine> lines,
        @Key("What is between motor and screws") Transmission transmission,
        @Key("What turns them") DriveSource source,
        @Key("How fast it is asked to rise") Rise rise) {
    /** Checks every value against its key and copies the lists. */
    public Drive {
        Keys.check(Drive.class, screw, lines, transmission, source, rise);
        lines = List.copyOf(lines);
    }

    /** Whether a hand turns the screws, not motors. */
    public boolean byHand() {
        return source instanceof HandCrank;
    }

    /** How many motors or cranks turn the screws. */
    public int motors() {
        boolean each = source instanceof StepperDrive s && s.motors() == MotorCount.ONE_PER_SCREW;
        return each ? lines.size() : 1;
    }
}
