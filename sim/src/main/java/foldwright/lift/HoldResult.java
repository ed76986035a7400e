// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.machine.keys.Keys;
import foldwright.mechanics.solve.Failure;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What the lift does with the power off.
 *
 * @param machine name of the machine
 * @param points over the travel, rising in height
 * @param flipFriction thread friction at which the verdict flips at the worst height, found by
 *     halving on the model [1]; empty when it holds even without thread friction or never holds
 * @param runDown the lift let go in time, from the highest height it sinks from; empty when it
 *     sinks from none
 * @param sentence the verdict in plain words with numbers
 */
public record HoldResult(
        String machine,
        List<Point> points,
        Optional<Double> flipFriction,
        Optional<RunDown> runDown,
        String sentence) {
    public HoldResult {
        points = List.copyOf(points);
    }

    /** What an unpowered lift does at one height. */
    public enum Verdict {
        /** Stays with the lowest thread friction of the range. */
        HOLDS,
        /** Stays with the highest thread friction of the range, not with the lowest. */
        MAY_HOLD,
        /** Sinks even with the highest thread friction of the range. */
        RUNS_DOWN,
        /** Springs push it up even with the highest thread friction of the range. */
        SPRINGS_UP,
        /** No balance of loads was found: nothing is known of this height. */
        NOT_SOLVED;

        /** The words a person reads. */
        public String words() {
            return Keys.words(this);
        }
    }

    /**
     * One height.
     *
     * @param height pivot height [m]
     * @param verdict over the range of thread friction
     * @param nutForce the most loaded nut carries at rest, positive when it carries the deck; this
     *     and all below but the detent are not a number where nothing was solved [N]
     * @param driveTorque what the load puts on the motor shaft with the lowest thread friction,
     *     negative when friction alone holds it [N·m]
     * @param detent torque with which the unpowered motor holds [N·m]
     * @param frictionNeeded thread friction that just holds here, detent and pins counted [1]
     * @param droop one deck side lower than the other [m]
     */
    public record Point(
            double height,
            Verdict verdict,
            double nutForce,
            double driveTorque,
            double detent,
            double frictionNeeded,
            double droop) {}

    /** How a run without power ended. */
    public enum RunEnd {
        /** Ran onto its stop. */
        ARRIVED,
        /** Stood still before a stop, or never moved. */
        STANDS,
        /** Was still moving when the time of the study was over. */
        MOVING,
        /** A step failed: what came after is not known. */
        NOT_SOLVED;

        /** The words a person reads. */
        public String words() {
            return Keys.words(this);
        }
    }

    /**
     * The lift let go without power.
     *
     * @param from pivot height it starts at [m]
     * @param to pivot height it was last seen at [m]
     * @param time from release to that [s]
     * @param topSpeed largest deck speed [m/s]
     * @param arrivalSpeed deck speed at the stop; 0 where it reached none [m/s]
     * @param energy of all moving parts on arrival; 0 where it reached none [J]
     * @param threadFriction it was run with [1]
     * @param end how it ended
     * @param failure of the step that failed; present exactly for {@link RunEnd#NOT_SOLVED}
     */
    public record RunDown(
            double from,
            double to,
            double time,
            double topSpeed,
            double arrivalSpeed,
            double energy,
            double threadFriction,
            RunEnd end,
            Optional<Failure> failure) {
        public RunDown {
            Objects.requireNonNull(end, "end");
            if (failure.isPresent() != (end == RunEnd.NOT_SOLVED)) {
                throw new IllegalArgumentException("end " + end + " with failure " + failure);
            }
        }
    }

    /** The height at which most thread friction is needed, of those that were solved. */
    public Optional<Point> worst() {
        return points.stream()
                .filter(p -> p.verdict() != Verdict.NOT_SOLVED)
                .max(Comparator.comparingDouble(Point::frictionNeeded));
    }

    /** The heights of which nothing is known. */
    public List<Point> unsolved() {
        return points.stream().filter(p -> p.verdict() == Verdict.NOT_SOLVED).toList();
    }
}
