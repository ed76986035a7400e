// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.solve;

/** Memory of the last two poses of a course of neighbours, to guess the next one's loads. */
final class Course {
    /** Amplification up to which a course may go on without looking at it at every pose. */
    private static final double CALM = 0.5;

    /** Poses after which amplification is looked at anew. */
    private static final int LONGEST = 40;

    private final Assembly asm;
    private final double[] lambdaNow;
    private final double[] lambdaBefore;
    private final double[] boundsNow;
    private final double[] boundsBefore;
    private final double[] senses;
    private double now;
    private double before;
    private int known;
    private int length;
    private MovingBalance start;

    Course(Assembly asm, int frictions) {
        this.asm = asm;
        lambdaNow = new double[asm.rowCount];
        lambdaBefore = new double[asm.rowCount];
        boundsNow = new double[frictions];
        boundsBefore = new double[frictions];
        senses = new double[asm.drivers.length];
    }

    /** A full solution begins a new course. */
    void begin(MovingBalance full, double time, double[] lambda, double[] bounds) {
        start = full;
        length = 0;
        boolean goesOn = known > 0 && sameSenses();
        known = goesOn ? known : 0;
        remember(time, lambda, bounds);
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

    private void remember(double time, double[] lambda, double[] bounds) {
        System.arraycopy(lambdaNow, 0, lambdaBefore, 0, lambdaNow.length);
        System.arraycopy(boundsNow, 0, boundsBefore, 0, boundsNow.length);
        System.arraycopy(lambda, 0, lambdaNow, 0, lambdaNow.length);
        System.arraycopy(bounds, 0, boundsNow, 0, boundsNow.length);
        before = now;
        now = time;
        known = Math.min(2, known + 1);
    }

    /** Loads and bounds on the straight line through the last two poses, not far beyond them. */
    void guess(double time, double[] lambda, double[] bounds) {
        double f = known == 2 && now != before ? (time - now) / (now - before) : 0;
        f = Math.abs(f) > 2 ? 0 : f;
        for (int i = 0; i < lambda.length; i++) {
            lambda[i] = lambdaNow[i] + f * (lambdaNow[i] - lambdaBefore[i]);
        }
        for (int i = 0; i < bounds.length; i++) {
            bounds[i] = boundsNow[i] + f * (boundsNow[i] - boundsBefore[i]);
        }
    }

    void accepted(double time, double[] lambda, double[] bounds) {
        remember(time, lambda, bounds);
        length++;
    }

    MovingBalance balanced(Equilibrium at) {
        return start.at(at);
    }
}
