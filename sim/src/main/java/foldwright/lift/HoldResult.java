// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import java.util.List;
import java.util.Optional;

/**
 * What the lift does with the power off.
 *
 * @param machine name of the machine
 * @param points over the travel, rising in height
 * @param flipFriction thread friction at which the verdict flips at the worst height, found by
 *     halving on the model [1]; empty when it holds even without thread friction or never holds
 * @param runDown how it runs down when it does, from the worst height
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
        SPRINGS_UP
    }

    /**
     * One height.
     *
     * @param height pivot height [m]
     * @param verdict over the range of thread friction
     * @param nutForce the most loaded nut carries at rest, positive when it carries the deck [N]
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

    /**
     * How it runs.
     *
     * @param from pivot height it starts at [m]
     * @param to pivot height it stops at [m]
     * @param time from release to arrival [s]
     * @param topSpeed largest deck speed [m/s]
     * @param arrivalSpeed deck speed at the stop [m/s]
     * @param energy of all moving parts on arrival [J]
     * @param threadFriction it was run with [1]
     */
    public record RunDown(
            double from,
            double to,
            double time,
            double topSpeed,
            double arrivalSpeed,
            double energy,
            double threadFriction) {}

    /** The height at which most thread friction is needed. */
    public Optional<Point> worst() {
        return points.stream().max(java.util.Comparator.comparingDouble(Point::frictionNeeded));
    }
}
