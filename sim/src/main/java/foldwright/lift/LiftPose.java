// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Where every body of the lift is at one pivot height, and what its parts carry there.
 *
 * @param height pivot height [m]
 * @param direction the way the lift was moving when it came here
 * @param bodies every body with its place
 * @param loads loads by part; a part may have several kinds
 */
public record LiftPose(
        double height, Direction direction, List<PlacedBody> bodies, List<PartLoad> loads) {
    public LiftPose {
        bodies = List.copyOf(bodies);
        loads = List.copyOf(loads);
    }

    /**
     * A body placed in the base frame: x along the machine from the fixed to the sliding feet, y to
     * the back, z up; origin midway between the fixed base pins.
     *
     * @param name see {@link LiftNames}
     * @param at place of the body's origin
     * @param turn unit quaternion, body to base
     */
    public record PlacedBody(String name, Point at, Turn turn) {}

    /** A point in the base frame [m]. */
    public record Point(double x, double y, double z) {}

    /** A unit quaternion, w the real part. */
    public record Turn(double w, double x, double y, double z) {}

    /** Kinds of loads on parts, with the unit of their value. */
    public enum LoadKind {
        PIN_FORCE("N"),
        PIN_PRESSURE("Pa"),
        ARM_BENDING("N·m"),
        ARM_AXIAL("N"),
        ARM_STRESS("Pa"),
        GUIDE_FORCE("N"),
        NUT_FORCE("N"),
        SCREW_TORQUE("N·m"),
        SPRING_FORCE("N"),
        SPRING_LENGTH("m"),
        MOTOR_TORQUE("N·m"),
        MOTOR_MARGIN("1");

        private final String unit;

        LoadKind(String unit) {
            this.unit = unit;
        }

        /** SI unit of the values of this kind. */
        public String unit() {
            return unit;
        }
    }

    /** One load on one part. */
    public record PartLoad(String part, LoadKind kind, double value) {}

    /** The body of that name. */
    public Optional<PlacedBody> findBody(String name) {
        return bodies.stream().filter(b -> b.name().equals(name)).findFirst();
    }

    /** The load of that kind on that part. */
    public OptionalDouble findLoad(String part, LoadKind kind) {
        return loads.stream()
                .filter(l -> l.kind() == kind && l.part().equals(part))
                .mapToDouble(PartLoad::value)
                .findFirst();
    }
}
