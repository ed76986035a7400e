// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.rail;

import foldwright.elements.Domain;

/**
 * What a block carries, with life and static safety (ISO 14728-1 and -2).
 *
 * @param dynamicRating C for 100 km [N]
 * @param staticRating C0: 0.0001 of the ball diameter as permanent set [N]
 * @param rollRating Mx0 [N·m]
 * @param pitchRating My0 [N·m]
 * @param yawRating Mz0 [N·m]
 */
public record BlockRating(
        double dynamicRating,
        double staticRating,
        double rollRating,
        double pitchRating,
        double yawRating) {

    /** Travel that C is given for [m]. */
    public static final double BASE_TRAVEL = 100e3;

    public BlockRating {
        Domain.positive("dynamic rating C", dynamicRating, "N");
        Domain.positive("static rating C0", staticRating, "N");
        Domain.positive("roll rating Mx0", rollRating, "N·m");
        Domain.positive("pitch rating My0", pitchRating, "N·m");
        Domain.positive("yaw rating Mz0", yawRating, "N·m");
    }

    /**
     * P = |F_v| + |F_l| + C0 (|Mx|/Mx0 + |My|/My0 + |Mz|/Mz0) (catalogue practice, from memory;
     * used for life too, which is on the safe side) [N].
     */
    public double equivalentLoad(BlockLoad load) {
        double moments =
                Math.abs(load.roll()) / rollRating
                        + Math.abs(load.pitch()) / pitchRating
                        + Math.abs(load.yaw()) / yawRating;
        return Math.abs(load.vertical()) + Math.abs(load.lateral()) + staticRating * moments;
    }

    /** S0 = C0/P [1]. */
    public double staticSafety(BlockLoad load) {
        return staticRating / equivalentLoad(load);
    }

    /** Travel that nine of ten blocks reach, (C/P)^3 x 100 km [m]. */
    public double life(BlockLoad load) {
        return BASE_TRAVEL * Math.pow(dynamicRating / equivalentLoad(load), 3);
    }

    /** The same block's C on a 50 km base, 2^(1/3) C [N]. */
    public double ratingFor50Km() {
        return Math.cbrt(2) * dynamicRating;
    }

    /**
     * Ratings of moments that fit the other figures, Mx0 near C0 w/2 and My0 = Mz0 near C0 l/6 (own
     * rule; typical ratings lie up to 40 % below).
     *
     * @param railWidth w [m]
     * @param steelLength l [m]
     */
    public static BlockRating withoutMoments(
            double dynamicRating, double staticRating, double railWidth, double steelLength) {
        double tilt = staticRating * steelLength / 6;
        return new BlockRating(
                dynamicRating, staticRating, staticRating * railWidth / 2, tilt, tilt);
    }
}
