// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.gantry;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;
import java.util.OptionalDouble;

/**
 * Motion the gantry is asked for.
 *
 * @param acceleration acceleration [m/s²]
 * @param speed speed [m/s]
 * @param jerk jerk; left out: acceleration steps [m/s³]
 * @param cornerDeviation how far a corner may be rounded [m]
 */
@Kind("Motion the gantry is asked for.")
public record Moves(
        @Key(
                        value = "Acceleration",
                        is = Dimension.ACCELERATION,
                        range = "(0 m/s2, 200 m/s2]",
                        example = "3 m/s2")
                double acceleration,
        @Key(
                        value = "Speed",
                        is = Dimension.SPEED,
                        range = "(0 mm/s, 20 m/s]",
                        example = "200 mm/s")
                double speed,
        @Key(
                        value = "Jerk; left out: acceleration steps",
                        is = Dimension.JERK,
                        range = "(0 m/s3, 1000000 m/s3]",
                        example = "80 m/s3")
                OptionalDouble jerk,
        @Key(
                        value = "How far a corner may be rounded",
                        is = Dimension.LENGTH,
                        range = "[0 mm, 10 mm]",
                        orElse = "0.02 mm",
                        example = "0.02 mm")
                double cornerDeviation) {
    /** Checks every value against its key. */
    public Moves {
        Keys.check(Moves.class, acceleration, speed, jerk, cornerDeviation);
    }
}
