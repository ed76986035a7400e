// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.lift.Cause;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A quantity over the height of the deck pins: what is needed, what there is, and the margin.
 *
 * @param caption title, second line and unit
 * @param height heights of the deck pins, rising [m]
 * @param needed at every height [SI of the unit]
 * @param available the limit at every height
 * @param margin at every height [1]
 * @param layers the needed amount split by cause; empty when there is no split
 * @param beside a second curve drawn dashed (the way down, the machine after its cure)
 */
public record HeightPlot(
        Caption caption,
        Series height,
        Series needed,
        Optional<Limit> available,
        Series margin,
        List<Layer> layers,
        List<Beside> beside)
        implements Plot {

    /**
     * What a plot shows.
     *
     * @param title quantity without unit, e.g. "Torque at the motor"
     * @param subtitle conditions, e.g. "two screws Tr10×2, belt 2:1"
     * @param unit unit of the axis
     */
    public record Caption(String title, String subtitle, Shown unit) {}

    /**
     * A limit.
     *
     * @param words what it is, e.g. "motor gives"
     * @param values at every height [SI of the unit]
     * @param holdsFrom margin from which the check holds [1]
     */
    public record Limit(String words, Series values, double holdsFrom) {}

    /** One cause's share at every height [SI of the unit]. */
    public record Layer(Cause cause, Series values) {}

    /** A second curve: its words, its values and the margin with it (may be empty). */
    public record Beside(String words, Series values, Series margin) {}

    public HeightPlot {
        Objects.requireNonNull(caption, "caption");
        Objects.requireNonNull(available, "available");
        layers = List.copyOf(layers);
        beside = List.copyOf(beside);
        int n = height.size();
        if (n < 2 || needed.size() != n || margin.size() != n) {
            throw new IllegalArgumentException(
                    "a plot over height needs two heights or more and one value for each; found "
                            + n
                            + " heights, "
                            + needed.size()
                            + " values, "
                            + margin.size()
                            + " margins");
        }
        for (int i = 1; i < n; i++) {
            if (!(height.at(i) > height.at(i - 1))) {
                throw new IllegalArgumentException("heights must rise; index " + i);
            }
        }
    }

    /** The same with one curve beside it. */
    public HeightPlot with(Beside curve) {
        return new HeightPlot(caption, height, needed, available, margin, layers, List.of(curve));
    }

    /** Index of the smallest margin. */
    public int worst() {
        return margin.argMin();
    }
}
