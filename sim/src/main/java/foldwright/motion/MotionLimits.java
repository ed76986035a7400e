// SPDX-License-Identifier: Apache-2.0
package foldwright.motion;

import java.util.List;
import java.util.Objects;

/**
 * What the axes may do and how moves are timed.
 *
 * @param axes limits of X, Y and Z, in this order
 * @param path limits along the path, whatever its direction
 * @param ramps how speed changes
 * @param corners how fast a corner is passed
 */
public record MotionLimits(List<AxisLimits> axes, AxisLimits path, Ramps ramps, Corners corners) {

    /**
     * Limits of one axis, or along the path; infinite where there is none.
     *
     * @param speed [m/s]
     * @param acceleration [m/s2]
     * @param jerk [m/s3], used by jerk-limited ramps only
     */
    public record AxisLimits(double speed, double acceleration, double jerk) {
        public AxisLimits {
            if (!(speed > 0) || !(acceleration > 0) || !(jerk > 0)) {
                throw new IllegalArgumentException(
                        "limits must be positive: speed "
                                + speed
                                + ", acceleration "
                                + acceleration
                                + ", jerk "
                                + jerk);
            }
        }
    }

    /** How speed changes. */
    public enum Ramps {
        /** Constant acceleration. */
        TRAPEZOID,
        /** Limited jerk: the acceleration rises and falls steadily. */
        JERK_LIMITED
    }

    /** How fast a corner is passed. */
    public sealed interface Corners {}

    /**
     * Corners at the speed of an arc that stays within a deviation of the corner. The tool does
     * pass the vertex; the arc only sets the speed. (S. Jeon, article on a cornering rule, 24 Sep
     * 2011.)
     *
     * @param deviation distance of that arc from the vertex [m]
     */
    public record Rounded(double deviation) implements Corners {
        public Rounded {
            if (!(deviation > 0)) {
                throw new IllegalArgumentException("deviation must be positive: " + deviation);
            }
        }
    }

    /** A full stop at every corner. */
    public record FullStops() implements Corners {}

    public MotionLimits {
        axes = List.copyOf(axes);
        if (axes.size() != 3) {
            throw new IllegalArgumentException(
                    "limits of X, Y and Z are needed, not of " + axes.size() + " axes");
        }
        Objects.requireNonNull(path, "path");
        Objects.requireNonNull(ramps, "ramps");
        Objects.requireNonNull(corners, "corners");
    }

    /** Limits that hold along the path in every direction. */
    public static MotionLimits alongPath(AxisLimits path, Ramps ramps, Corners corners) {
        AxisLimits none =
                new AxisLimits(
                        Double.POSITIVE_INFINITY,
                        Double.POSITIVE_INFINITY,
                        Double.POSITIVE_INFINITY);
        return new MotionLimits(List.of(none, none, none), path, ramps, corners);
    }
}
