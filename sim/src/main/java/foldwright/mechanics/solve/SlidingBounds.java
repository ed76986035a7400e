// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.solve;

import foldwright.mechanics.body.State;
import foldwright.mechanics.joint.Friction;
import java.util.Arrays;

/**
 * Friction of rows that slide as the kinematics give it: directions, bounds, and how far bounds are
 * from what the laws say.
 */
final class SlidingBounds {
    /** Relative accuracy of friction bounds. */
    private static final double EVEN = 1e-8;

    /** A row that slips slower than this, against the fastest body motion, does not slide. */
    private static final double STILL = 1e-9;

    private final Assembly asm;
    private final double[] bounds;
    private final double[] gaps;
    private final double[] remaining;
    private final double[] factors;

    SlidingBounds(Assembly asm) {
        this.asm = asm;
        bounds = new double[asm.frictions.length];
        gaps = new double[bounds.length];
        remaining = new double[bounds.length];
        factors = new double[bounds.length];
    }

    /** How many friction rows there are. */
    int count() {
        return bounds.length;
    }

    /** Bounds of all rows [N, N m]; may be written. */
    double[] bounds() {
        return bounds;
    }

    /** No row slides or holds. */
    void leaveOut() {
        for (Friction f : asm.frictions) {
            f.mode(Friction.Mode.NONE);
        }
        asm.engage();
    }

    /** Takes directions of slip and what remains of friction at that speed from the velocities. */
    void slide(State s) {
        double still = STILL * fastest(s);
        for (int k = 0; k < bounds.length; k++) {
            Friction f = asm.frictions[k];
            double slip = asm.rate(f.rowAt(), s.v);
            remaining[k] = f.slipFactor(slip);
            f.mode(against(slip, still));
        }
        asm.engage();
    }

    /** Whether the rows slide in these directions already. */
    boolean slidesSo(State s) {
        double still = STILL * fastest(s);
        for (Friction f : asm.frictions) {
            if (f.mode() != against(asm.rate(f.rowAt(), s.v), still)) {
                return false;
            }
        }
        return true;
    }

    private static Friction.Mode against(double slip, double still) {
        if (Math.abs(slip) <= still) {
            return Friction.Mode.NONE;
        }
        return slip > 0 ? Friction.Mode.FORCE_MINUS : Friction.Mode.FORCE_PLUS;
    }

    private double fastest(State s) {
        double fastest = 0;
        for (int i = 6; i < 6 * asm.bodies; i++) {
            fastest = Math.max(fastest, Math.abs(s.v[i]));
        }
        return fastest;
    }

    /** Forgets the bounds: all are zero. */
    void clear() {
        Arrays.fill(bounds, 0);
    }

    /** Gives the rows their bounds. */
    void hold() {
        for (int k = 0; k < bounds.length; k++) {
            asm.frictions[k].bound(bounds[k]);
        }
        asm.engage();
    }

    /**
     * Finds law - bound at the present multipliers; returns the largest, in units of what is
     * accurate enough.
     *
     * @param scale share of friction looked at [1]
     */
    double gaps(double scale) {
        factors(scale);
        double worst = 0;
        double least = 1e-12 * asm.largestLoad() + 1e-13;
        for (int k = 0; k < bounds.length; k++) {
            Friction f = asm.frictions[k];
            if (f.mode() == Friction.Mode.NONE) {
                gaps[k] = 0;
                continue;
            }
            gaps[k] = factors[k] * f.law().bound(asm.lambda) - bounds[k];
            worst = Math.max(worst, Math.abs(gaps[k]) / (EVEN * Math.abs(bounds[k]) + least));
        }
        return worst;
    }

    /** What laws are multiplied with: the share of friction looked at, and slip weakening. */
    double[] factors(double scale) {
        for (int k = 0; k < factors.length; k++) {
            factors[k] = scale * remaining[k];
        }
        return factors;
    }

    /** Newton step of the bounds for the gaps found last. */
    void correct(FrictionLoop loop) {
        double[] step = loop.correct(gaps);
        for (int k = 0; k < bounds.length; k++) {
            bounds[k] += step[k];
        }
    }
}
