// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.rail;

import foldwright.elements.Domain;

/**
 * One block, or two at a distance, as springs spread evenly over their steel length: how they
 * resist yaw (or pitch), share a side force, and what their clearance lets go.
 *
 * @param stiffness k of one block across the rail [N/m]
 * @param steelLength l over which its balls carry [m]
 * @param spacing s between the centres of two blocks; 0 for a single block [m]
 * @param clearance c to each side of a loose block; 0 when preloaded [m]
 */
public record BlockRow(double stiffness, double steelLength, double spacing, double clearance) {
    /** Drag of a block over its load (from memory); seals add 0.2 to 1 N a block. */
    public static final double DRAG = 0.003;

    public BlockRow {
        Domain.positive("block stiffness", stiffness, "N/m");
        Domain.positive("steel length", steelLength, "m");
        Domain.notNegative("block spacing", spacing, "m");
        Domain.notNegative("block clearance", clearance, "m");
    }

    /** 1 or 2. */
    public int blocks() {
        return spacing > 0 ? 2 : 1;
    }

    /** k l^2/12 for one block, k s^2/2 + 2 k l^2/12 for two [N·m/rad]. */
    public double yawStiffness() {
        double own = stiffness * steelLength * steelLength / 12;
        return spacing > 0 ? stiffness * spacing * spacing / 2 + 2 * own : own;
    }

    /** Stiffness of all blocks across the rail [N/m]. */
    public double lateralStiffness() {
        return blocks() * stiffness;
    }

    /** Angle the row can turn freely in its clearance, 2c/l for one block, 2c/s for two [rad]. */
    public double freeYaw() {
        return 2 * clearance / (spacing > 0 ? spacing : steelLength);
    }

    /**
     * Side move of a point at {@code arm} from the middle under a side force there, no play [m].
     */
    public double moveAt(double arm, double force) {
        return force / lateralStiffness() + force * arm * arm / yawStiffness();
    }

    /**
     * Force on the block nearer to a side force at distance {@code arm} from the middle of two, F/2
     * + F a/s [N].
     *
     * @throws IllegalStateException for a single block, which answers with a moment
     */
    public double nearReaction(double force, double arm) {
        requireTwo();
        return force / 2 + force * arm / spacing;
    }

    /** Force on the other block, F/2 - F a/s [N]. */
    public double farReaction(double force, double arm) {
        requireTwo();
        return force / 2 - force * arm / spacing;
    }

    private void requireTwo() {
        if (!(spacing > 0)) {
            throw new IllegalStateException("a single block has no reaction to split");
        }
    }
}
