// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.force;

/**
 * A force along a coordinate as a function of its value, its rate and time: springs of any kind,
 * dampers, motors.
 */
public interface ForceLaw {
    /**
     * Fills every field of {@code out}.
     *
     * @param value coordinate [m or rad]
     * @param rate its rate [m/s or rad/s]
     * @param time [s]
     */
    void evaluate(double value, double rate, double time, Response out);

    /**
     * Largest change of the coordinate that the solver may make in one Newton update [m or rad]; a
     * motor with several rest positions states a part of their distance here.
     */
    default double largestUpdate() {
        return Double.POSITIVE_INFINITY;
    }

    /**
     * Whether a step from one value and time to another is too coarse for this law: the solver then
     * halves it inside its grid.
     *
     * @param from value at the start [m or rad]
     * @param to value at the end [m or rad]
     * @param start time at the start [s]
     * @param end time at the end [s]
     */
    default boolean coarse(double from, double to, double start, double end) {
        return false;
    }

    /** What a law gives back. */
    final class Response {
        /** Force towards larger values [N or N m]. */
        public double force;

        /** Minus its derivative with respect to the value [N/m or N m/rad]. */
        public double stiffness;

        /** Minus its derivative with respect to the rate [N s/m or N m s/rad]. */
        public double damping;

        /** The part of {@link #force} that turns work into heat [N or N m]. */
        public double loss;

        /** Energy stored at this value [J]. */
        public double energy;

        /** Sets all fields to zero. */
        public void clear() {
            force = 0;
            stiffness = 0;
            damping = 0;
            loss = 0;
            energy = 0;
        }
    }
}
