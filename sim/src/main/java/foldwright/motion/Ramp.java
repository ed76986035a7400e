// SPDX-License-Identifier: Apache-2.0
package foldwright.motion;

import static java.lang.Math.sqrt;

/**
 * A change of speed with zero acceleration at both ends, in the shortest time under a limit on
 * acceleration and jerk: closed forms for its duration, its length, and the highest speed a length
 * allows. An infinite jerk gives the plain ramp of constant acceleration. (L. Biagiotti, C.
 * Melchiorri, "Trajectory Planning for Automatic Machines and Robots", Springer 2008, section 3.4;
 * the inverse is worked out here.)
 */
final class Ramp {
    /** Share of the root under which a step is the last: the next would be its cube. */
    private static final double CLOSE = 1e-5;

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
        if (limit <= v || fits(v, limit, length, a, j)) {
            return limit;
        }
        return Math.min(limit, reach(v, length, a, j));
    }

    /**
     * Whether a length is enough for a change of speed, {@code length(v0, v1, a, j) <= length} by
     * products alone.
     *
     * @param v0 lower speed
     * @param v1 higher speed
     */
    static boolean fits(double v0, double v1, double length, double a, double j) {
        double dv = v1 - v0;
        double sum = v0 + v1;
        if (j == Double.POSITIVE_INFINITY) {
            return sum * dv <= 2 * a * length;
        }
        return dv * j >= a * a
                ? sum * (dv * j + a * a) <= 2 * length * a * j
                : sum * sum * dv <= length * length * j;
    }

    /**
     * Peak speed of two ramps without plateaus that just fill a length [m/s]. With u the root of
     * the change of speed from the faster end f, d the difference of the ends, the lengths add up
     * to (2 f + u^2) u + (f + e + u^2) sqrt(u^2 + d) = length sqrt(j): convex and rising in u.
     * Started where both ramps would begin at the mean of the ends, right to first order in d, and
     * followed by Halley's rule, which triples the digits a round.
     *
     * @param f faster end [m/s]
     * @param e slower end [m/s]
     */
    static double peakWithoutPlateau(double f, double e, double length, double j) {
        double q = length * sqrt(j);
        double d = f - e;
        double sum = f + e;
        double u = startOfPeak(sum, d, 0.5 * q);
        for (int i = 0; i < 40; i++) {
            double u2 = u * u;
            double w = sqrt(u2 + d);
            double perW = 1 / w;
            double second = sum + u2;
            double excess = (2 * f + u2) * u + second * w - q;
            double slope = 2 * f + 3 * u2 + 2 * u * w + second * u * perW;
            double bend = 3 * u + w + perW * (2 * u2 + 0.5 * second * d * perW * perW);
            double halley = slope * slope - excess * bend;
            double step = excess * slope / halley;
            // Far above the root only Newton's rule is sure to stay above it.
            step = halley > 0 && step < u ? step : excess / slope;
            if (!(step < u)) {
                return f;
            }
            u -= step;
            if (Math.abs(step) <= CLOSE * u) {
                break;
            }
        }
        return f + u * u;
    }

    /** u from s^3 + sum s = half the length sqrt(j), s^2 = u^2 + d/2: one round of Halley. */
    private static double startOfPeak(double sum, double d, double half) {
        double s = cubicRootAbove(sum, half);
        double s2 = s * s;
        double excess = s * (s2 + sum) - half;
        double slope = 3 * s2 + sum;
        s -= excess * slope / (slope * slope - 3 * s * excess);
        double u2 = s * s - 0.5 * d;
        return sqrt(u2 > 0.01 * s2 ? u2 : 0.01 * s2);
    }

    /**
     * The one real root of {@code s^3 + p s = q} for p, q >= 0, by Halley's rule from above, whose
     * divisor 6 s^4 + 3 p s^2 + p^2 + 3 s q stays positive.
     */
    static double cubicRoot(double p, double q) {
        double s = cubicRootAbove(p, q);
        for (int i = 0; i < 40 && s > 0; i++) {
            double s2 = s * s;
            double excess = s * (s2 + p) - q;
            double slope = 3 * s2 + p;
            double step = excess * slope / (slope * slope - 3 * s * excess);
            s -= step;
            if (!(Math.abs(step) > CLOSE * s)) {
                break;
            }
        }
        return s;
    }

    /** A bound of that root from above: the smaller of the roots of each term alone. */
    private static double cubicRootAbove(double p, double q) {
        if (p * p * p > q * q) {
            return q / p;
        }
        // A third of the exponent bits: a cube root to 3.3 %, raised by more than that.
        long bits = Double.doubleToRawLongBits(q) / 3 + 0x2A9F7893782DA1CEL;
        return q > 0 ? 1.06 * Double.longBitsToDouble(bits) : 0;
    }
}
