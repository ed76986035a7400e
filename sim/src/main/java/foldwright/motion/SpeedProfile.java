// SPDX-License-Identifier: Apache-2.0
package foldwright.motion;

import static java.lang.Math.max;
import static java.lang.Math.min;
import static java.lang.Math.sqrt;

/**
 * Way, speed and acceleration along one move over time: speed up, cruise, slow down, in the
 * shortest time that the limits allow. Each side has its own ramp and the peak speed is found
 * exactly; the published rule that lowers the acceleration of both sides together ({@link
 * DoubleSRule}) is slower when the ends have different speeds. Reusable, allocates nothing.
 */
public final class SpeedProfile {
    private static final int PHASES = 7;

    /** Share of the way that is rounding. */
    private static final double ROUNDING = 1e-12;

    private static final double SIXTH = 1.0 / 6;

    /** Share of the way that the search for the peak may leave; it is cruised at the peak [1]. */
    private static final double SPARE = 1e-10;

    // Start of each phase; the last entry is the end of the profile.
    private final double[] time = new double[PHASES + 1];
    private final double[] way = new double[PHASES + 1];
    private final double[] speed = new double[PHASES + 1];
    private final double[] acceleration = new double[PHASES];
    private final double[] jerk = new double[PHASES];
    private double length;
    private double peak;

    // What is planned: durations of the phases, limits.
    private double upJerk;
    private double upPlateau;
    private double cruise;
    private double downJerk;
    private double downPlateau;
    private double topAcceleration;
    private double topJerk;
    private double duration;

    /** Whether the phases are written. */
    private boolean laidOut;

    // The phase looked at last, so that a sampler that goes forwards does not search.
    private double from;
    private double to;
    private double startWay;
    private double startSpeed;
    private double startAcceleration;
    private double phaseJerk;
    private double sixthJerk;

    // What the last look saw.
    private double seenWay;
    private double seenSpeed;
    private double seenAcceleration;

    /**
     * Plans a move.
     *
     * @param newLength way [m]
     * @param v0 speed at the start [m/s]
     * @param v1 speed at the end [m/s]; the two must be joinable within the length
     * @param top highest speed [m/s]
     * @param a highest acceleration [m/s2]
     * @param j highest jerk [m/s3]; infinite for ramps of constant acceleration
     */
    public void plan(double newLength, double v0, double v1, double top, double a, double j) {
        length = newLength;
        forget();
        double low = max(v0, v1);
        peak = low;
        cruise = 0;
        // On real toolpaths most moves are one ramp that takes the whole length.
        if (Ramp.fits(min(v0, v1), low, newLength * (1 - ROUNDING), a, j)) {
            double rest = aboveBothEnds(v0, v1, top, a, j);
            cruise = rest > 0 && peak > 0 ? rest / peak : 0;
        }
        upJerk = jerkTime(peak - v0, a, j);
        upPlateau = plateauTime(peak - v0, a, j);
        downJerk = jerkTime(peak - v1, a, j);
        downPlateau = plateauTime(peak - v1, a, j);
        duration = upJerk + upPlateau + upJerk + cruise + downJerk + downPlateau + downJerk;
        speed[0] = v0;
        topAcceleration = a;
        topJerk = j;
        laidOut = false;
    }

    /**
     * Sets the peak of a move that reaches more than its ends and gives the way that is left [m].
     */
    private double aboveBothEnds(double v0, double v1, double top, double a, double j) {
        if (Ramp.fits(v0, top, length, a, j) && Ramp.fits(v1, top, length, a, j)) {
            double rest = length - Ramp.length(v0, top, a, j) - Ramp.length(top, v1, a, j);
            if (rest >= 0) {
                peak = top;
                return rest;
            }
        }
        peak = peakSpeed(v0, v1, peak, top, a, j);
        return length - Ramp.length(v0, peak, a, j) - Ramp.length(peak, v1, a, j);
    }

    /** Duration of each of the two jerks of a change of speed by {@code dv >= 0} [s]. */
    private static double jerkTime(double dv, double a, double j) {
        return dv == 0 ? 0 : dv * j >= a * a ? a / j : sqrt(dv / j);
    }

    /** Duration at full acceleration between them [s]. */
    private static double plateauTime(double dv, double a, double j) {
        return dv * j >= a * a ? max(0, dv / a - a / j) : 0;
    }

    /** Writes the phases; left until somebody looks, for much is asked of durations alone. */
    private void layOut() {
        if (laidOut) {
            return;
        }
        laidOut = true;
        ramp(0, upJerk, upPlateau, 1);
        phase(3, cruise, 0, 0);
        ramp(4, downJerk, downPlateau, -1);
    }

    /** Plans standing still for a time [s]. */
    public void planPause(double seconds) {
        length = 0;
        forget();
        peak = 0;
        speed[0] = 0;
        phase(0, seconds, 0, 0);
        for (int i = 1; i < PHASES; i++) {
            phase(i, 0, 0, 0);
        }
        duration = seconds;
        laidOut = true;
    }

