// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.bearing;

import foldwright.elements.Domain;

/**
 * Basic rating life of ball bearings, L10 = (C/P)^3 million turns (ISO 281), and the reliability of
 * another life by the Weibull form of Shigley 8th ed. section 11-4.
 */
public final class BearingLife {
    private static final double MILLION = 1e6;

    private BearingLife() {}

    /** L10 in turns for rating C and equivalent load P [N]; infinite without load. */
    public static double turns(double rating, double load) {
        return MILLION * Math.pow(rating / load, 3);
    }

    /** L10 in seconds at a steady speed [rad/s]. */
    public static double seconds(double rating, double load, double speed) {
        return turns(rating, load) * 2 * Math.PI / Math.abs(speed);
    }

    /** Rating C that gives the wanted number of turns under load P [N]. */
    public static double ratingFor(double load, double turns) {
        return load * Math.cbrt(turns / MILLION);
    }

    /**
     * Weibull parameters of the life, in units of L10.
     *
     * @param x0 life that all survive [1]
     * @param scale theta - x0 [1]
     * @param shape b [1]
     */
    public record Weibull(double x0, double scale, double shape) {
        /** The pair of numbers used in Shigley's problems: 0.02, 4.439, 1.483. */
        public static final Weibull SHIGLEY = new Weibull(0.02, 4.439, 1.483);

        public Weibull {
            Domain.notNegative("Weibull x0", x0, "1");
            Domain.positive("Weibull scale", scale, "1");
            Domain.positive("Weibull shape", shape, "1");
        }

        /** Share of bearings that survive x times L10 [1]. */
        public double reliability(double x) {
            double over = Math.max(0, x - x0) / scale;
            return Math.exp(-Math.pow(over, shape));
        }

        /** Life in units of L10 that the wanted share survives [1]. */
        public double lifeAt(double reliability) {
            Domain.within("reliability", reliability, 1e-6, 1 - 1e-12, "1");
            return x0 + scale * Math.pow(Math.log(1 / reliability), 1 / shape);
        }

        /**
         * Rating C for turns with a reliability, the load already times its application factor [N].
         */
        public double ratingFor(double load, double turns, double reliability) {
            return BearingLife.ratingFor(load, turns / lifeAt(reliability));
        }
    }
}
