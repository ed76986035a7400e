// SPDX-License-Identifier: Apache-2.0
package foldwright.motion;

import static java.lang.Math.max;
import static java.lang.Math.min;
import static java.lang.Math.sqrt;

/**
 * The published rule for a jerk-limited profile of seven segments: L. Biagiotti, C. Melchiorri,
 * "Trajectory Planning for Automatic Machines and Robots", Springer 2008, section 3.4. Where the
 * way is too short for the full acceleration it lowers the acceleration of both sides by one
 * hundredth until it fits, which is simple but not the shortest time; {@link SpeedProfile} is. Kept
 * so that the printed examples can be met digit for digit.
 *
 * @param v0 speed at the start [m/s]
 * @param vlim highest speed reached [m/s]
 * @param jerk jerk used [m/s3]
 * @param tj1 time of each jerk segment while speeding up [s]
 * @param ta time of speeding up [s]
 * @param tv time of cruising [s]
 * @param tj2 time of each jerk segment while slowing down [s]
 * @param td time of slowing down [s]
 */
public record DoubleSRule(
        double v0,
        double vlim,
        double jerk,
        double tj1,
        double ta,
        double tv,
        double tj2,
        double td) {

    private static final double SHRINK = 0.99;

    /**
     * Applies the rule to a way h > 0 between speeds v0 and v1 under limits of speed, acceleration
     * and jerk.
     */
    public static DoubleSRule plan(
            double h, double v0, double v1, double vmax, double amax, double j) {
        double tj1 = jerkTime(vmax - v0, amax, j);
        double ta = rampTime(vmax - v0, tj1, amax, j);
        double tj2 = jerkTime(vmax - v1, amax, j);
        double td = rampTime(vmax - v1, tj2, amax, j);
        double tv = h / vmax - ta / 2 * (1 + v0 / vmax) - td / 2 * (1 + v1 / vmax);
        if (tv >= 0) {
            return new DoubleSRule(v0, vmax, j, tj1, ta, tv, tj2, td);
        }
        for (double a = amax; a > 1e-9 * amax; a *= SHRINK) {
            double tj = a / j;
            double root =
                    sqrt(
                            a * a * a * a / (j * j)
                                    + 2 * (v0 * v0 + v1 * v1)
                                    + a * (4 * h - 2 * (a / j) * (v0 + v1)));
            ta = (a * a / j - 2 * v0 + root) / (2 * a);
            td = (a * a / j - 2 * v1 + root) / (2 * a);
            if (ta < 0) {
                return slowingOnly(h, v0, v1, j);
            }
            if (td < 0) {
                return speedingOnly(h, v0, v1, j);
            }
            if (ta >= 2 * tj && td >= 2 * tj) {
                return new DoubleSRule(v0, v0 + (ta - tj) * a, j, tj, ta, 0, tj, td);
            }
        }
        throw new IllegalArgumentException("no profile joins the two speeds within the way");
    }

    private static double jerkTime(double dv, double amax, double j) {
        return dv * j >= amax * amax ? amax / j : sqrt(max(dv, 0) / j);
    }

    private static double rampTime(double dv, double tj, double amax, double j) {
        return dv * j >= amax * amax ? tj + dv / amax : 2 * tj;
    }

    private static DoubleSRule slowingOnly(double h, double v0, double v1, double j) {
        double sum = v0 + v1;
        double tj = (j * h - sqrt(j * (j * h * h + sum * sum * (v1 - v0)))) / (j * sum);
        return new DoubleSRule(v0, v0, j, 0, 0, 0, tj, 2 * h / sum);
    }

    private static DoubleSRule speedingOnly(double h, double v0, double v1, double j) {
        double sum = v0 + v1;
        double tj = (j * h - sqrt(j * (j * h * h - sum * sum * (v1 - v0)))) / (j * sum);
        return new DoubleSRule(v0, v1, j, tj, 2 * h / sum, 0, 0, 0);
    }

    /** Whole duration [s]. */
    public double duration() {
        return ta + tv + td;
    }

    /** Acceleration on the plateau of speeding up [m/s2]. */
    public double speedingUp() {
        return jerk * tj1;
    }

    /** Acceleration on the plateau of slowing down, negative [m/s2]. */
    public double slowingDown() {
        return -jerk * tj2;
    }

    /** Way, speed and acceleration at a time, integrated over the seven segments [m, m/s, m/s2]. */
    public State at(double t) {
        double[] times = {tj1, ta - 2 * tj1, tj1, tv, tj2, td - 2 * tj2, tj2};
        double[] jerks = {jerk, 0, -jerk, 0, -jerk, 0, jerk};
        double s = 0;
        double v = v0;
        double a = 0;
        double left = min(t, duration());
        for (int i = 0; i < 7; i++) {
            double d = min(left, max(times[i], 0));
            s += d * (v + d * (a / 2 + d * jerks[i] / 6));
            v += d * (a + d * jerks[i] / 2);
            a += d * jerks[i];
            left -= d;
        }
        return new State(s, v, a);
    }

    /**
     * State along the way.
     *
     * @param way [m]
     * @param speed [m/s]
     * @param acceleration [m/s2]
     */
    public record State(double way, double speed, double acceleration) {}
}
