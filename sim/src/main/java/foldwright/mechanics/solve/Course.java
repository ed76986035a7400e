// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.solve;

/** Memory of the last three poses of a course of neighbours, to guess the next one's loads. */
final class Course {
    /** Amplification up to which a course may go on without looking at it at every pose. */
    private static final double CALM = 0.5;

    /** Poses after which amplification is looked at anew. */
    private static final int LONGEST = 40;

    private static final int KEPT = 3;

    private final Assembly asm;
    private final double[][] lambdas;
    private final double[][] bounds;
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
        senses = new double[asm.drivers.length];
    }

    /** A full solution begins a new course. */
    void begin(MovingBalance full, double time, double[] lambda, double[] bound) {
        start = full;
        length = 0;
        boolean goesOn = known > 0 && sameSenses();
        known = goesOn ? known : 0;
        remember(time, lambda, bound);
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
        return known > 0 && length < LONGEST && start.amplification() < CALM && sameSenses();
    }

    /** The last pose stands first. */
    private void remember(double time, double[] lambda, double[] bound) {
        double[] oldLambda = lambdas[KEPT - 1];
        double[] oldBound = bounds[KEPT - 1];
        for (int k = KEPT - 1; k > 0; k--) {
            lambdas[k] = lambdas[k - 1];
            bounds[k] = bounds[k - 1];
            times[k] = times[k - 1];
        }
        lambdas[0] = oldLambda;
        bounds[0] = oldBound;
        System.arraycopy(lambda, 0, oldLambda, 0, oldLambda.length);
        System.arraycopy(bound, 0, oldBound, 0, oldBound.length);
        times[0] = time;
        known = Math.min(KEPT, known + 1);
    }

    /** Loads and bounds on the parabola through the last three poses, not far beyond them. */
    void guess(double time, double[] lambda, double[] bound) {
        weigh(time, useful(time));
        mix(lambdas, lambda);
        mix(bounds, bound);
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

    void accepted(double time, double[] lambda, double[] bound) {
        remember(time, lambda, bound);
        length++;
    }

    MovingBalance balanced(Equilibrium at) {
        return start.at(at);
    }
}
