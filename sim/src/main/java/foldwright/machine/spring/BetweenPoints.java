// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.spring;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import java.util.List;

/**
 * Between any two points of base, arms, slider ends and deck.
 *
 * @param ends the two ends of each spring
 */
@Kind(value = "Between any two points of base, arms, slider ends and deck.", word = "points")
public record BetweenPoints(
        @Key(value = "The two ends of each spring", range = "[1, 64]") List<SpringEnds> ends)
        implements SpringPlacement {
    /** Checks every value against its key and copies the lists. */
    public BetweenPoints {
        Keys.check(BetweenPoints.class, ends);
        ends = List.copyOf(ends);
    }

    @Override
    public int count() {
        return ends.size();
    }
}
