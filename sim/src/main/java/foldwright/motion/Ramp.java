// SPDX-License-Identifier: Apache-2.0
package foldwright.motion;

import static java.lang.Math.cbrt;
import static java.lang.Math.sqrt;

/**
 * A change of speed with zero acceleration at both ends, in the shortest time under a limit on
 * acceleration and jerk: closed forms for its duration, its length, and the highest speed a length
 * allows. An infinite jerk gives the plain ramp of constant acceleration. (L. Biagiotti, C.
 * Melchiorri, "Trajectory Planning for Automatic Machines and Robots", Springer 2008, section 3.4;
 * the inverse is worked out here.)
 */
final class Ramp {
    private Ramp() {}

    /** Duration of a change of speed by {@code dv >= 0} [s]. */
    static double time(double dv, double a, double j) {
        // With the plateau at full acceleration: dv/a + a/j; without: 2 sqrt(dv/j).
        return dv * j >= a * a ? dv / a + a / j : 2 * sqrt(dv / j);
    }

    /**
     * Length covered between two speeds [m]: the ramp is symmetric, so the mean speed is theirs.
     */
    static double length(double v0, double v1, double a, double j) {
        return 0.5 * (v0 + v1) * time(Math.abs(v1 - v0), a, j);
    }

    /**
     * Highest speed that can be reached from {@code v} within a length, which is also the way back
     * down [m/s].
     */
    static double reach(double v, double length, double a, double j) {
        if (j == Double.POSITIVE_INFINITY) {
            return sqrt(v * v + 2 * a * length);
        }
        // No plateau: with s half the time, 2 v s + j s^3 = length.
        double s = cubicRoot(2 * v / j, length / j);
        if (j * s <= a) {
            return v + j * s * s;
        }
        // Plateau: (2v + dv)/2 (a/j + dv/a) = length.
        double b = a / j + 2 * v / a;
        double c = 2 * (v * a / j - length);
        return v + 0.5 * a * (sqrt(b * b - 4 * c / a) - b);
    }

    /**
     * The smaller of a limit and {@link #reach}, without the cubic where the limit lies within
     * reach, which is the rule on real toolpaths [m/s].
     */
    static double within(double v, double limit, double length, double a, double j) {
        if (limit <= v || length(v, limit, a, j) <= length) {
            return limit;
        }
        return Math.min(limit, reach(v, length, a, j));
    }

    /**
     * The one real root of {@code s^3 + p s = q} for p, q >= 0: Cardano's formula and two Newton
     * steps.
     */
    private static double cubicRoot(double p, double q) {
        double half = 0.5 * q;
        double u = cbrt(half + sqrt(half * half + p * p * p / 27));
        double s = u > 0 ? u - p / (3 * u) : 0;
        if (!(s > 0)) {
            s = p > 0 ? q / p : 0;
        }
        for (int i = 0; i < 2; i++) {
            double slope = 3 * s * s + p;
            if (slope > 0) {
                s -= (s * s * s + p * s - q) / slope;
            }
        }
        return s;
    }
}
