// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.solve;

import foldwright.mechanics.Mechanism;
import foldwright.mechanics.body.State;
import foldwright.mechanics.joint.Friction;
import foldwright.mechanics.joint.Stop;
import java.util.Arrays;

/**
 * Equilibrium of a mechanism near a given pose, by Newton on the same rows as the integrator, with
 * S = sigma M + tangent and geometric stiffness.
 */
public final class Statics {
    /** Pseudo-stiffness of the masses, which keeps free directions regular [1/s2]. */
    private static final double SIGMA = 10;

    private static final int MOST = 60;

    private final Assembly asm;
    private final Kkt kkt;
    private final StaticNewton newton;
    private double sigma;

    public Statics(Mechanism mechanism) {
        asm = new Assembly(mechanism);
        kkt = new Kkt(asm, Kkt.Geometry.LOADED);
        newton = new StaticNewton(asm, kkt);
    }

    /** Equilibrium without any friction, near {@code guess}; drivers stand at the state's time. */
    public Equilibrium frictionless(State guess) {
        for (Friction f : asm.frictions) {
            f.mode(Friction.Mode.NONE);
        }
        Arrays.fill(asm.lambda, 0);
        return solve(guess);
    }

    /**
     * Equilibrium with friction that holds: every friction row starts stuck and unloaded at {@code
     * guess} and takes load until its bound, where it slides.
     */
    public Equilibrium holding(State guess) {
        asm.evaluate(guess);
        for (Friction f : asm.frictions) {
            f.mode(Friction.Mode.STICK);
            f.anchor(guess, 0);
        }
        Arrays.fill(asm.lambda, 0);
        return solve(guess);
    }

    private Equilibrium solve(State guess) {
        State s = guess.copy();
        s.rest();
        asm.refreshSettings();
        asm.clock(s.time);
        asm.evaluate(s);
        for (Stop stop : asm.stops) {
            stop.start(s);
        }
        asm.engage();
        sigma = SIGMA;
        double before = Double.MAX_VALUE;
        double e = Double.NaN;
        int i = 0;
        int stiffer = 0;
        while (i++ < MOST) {
            for (Friction f : asm.frictions) {
                f.load(asm.lambda, 0);
            }
            asm.engage();
            newton.evaluate(s, sigma);
            double dl = newton.solve(s);
            boolean settled = decide();
            e = newton.move(s);
            if (!(e < 1e6)) {
                // the factorisation does not pivot: a softening load met a zero; start stiffer
                if (stiffer++ > 3) {
                    break;
                }
                s.set(guess);
                s.rest();
                Arrays.fill(asm.lambda, 0);
                sigma = SIGMA * Math.pow(30, stiffer);
                continue;
            }
            if (settled && e < 1e-10 && dl <= 1e-9 * asm.largestLoad() + 1e-9
                    || settled && e < 1e-15) {
                return new Equilibrium(s, asm.lambda, i, Correction.wrongBranch(asm, s));
            }
            if (i > 3 && e > 0.3 * before && sigma > 1e-3) {
                sigma *= 0.3;
            }
            before = e;
        }
        return new Equilibrium(s, asm.lambda, i, Correction.failure(asm, kkt.vector(), s.time, e));
    }

    private boolean decide() {
        boolean same = true;
        double[] x = kkt.vector();
        for (Friction f : asm.frictions) {
            int row = f.rowAt();
            double used = f.bound();
            f.load(asm.lambda, 0);
            same &= !f.decide(asm.phi[row] + asm.change(f.rowAt(), x), asm.lambda[row]);
            same &= Math.abs(f.bound() - used) <= 1e-7 * Math.max(used, f.bound()) + 1e-12;
        }
        for (Stop stop : asm.stops) {
            int row = stop.rowAt();
            same &= !stop.decide(asm.phi[row] + asm.change(stop.rowAt(), x), asm.lambda[row]);
        }
        return same;
    }
}
