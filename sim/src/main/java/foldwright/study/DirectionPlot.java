// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import java.util.List;
import java.util.Objects;

/**
 * What is allowed by direction in the plane of the gantry, beside what is asked for.
 *
 * @param caption title, second line and unit
 * @param spokes one a direction
 * @param asked the same in every direction [SI of the unit]
 */
public record DirectionPlot(HeightPlot.Caption caption, List<Spoke> spokes, double asked)
        implements Plot {
    /**
     * One direction.
     *
     * @param word as people write it, e.g. "+x"
     * @param angle from +x towards +y [rad]
     * @param allowed largest value that keeps every limit [SI of the unit]
     * @param setBy what sets it, in words
     */
    public record Spoke(String word, double angle, double allowed, String setBy) {}

    public DirectionPlot {
        Objects.requireNonNull(caption, "caption");
        spokes = List.copyOf(spokes);
        if (spokes.size() < 3) {
            throw new IllegalArgumentException(
                    spokes.size() + " directions; allowed: 3 or more to go round");
        }
    }
}