    /**
     * The three phases of a change of speed: jerk, plateau, jerk back; only the plateau where the
     * jerk is infinite.
     *
     * @param sign 1 to speed up, -1 to slow down
     */
    private void ramp(int first, double tj, double plateau, double sign) {
        boolean instant = topJerk == Double.POSITIVE_INFINITY;
        double j = instant ? 0 : sign * topJerk;
        phase(first, tj, 0, j);
        phase(first + 1, plateau, instant ? sign * topAcceleration : j * tj, 0);
        phase(first + 2, tj, instant ? 0 : j * tj, -j);
    }

    private void phase(int i, double t, double a, double j) {
        acceleration[i] = a;
        jerk[i] = j;
        time[i + 1] = time[i] + t;
        way[i + 1] = way[i] + t * (speed[i] + t * (0.5 * a + t * (j * SIXTH)));
        speed[i + 1] = speed[i] + t * (a + t * (0.5 * j));
    }

    /** Peak speed at which both ramps together just fill the length. */
    private double peakSpeed(double v0, double v1, double low, double high, double a, double j) {
        if (j == Double.POSITIVE_INFINITY) {
            return max(low, sqrt(a * length + (v0 * v0 + v1 * v1) / 2));
        }
        double v = Ramp.peakWithoutPlateau(low, min(v0, v1), length, j);
        if ((v - min(v0, v1)) * j <= a * a) {
            return v;
        }
        return v0 == v1 ? Ramp.reach(v0, length / 2, a, j) : search(v0, v1, low, high, a, j);
    }

    /**
     * The peak where one of the ramps holds full acceleration: false position with the halving of a
     * stale end (Illinois), for the excess grows steadily with the peak.
     */
    private double search(double v0, double v1, double low, double high, double a, double j) {
        double lo = low;
        double hi = high;
        double flo = excess(v0, v1, lo, a, j);
        double fhi = excess(v0, v1, hi, a, j);
        if (flo >= 0) {
            return lo;
        }
        for (int i = 0; i < 100 && hi - lo > 1e-15 * hi; i++) {
            double v = (lo * fhi - hi * flo) / (fhi - flo);
            if (!(v > lo && v < hi)) {
                v = 0.5 * (lo + hi);
            }
            double f = excess(v0, v1, v, a, j);
            if (f <= 0 && f >= -SPARE * length) {
                return v;
            }
            if (f < 0) {
                lo = v;
                flo = f;
                fhi *= 0.5;
            } else {
                hi = v;
                fhi = f;
                flo *= 0.5;
            }
        }
        return lo;
    }

    private double excess(double v0, double v1, double v, double a, double j) {
        return Ramp.length(v0, v, a, j) + Ramp.length(v, v1, a, j) - length;
    }

    /** Whole duration [s]. */
    public double duration() {
        return duration;
    }

    /** Highest speed reached [m/s]. */
    public double peak() {
        return peak;
    }

    /** Duration of phase 0 to 6: jerk, plateau, jerk, cruise, jerk, plateau, jerk [s]. */
    public double phaseTime(int i) {
        layOut();
        return time[i + 1] - time[i];
    }

    /** Way after a time, never beyond the length [m]. */
    public double way(double t) {
        int i = phaseAt(t);
        double d = inside(t, i);
        double s = way[i] + d * (speed[i] + d * (0.5 * acceleration[i] + d * (jerk[i] * SIXTH)));
        return Math.min(s, length);
    }

    /** Speed after a time [m/s]. */
    public double speed(double t) {
        int i = phaseAt(t);
        double d = inside(t, i);
        return max(0, speed[i] + d * (acceleration[i] + d * (0.5 * jerk[i])));
    }

    /** Acceleration along the path after a time [m/s2]. */
    public double acceleration(double t) {
        int i = phaseAt(t);
        return acceleration[i] + inside(t, i) * jerk[i];
    }

    /**
     * Looks at way, speed and acceleration after a time: the same numbers as {@link #way}, {@link
     * #speed} and {@link #acceleration}, for samplers.
     */
    void look(double t) {
        if (!(t >= from && t < to)) {
            enter(phaseAt(t));
        }
        double d = t - from;
        d = d < 0 ? 0 : d;
        d = t < to ? d : to - from;
        double v = startSpeed;
        double a = startAcceleration;
        double j = phaseJerk;
        double s = startWay + d * (v + d * (0.5 * a + d * sixthJerk));
        double u = v + d * (a + d * (0.5 * j));
        seenWay = s < length ? s : length;
        seenSpeed = u > 0 ? u : 0;
        seenAcceleration = a + d * j;
    }

    private void enter(int i) {
        from = time[i];
        to = time[i + 1];
        startWay = way[i];
        startSpeed = speed[i];
        startAcceleration = acceleration[i];
        phaseJerk = jerk[i];
        sixthJerk = jerk[i] * SIXTH;
    }

    private void forget() {
        from = 0;
        to = -1;
    }

    double seenWay() {
        return seenWay;
    }

    double seenSpeed() {
        return seenSpeed;
    }

    double seenAcceleration() {
        return seenAcceleration;
    }

    private int phaseAt(double t) {
        layOut();
        int i = 0;
        while (i < PHASES - 1 && t >= time[i + 1]) {
            i++;
        }
        return i;
    }

    private double inside(double t, int i) {
        return Math.min(max(t - time[i], 0), time[i + 1] - time[i]);
    }
}
