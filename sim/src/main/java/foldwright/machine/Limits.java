// SPDX-License-Identifier: Apache-2.0
package foldwright.machine;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;
import java.util.OptionalDouble;

/**
 * Limits the maker asks for.
 *
 * @param motorMargin torque the motor has divided by torque it needs, at least [1]
 * @param lean sideways lean at the tool under the asked acceleration, at most [m]
 * @param skew skew of the bridge from end to end, at most [m]
 * @param toolError error of the tool point in the plane, at most [m]
 * @param droop height difference of the two sides, at most [m]
 * @param unfoldTime time to unfold, at most [s]
 */
@Kind("Limits the maker asks for.")
public record Limits(
        @Key(
                        value = "Torque the motor has divided by torque it needs, at least",
                        range = "[1, 10]",
                        orElse = "1.5",
                        example = "1.5")
                double motorMargin,
        @Key(
                        value = "Sideways lean at the tool under the asked acceleration, at most",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 100 mm]",
                        example = "0.20 mm")
                OptionalDouble lean,
        @Key(
                        value = "Skew of the bridge from end to end, at most",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 100 mm]",
                        example = "0.10 mm")
                OptionalDouble skew,
        @Key(
                        value = "Error of the tool point in the plane, at most",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 100 mm]",
                        example = "0.10 mm")
                OptionalDouble toolError,
        @Key(
                        value = "Height difference of the two sides, at most",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 100 mm]",
                        example = "0.5 mm")
                OptionalDouble droop,
        @Key(
                        value = "Time to unfold, at most",
                        is = Dimension.TIME,
                        range = "(0 s, 3600 s]",
                        example = "90 s")
                OptionalDouble unfoldTime) {
    /** Checks every value against its key. */
    public Limits {
        Keys.check(Limits.class, motorMargin, lean, skew, toolError, droop, unfoldTime);
    }
}
