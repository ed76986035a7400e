// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.route;

import java.util.List;
import java.util.Objects;

/**
 * Why a route cannot work.
 *
 * @param fault kind of fault
 * @param belt name of the belt
 * @param points names of the wheels or anchors it concerns, the likeliest culprit first
 * @param message for people: what was found, what is allowed
 */
public record RouteFinding(Fault fault, String belt, List<String> points, String message) {

    /** Kinds of fault, in the order in which they are looked for. */
    public enum Fault {
        MISPLACED_ANCHOR,
        AXLE_UNKNOWN,
        AXLE_ON_TWO_BODIES,
        MOTOR_WHEEL_PLAIN,
        NO_TANGENT,
        STRAND_TOO_SHORT,
        WRAP_TOO_SMALL,
        WRAP_TOO_LARGE,
        MOTOR_WRAP_TOO_SMALL,
        STRAND_THROUGH_WHEEL,
        STRANDS_CROSS,
        WHEELS_OVERLAP,
        STRAND_TURNS,
        CARRIAGE_NOT_HELD,
        MOTOR_MOVES_NOTHING,
        MOTORS_DEPENDENT,
        BELT_MUST_STRETCH,
        LENGTH_CHANGES
    }

    public RouteFinding {
        Objects.requireNonNull(fault, "fault");
        points = List.copyOf(points);
        Objects.requireNonNull(message, "message");
    }
}
