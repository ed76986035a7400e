// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.solve;

import foldwright.mechanics.body.State;
import foldwright.mechanics.joint.Stop;

/**
 * One Newton solve for balance of loads at a pose: S = sigma M + tangent and geometric stiffness;
 * the velocities and accelerations of the state count as given (inertia loads).
 */
final class StaticNewton {
    /** Largest displacement in one solve [m], or turn [rad] times the body's arm. */
    private static final double LONGEST = 0.2;

    final Assembly asm;
    final Kkt kkt;

    StaticNewton(Assembly asm, Kkt kkt) {
        this.asm = asm;
        this.kkt = kkt;
    }

    /** Evaluates and, if asked with a sigma above 0, fills and factorises. */
    void evaluate(State s, double sigma) {
        asm.evaluate(s);
        if (sigma > 0) {
            kkt.fillStatic(s, sigma);
            kkt.factor();
        }
    }

    /**
     * Solves with the present factor and corrects the multipliers; returns their largest change [N,
     * N m]. The displacements stand in the vector of the system.
     */
    double solve(State s) {
        asm.react();
        double[] x = kkt.vector();
        asm.imbalance(s, x);
        for (int row = 0; row < asm.rowCount; row++) {
            x[kkt.rowPlace(row)] =
                    asm.engaged[row] ? -asm.phi[row] - asm.c[row] * asm.lambda[row] : 0;
        }
        kkt.solve();
        double most = 0;
        for (int row = 0; row < asm.rowCount; row++) {
            if (asm.engaged[row]) {
                double d = x[kkt.rowPlace(row)];
                asm.lambda[row] -= d;
                most = Math.max(most, Math.abs(d));
            }
        }
        return most;
    }

    /** Stops that are reached touch. */
    void startStops(State s) {
        for (Stop stop : asm.stops) {
            stop.start(s);
        }
    }

    /** Stops touch or let go by the solution at hand; true if all stay as they were. */
    boolean decideStops() {
        boolean same = true;
        double[] x = kkt.vector();
        for (Stop stop : asm.stops) {
            int row = stop.rowAt();
            same &= !stop.decide(asm.phi[row] + asm.change(row, x), asm.lambda[row]);
        }
        asm.engage();
        return same;
    }

    /** Moves the bodies, not further than is safe; returns the full displacement asked for [m]. */
    double move(State s) {
        return move(s, LONGEST);
    }

    /** The same with the longest way given [m]. */
    double move(State s, double longest) {
        double e = Correction.size(asm, kkt.vector());
        Correction.apply(s, kkt.vector(), e > longest ? longest / e : 1);
        return e;
    }
}
