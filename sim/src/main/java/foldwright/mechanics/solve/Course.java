// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.solve;

import foldwright.mechanics.body.State;

/**
 * Memory of the last poses of a course of neighbours, to guess loads and velocities of the next.
 */
final class Course {
    /** Amplification up to which a course may go on without looking at it at every pose. */
    private static final double CALM = 0.5;

    /** Poses after which amplification is looked at anew. */
    private static final int LONGEST = 40;

    private static final int KEPT = 4;

    private final Assembly asm;
    private final double[][] lambdas;
    private final double[][] bounds;
    private final double[][] rates;

    /** What joints gave: displacements from the pose asked for to the one found. */
    private final double[][] gives;

    private final double[] give;
    private final double[] times = new double[KEPT];
    private final double[] weights = new double[KEPT];
    private final double[] senses;
    private int known;
    private int length;
    private MovingBalance start;

    Course(Assembly asm, int frictions) {
        this.asm = asm;
        lambdas = new double[KEPT][asm.rowCount];
        bounds = new double[KEPT][frictions];
        rates = new double[KEPT][6 * asm.bodies];
        gives = new double[KEPT][6 * asm.bodies - 6];
        give = new double[6 * asm.bodies - 6];
        senses = new double[asm.drivers.length];
    }

    /** A full solution begins a new course. */
    void begin(MovingBalance full, State asked, double[] bound) {
        start = full;
        length = 0;
        boolean goesOn = known > 0 && sameSenses();
        known = goesOn ? known : 0;
        remember(asked, full.balance().state(), bound);
        for (int i = 0; i < senses.length; i++) {
            senses[i] = Math.signum(asm.drivers[i].rate());
        }
        if (full.outcome() != MovingBalance.Outcome.BALANCED) {
            known = 0;
        }
    }

    private boolean sameSenses() {
        for (int i = 0; i < senses.length; i++) {
            if (senses[i] != Math.signum(asm.drivers[i].rate())) {
                return false;
            }
        }
        return true;
    }

    /** Whether the next pose may be found from the last ones; the clock must stand at its time. */
    boolean goesOn() {
        return known > 0 && start.amplification() < CALM && sameSenses();
    }

    /** The last pose stands first. */
    private void remember(State asked, State s, double[] bound) {
        Correction.between(asked, s, give);
        push(gives, give);
        push(lambdas, asm.lambda);
        push(bounds, bound);
        push(rates, s.v);
        System.arraycopy(times, 0, times, 1, KEPT - 1);
        times[0] = s.time;
        known = Math.min(KEPT, known + 1);
    }

    private static void push(double[][] kept, double[] now) {
        double[] oldest = kept[KEPT - 1];
        System.arraycopy(kept, 0, kept, 1, KEPT - 1);
        System.arraycopy(now, 0, oldest, 0, oldest.length);
        kept[0] = oldest;
    }

    /**
     * Loads, bounds and give of the joints on the cubic through the last poses, not far beyond
     * them.
     */
    void guess(State s, double[] lambda, double[] bound) {
        weigh(s.time, useful(s.time));
        mix(gives, give);
        Correction.apply(s, give, 1);
        mix(lambdas, lambda);
        mix(bounds, bound);
    }

    /** Velocities on the same curve, at the time of the last guess. */
    void guessRates(double[] v) {
        mix(rates, v);
    }

    /** How many of the last poses tell of one at that time: they must be apart, and it near. */
    private int useful(double time) {
        int n = 1;
        double step = Math.abs(time - times[0]);
        while (n < known
                && times[n] != times[n - 1]
                && (times[n - 1] - times[n]) * (time - times[0]) > 0
                && step <= 2 * Math.abs(times[n - 1] - times[n])) {
            n++;
        }
        return n;
    }

    /** Lagrange's weights of the first n poses. */
    private void weigh(double time, int n) {
        for (int k = 0; k < KEPT; k++) {
            double w = k < n ? 1 : 0;
            for (int j = 0; j < n && k < n; j++) {
                w *= j == k ? 1 : (time - times[j]) / (times[k] - times[j]);
            }
            weights[k] = w;
        }
    }

    private void mix(double[][] kept, double[] out) {
        for (int i = 0; i < out.length; i++) {
            double sum = 0;
            for (int k = 0; k < KEPT; k++) {
                sum += weights[k] * kept[k][i];
            }
            out[i] = sum;
        }
    }

    /** The course went on to a pose. */
    void went(State asked, State s, double[] bound) {
        remember(asked, s, bound);
        length++;
    }

    /** Whether it is time to look anew at how friction feeds on itself. */
    boolean due() {
        return length >= LONGEST;
    }

    /** That was looked at; whether the course may go on. */
    boolean looked(double amplification, double[] shares) {
        start = start.with(amplification, shares);
        length = 0;
        return amplification < CALM;
    }

    MovingBalance balanced(Equilibrium at) {
        return start.at(at);
    }
}
