// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.solve;

import foldwright.mechanics.Mechanism;
import foldwright.mechanics.body.State;
import foldwright.mechanics.joint.Friction;
import foldwright.mechanics.joint.Stop;
import java.util.Arrays;
import java.util.function.DoubleSupplier;

/**
 * Equilibrium of a mechanism near a given pose, by Newton on the same rows as the integrator, with
 * S = sigma M + tangent and geometric stiffness.
 */
public final class Statics {
    /** How friction rows change their state within Newton. */
    private enum Switching {
        /**
         * Only rows that are overloaded about as much as the worst one start to slide, and only
         * when loads have calmed down; a row that sticks again does so where it stands. Otherwise
         * all rows let go at the first solve, when loads still hang on the bristles and bounds are
         * near zero, and a lift that holds well runs off within Newton.
         */
        WORST_FIRST,
        /** All at once. */
        AT_ONCE
    }

    /** Here a row slides as soon as its load is beyond its bound. */
    private static final DoubleSupplier EXACT = () -> 0;

    private static final int MOST = 60;

    /**
     * Rows with this share of the worst overload slide together with it, as mirror images do; tried
     * one after the other.
     */
    private static final double[] TOGETHER = {0.5, 0.9, 0.2};

    /** Change of loads, relative, below which they count as calm; or so many solves later. */
    private static final double CALM = 0.03;

    private static final int PATIENCE = 6;

    /** Longest way of a body in one solve while friction holds [m]. */
    private static final double STRIDE = 1e-3;

    /** Way of a body, as a share of its arm, at which it does not hold but runs off. */
    private static final double AWAY = 0.03;

    private final Assembly asm;
    private final Kkt kkt;
    private final StaticNewton newton;
    private final boolean[] restuck;
    private Switching switching = Switching.AT_ONCE;
    private double together = TOGETHER[0];
    private int solvesSince;
    private double sigma;

    public Statics(Mechanism mechanism) {
        asm = new Assembly(mechanism);
        kkt = new Kkt(asm, Kkt.Geometry.LOADED);
        newton = new StaticNewton(asm, kkt);
        restuck = new boolean[asm.frictions.length];
    }

    /** Equilibrium without any friction, near {@code guess}; drivers stand at the state's time. */
    public Equilibrium frictionless(State guess) {
        for (Friction f : asm.frictions) {
            f.mode(Friction.Mode.NONE);
        }
        return solve(guess, Switching.AT_ONCE);
    }

    /**
     * Equilibrium with friction that holds: every friction row starts stuck and unloaded at {@code
     * guess} and takes load until its bound, where it slides. Which rows slide in the end depends
     * on the order, as it does in a machine; any state in which all loads stay within their bounds
     * is an equilibrium.
     */
    public Equilibrium holding(State guess) {
        for (double share : TOGETHER) {
            together = share;
            Equilibrium found = hold(guess, Switching.WORST_FIRST);
            if (found.found()) {
                return found;
            }
        }
        return hold(guess, Switching.AT_ONCE);
    }

    private Equilibrium hold(State guess, Switching how) {
        asm.evaluate(guess);
        for (Friction f : asm.frictions) {
            f.mode(Friction.Mode.STICK);
            f.anchor(guess, 0);
        }
        return solve(guess, how);
    }

    private Equilibrium solve(State guess, Switching how) {
        State s = guess.copy();
        s.rest();
        begin(s, how);
        double before = Double.MAX_VALUE;
        double e = Double.NaN;
        int i = 0;
        int stiffer = 0;
        while (i++ < MOST && !ranOff(guess, s)) {
            for (Friction f : asm.frictions) {
                f.load(asm.lambda, 0);
            }
            asm.engage();
            newton.evaluate(s, sigma);
            double dl = newton.solve(s);
            boolean settled = decide(dl);
            e = how == Switching.WORST_FIRST ? newton.move(s, STRIDE) : newton.move(s);
            if (!(e < 1e6)) {
                // the factorisation does not pivot: a softening load met a zero; start stiffer
                if (stiffer++ > 3) {
                    break;
                }
                s.set(guess);
                s.rest();
                Arrays.fill(asm.lambda, 0);
                sigma = Kkt.SIGMA * Math.pow(30, stiffer);
                continue;
            }
            stickHere(s);
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

    private void begin(State s, Switching how) {
        switching = how;
        solvesSince = 0;
        sigma = Kkt.SIGMA;
        Arrays.fill(asm.lambda, 0);
        asm.refreshSettings();
        asm.clock(s.time);
        asm.evaluate(s);
        for (Stop stop : asm.stops) {
            stop.start(s);
        }
        asm.engage();
    }

    private boolean ranOff(State guess, State s) {
        boolean away = false;
        for (int i = 1; i < asm.bodies && switching == Switching.WORST_FIRST; i++) {
            for (int c = 3 * i; c < 3 * i + 3; c++) {
                away |= Math.abs(s.x[c] - guess.x[c]) > AWAY * asm.reach(i);
            }
        }
        return away;
    }

    /** Friction and stops after a solve; true if nothing changed and bounds fit the loads. */
    private boolean decide(double change) {
        boolean same = true;
        for (Friction f : asm.frictions) {
            double used = f.bound();
            f.load(asm.lambda, 0);
            same &= Math.abs(f.bound() - used) <= 1e-7 * Math.max(used, f.bound()) + 1e-12;
        }
        same &= switching == Switching.AT_ONCE ? slideOrStick(0) : slideWorst(change);
        double[] x = kkt.vector();
        for (Stop stop : asm.stops) {
            int row = stop.rowAt();
            same &= !stop.decide(asm.phi[row] + asm.change(row, x), asm.lambda[row]);
        }
        return same;
    }

    private boolean slideWorst(double change) {
        double worst = 1;
        for (Friction f : asm.frictions) {
            worst = Math.max(worst, overload(f));
        }
        boolean calm = change <= CALM * asm.largestLoad() || ++solvesSince >= PATIENCE;
        return calm && slideOrStick(together * worst);
    }

    /** Load over bound of a row that sticks; 0 of one that slides. */
    private double overload(Friction f) {
        if (f.mode() != Friction.Mode.STICK) {
            return 0;
        }
        double tiny = 1e-9 * asm.largestLoad() + 1e-9;
        return Math.abs(asm.lambda[f.rowAt()]) / (f.bound() + tiny);
    }

    /** Lets rows stick again, and slide from an overload on; true if no row wants a change. */
    private boolean slideOrStick(double overload) {
        boolean same = true;
        double[] x = kkt.vector();
        for (int k = 0; k < asm.frictions.length; k++) {
            Friction f = asm.frictions[k];
            int row = f.rowAt();
            if (f.mode() == Friction.Mode.STICK && overload(f) < overload) {
                same &= Math.abs(asm.lambda[row]) <= f.bound();
                continue;
            }
            boolean changed = f.decide(asm.phi[row] + asm.change(row, x), asm.lambda[row], EXACT);
            restuck[k] = changed && f.mode() == Friction.Mode.STICK;
            solvesSince = changed ? 0 : solvesSince;
            same &= !changed;
        }
        return same;
    }

    /** Rows that stick again do so at this pose with the load they had. */
    private void stickHere(State s) {
        for (int k = 0; k < restuck.length; k++) {
            if (restuck[k] && switching == Switching.WORST_FIRST) {
                asm.frictions[k].anchor(s, asm.lambda[asm.frictions[k].rowAt()]);
            }
            restuck[k] = false;
        }
    }
}
