// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import java.util.Objects;

/**
 * One block of a leg rail.
 *
 * @param rail which rail it runs on
 * @param along its place from the bridge centre, along the rail [m]
 * @param lateralStiffness 0 where the rail floats [N/m]
 * @param lateralPlay free way to each side [m]
 * @param yawStiffness of its own, bracket included; 0 where none is counted [N m/rad]
 * @param yawPlay free yaw to each side [rad]
 */
public record GuideBlock(
        Rail rail,
        double along,
        double lateralStiffness,
        double lateralPlay,
        double yawStiffness,
        double yawPlay) {

    /** The two leg rails. */
    public enum Rail {
        LEFT(-1),
        RIGHT(1);

        private final int side;

        Rail(int side) {
            this.side = side;
        }

        /** -1 left, +1 right. */
        public int side() {
            return side;
        }
    }

    public GuideBlock {
        Objects.requireNonNull(rail, "rail");
        Checks.finite("along", along);
        Checks.notNegative("lateral stiffness", lateralStiffness);
        Checks.notNegative("lateral play", lateralPlay);
        Checks.notNegative("yaw stiffness", yawStiffness);
        Checks.notNegative("yaw play", yawPlay);
    }

    GuideBlock closed() {
        return new GuideBlock(rail, along, lateralStiffness, 0, yawStiffness, 0);
    }
}
