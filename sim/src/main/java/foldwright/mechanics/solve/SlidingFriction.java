// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.solve;

import foldwright.mechanics.body.State;
import foldwright.mechanics.joint.Friction;

/**
 * Keeps the friction of sliding rows in step with the joint loads within a Newton solve: the bounds
 * b satisfy b = law(loads(b)), by Newton with the kept influence of friction on loads.
 */
final class SlidingFriction {
    /** Largest relative disagreement between friction and load that a step may keep. */
    private static final double EVEN = 1e-5;

    /**
     * The kept influence is found anew where a second correction is more than this of the first.
     */
    private static final double STALE = 0.03;

    private final Assembly asm;
    private final Kkt kkt;
    private final FrictionLoop loop;
    private final double[] factors;
    private final double[] gaps;
    private final double[] loads;

    /** Disagreement at the last solve of the present step. */
    private double last;

    SlidingFriction(Assembly asm, Kkt kkt) {
        this.asm = asm;
        this.kkt = kkt;
        loop = new FrictionLoop(asm, kkt);
        factors = new double[asm.frictions.length];
        gaps = new double[factors.length];
        loads = new double[asm.rowCount];
    }

    /** The influence of friction is found anew when next needed. */
    void forget() {
        loop.forget();
    }

    /** Bounds from the multipliers and velocities at hand, at the begin of a step. */
    void begin(State s) {
        last = Double.POSITIVE_INFINITY;
        for (Friction f : asm.frictions) {
            f.load(asm.lambda, asm.rate(f.rowAt(), s.v));
        }
    }

    /**
     * Corrects the solution {@code x} of a Newton solve, and the bounds, so that friction agrees
     * with the loads; true if it does.
     */
    boolean balance(State s, double[] x) {
        if (gaps.length == 0) {
            return true;
        }
        for (int k = 0; k < factors.length; k++) {
            Friction f = asm.frictions[k];
            factors[k] = sliding(f) ? f.slipFactor(asm.rate(f.rowAt(), s.v)) : 0;
        }
        double before = gap(x);
        if (before <= 1e-3 * EVEN) {
            return true;
        }
        if (before > STALE * last) {
            loop.forget();
        }
        last = before;
        if (!loop.known()) {
            loop.sense(s, factors);
        }
        double[] step = loop.correct(gaps);
        for (int k = 0; k < gaps.length; k++) {
            Friction f = asm.frictions[k];
            double bound = Math.abs(f.held());
            step[k] = sliding(f) ? Math.max(step[k], -bound) : 0;
            if (sliding(f)) {
                f.slideAt(bound + step[k]);
            }
        }
        loop.respond(step, x);
        double after = gap(x);
        if (after > 0.1 * before) {
            loop.forget();
        }
        return after <= EVEN;
    }

    private static boolean sliding(Friction f) {
        return f.mode() == Friction.Mode.FORCE_PLUS || f.mode() == Friction.Mode.FORCE_MINUS;
    }

    /** Fills law - bound at the loads that follow from {@code x}; returns the largest, relative. */
    private double gap(double[] x) {
        for (int row = 0; row < asm.rowCount; row++) {
            loads[row] =
                    asm.engaged[row] ? asm.lambda[row] - x[kkt.rowPlace(row)] : asm.lambda[row];
        }
        double worst = 0;
        for (int k = 0; k < gaps.length; k++) {
            Friction f = asm.frictions[k];
            gaps[k] = 0;
            if (factors[k] > 0) {
                double bound = Math.abs(f.held());
                double law = factors[k] * f.law().bound(loads);
                gaps[k] = law - bound;
                worst = Math.max(worst, Math.abs(gaps[k]) / (Math.max(law, bound) + 1e-6));
            }
        }
        return worst;
    }
}
