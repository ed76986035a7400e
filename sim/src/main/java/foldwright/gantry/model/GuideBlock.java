// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import java.util.Objects;

/**
 * One block of a leg rail, or all of a rail taken together.
 *
 * @param rail which rail it runs on
 * @param along its place from the bridge centre, along the rail [m]
 * @param lateralStiffness 0 where the rail floats [N/m]
 * @param lateralPlay free way to each side [m]
 * @param yawStiffness of its own, bracket included; 0 where none is counted [N m/rad]
 * @param yawPlay free yaw to each side [rad]
 * @param group which blocks it stands for
 */
public record GuideBlock(
        Rail rail,
        double along,
        double lateralStiffness,
        double lateralPlay,
        double yawStiffness,
        double yawPlay,
        Group group) {

    /**
     * Blocks that are taken together.
     *
     * @param count how many
     * @param apart distance of the outer two; 0 for one block [m]
     */
    public record Group(int count, double apart) {
        /** A block by itself. */
        public static final Group ONE = new Group(1, 0);

        public Group {
            Checks.positive("number of blocks", count);
            Checks.notNegative("distance of blocks", apart);
        }

        /** Side force on one of them: its share, and a yaw moment as a couple [N]. */
        double side(double force, double moment) {
            return force / count + (apart > 0 ? moment / apart : 0);
        }

        /** Yaw moment on one of them, where no couple takes it [N m]. */
        double yaw(double moment) {
            return apart > 0 ? 0 : moment / count;
        }
    }

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

    /** A block by itself. */
    public GuideBlock(
            Rail rail,
            double along,
            double lateralStiffness,
            double lateralPlay,
            double yawStiffness,
            double yawPlay) {
        this(rail, along, lateralStiffness, lateralPlay, yawStiffness, yawPlay, Group.ONE);
    }

    public GuideBlock {
        Objects.requireNonNull(rail, "rail");
        Objects.requireNonNull(group, "group");
        Checks.finite("along", along);
        Checks.notNegative("lateral stiffness", lateralStiffness);
        Checks.notNegative("lateral play", lateralPlay);
        Checks.notNegative("yaw stiffness", yawStiffness);
        Checks.notNegative("yaw play", yawPlay);
    }

    GuideBlock closed() {
        return new GuideBlock(rail, along, lateralStiffness, 0, yawStiffness, 0, group);
    }
}
