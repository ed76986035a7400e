// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.linkage;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;

/**
 * Two openings of the lift.
 *
 * @param low the lower one
 * @param high the higher one
 */
@Kind("Two openings of the lift.")
public record OpeningRange(
        @Key(value = "The lower one", example = "5.13 deg") Opening low,
        @Key(value = "The higher one", example = "46 deg") Opening high) {
    /** Checks every value against its key. */
    public OpeningRange {
        Keys.check(OpeningRange.class, low, high);
    }
}
