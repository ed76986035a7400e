// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import java.util.List;

/**
 * How the bridge runs on the two leg rails.
 *
 * @param halfSpan from the bridge centre to each rail [m]
 * @param blocks on both rails
 * @param leftFriction of all blocks of the left rail, seals included [N]
 * @param rightFriction of the right rail [N]
 * @param frictionCoefficient friction a newton of side load, 0 for balls [1]
 * @param squareness yaw at which the rails hold the bridge without load, from assembly [rad]
 */
public record BridgeGuide(
        double halfSpan,
        List<GuideBlock> blocks,
        double leftFriction,
        double rightFriction,
        double frictionCoefficient,
        double squareness) {
    public BridgeGuide {
        blocks = List.copyOf(blocks);
        Checks.positive("half span", halfSpan);
        Checks.notNegative("left rail friction", leftFriction);
        Checks.notNegative("right rail friction", rightFriction);
        Checks.notNegative("friction coefficient", frictionCoefficient);
        Checks.finite("squareness", squareness);
        if (blocks.isEmpty()) {
            throw new IllegalArgumentException("the bridge has no block; allowed: 1 or more");
        }
    }

    /**
     * Yaw stiffness with all play closed: sum over pairs of lateral stiffness times lever squared
     * about the point where side forces balance, plus the blocks' own [N m/rad].
     */
    public double yawStiffness() {
        double k = 0;
        double first = 0;
        double second = 0;
        double own = 0;
        for (GuideBlock b : blocks) {
            k += b.lateralStiffness();
            first += b.lateralStiffness() * b.along();
            second += b.lateralStiffness() * b.along() * b.along();
            own += b.yawStiffness();
        }
        return own + (k > 0 ? second - first * first / k : 0);
    }

    /**
     * Yaw to each side that no block resists: the smallest of the blocks' own free yaw and, on each
     * stiff pair, the sum of both plays over the distance between them [rad].
     */
    public double freeYaw() {
        double free = Double.POSITIVE_INFINITY;
        for (GuideBlock a : blocks) {
            if (a.yawStiffness() > 0) {
                free = Math.min(free, a.yawPlay());
            }
            for (GuideBlock b : blocks) {
                double apart = b.along() - a.along();
                if (apart > 0 && a.lateralStiffness() > 0 && b.lateralStiffness() > 0) {
                    free = Math.min(free, (a.lateralPlay() + b.lateralPlay()) / apart);
                }
            }
        }
        return free;
    }

    /** The same guide without friction. */
    public BridgeGuide frictionless() {
        return new BridgeGuide(halfSpan, blocks, 0, 0, 0, squareness);
    }

    /** The same guide with all play taken out. */
    public BridgeGuide closed() {
        return new BridgeGuide(
                halfSpan,
                blocks.stream().map(GuideBlock::closed).toList(),
                leftFriction,
                rightFriction,
                frictionCoefficient,
                squareness);
    }
}
