// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.solve;

import foldwright.mechanics.Mechanism;
import foldwright.mechanics.body.State;
import foldwright.mechanics.joint.Driver;
import foldwright.mechanics.joint.Friction;
import foldwright.mechanics.joint.Rows;
import foldwright.mechanics.joint.Stop;
import java.util.Arrays;

/**
 * Balance of loads while the drivers of a mechanism move it as prescribed: "the force while
 * moving".
 *
 * <p>Every friction row whose coordinate moves slides against the direction that the kinematics
 * give it; its bound follows the joint's own load, solved together with the loads. With {@link
 * Inertia#INCLUDED} the prescribed rates and accelerations load the bodies as well (inverse
 * dynamics); every freedom must then be driven. No stepping in time, no start-up wind-up.
 */
public final class Kinetostatics {
    /** Whether prescribed rates and accelerations load the bodies. */
    public enum Inertia {
        IGNORED,
        INCLUDED
    }

    private static final double SIGMA = 10;
    private static final int MOST = 40;
    private static final double SETTLED = 1e-10;

    /** Relative accuracy of friction bounds. */
    private static final double EVEN = 1e-9;

    /** Noise that rigid redundant joints leave in the loads [N, N m]. */
    private static final double NOISE = 1e-8;

    /** Along a course: accuracy of loads [1], of bounds in units of the fine one, of poses [m]. */
    private static final double COURSE_EVEN = 1e-7;

    private static final double COURSE_GAP = 100;
    private static final double COURSE_SETTLED = 1e-9;
    private static final int COURSE_MOST = 12;

    /** From this amplification at the frictionless loads on, friction is raised step by step. */
    private static final double DOUBTFUL = 0.9;

    /** Largest give of joints from friction in one go, as a share of a body's arm [1]. */
    private static final double SNAP = 0.02;

    /** A row that slips slower than this, against the fastest body motion, does not slide. */
    private static final double STILL = 1e-9;

    private final Assembly asm;
    private final StaticNewton newton;
    private final Accelerations kinematics;
    private final FrictionLoop loop;
    private final double[] bounds;
    private final double[] gaps;
    private final double[] rates;
    private final double[] remaining;
    private final double[] factors;
    private final Course course;
    private double residual;
    private int solves;

    public Kinetostatics(Mechanism mechanism) {
        asm = new Assembly(mechanism);
        Kkt kkt = new Kkt(asm, Kkt.Geometry.LOADED);
        newton = new StaticNewton(asm, kkt);
        kinematics = new Accelerations(asm, new Kkt(asm, Kkt.Geometry.PLAIN));
        loop = new FrictionLoop(asm, kkt);
        bounds = new double[asm.frictions.length];
        gaps = new double[bounds.length];
        rates = new double[6 * asm.bodies];
        remaining = new double[bounds.length];
        factors = new double[bounds.length];
        course = new Course(asm, bounds.length);
    }

    /**
     * Balance near {@code guess}, with drivers at the value, rate and acceleration of their motion
     * at the guess's time. Loads of the last call serve as first guess.
     */
    public MovingBalance solve(State guess, Inertia inertia) {
        MovingBalance found = search(guess, inertia);
        course.begin(found, guess.time, asm.lambda, bounds);
        if (found.outcome() != MovingBalance.Outcome.BALANCED) {
            Arrays.fill(asm.lambda, 0);
        }
        return found;
    }

    /**
     * Balance at the next pose of a course of close neighbours, without inertia: starts from loads,
     * bounds and slip directions of the calls before, so it takes one factorisation. The guess must
     * be the pose itself but for the give of joints. Falls back on {@link #solve} at the start,
     * when a driver turns round, when friction feeds on itself by half or more, every now and then
     * to look at that anew, and when it does not settle. The amplification told is that of the last
     * full solution.
     */
    public MovingBalance follow(State guess) {
        asm.clock(guess.time);
        if (course.goesOn()) {
            MovingBalance next = step(guess);
            if (next != null) {
                return next;
            }
        }
        return solve(guess, Inertia.IGNORED);
    }

    private MovingBalance step(State guess) {
        State s = guess.copy();
        s.rest();
        solves = 0;
        begin(s);
        course.guess(s.time, asm.lambda, bounds);
        hold();
        newton.evaluate(s, SIGMA);
        for (int i = 0; i < COURSE_MOST; i++) {
            double change = newton.solve(s);
            boolean same = decideStops();
            residual = newton.move(s);
            solves++;
            double worst = gaps(1);
            double even = COURSE_EVEN * asm.largestLoad() + 1e-8;
            if (same && worst <= COURSE_GAP && residual < COURSE_SETTLED && change < even) {
                driverRates(s);
                course.accepted(s.time, asm.lambda, bounds);
                return course.balanced(balanced(s));
            }
            if (!same || !(residual < SNAP)) {
                return null;
            }
            double[] step = loop.correct(gaps);
            for (int k = 0; k < bounds.length; k++) {
                bounds[k] += step[k];
            }
            hold();
            newton.evaluate(s, 0);
        }
        return null;
    }

    /** Velocities that the drivers give, with the factor at hand, refined until the rows hold. */
    private void driverRates(State s) {
        double[] x = newton.kkt.vector();
        System.arraycopy(rates, 0, s.v, 0, rates.length);
        for (int sweep = 0; sweep < 6; sweep++) {
            Arrays.fill(x, 0);
            double worst = 0;
            double most = 0;
            for (Rows r : asm.rows) {
                for (int i = 0; i < r.size(); i++) {
                    int row = r.rowAt() + i;
                    if (asm.engaged[row]) {
                        double want = r instanceof Driver ? ((Driver) r).rate() : 0;
                        double gap = want - asm.rate(row, s.v);
                        x[newton.kkt.rowPlace(row)] = gap;
                        worst = Math.max(worst, Math.abs(gap));
                        most = Math.max(most, Math.abs(want));
                    }
                }
            }
            if (worst <= 1e-13 * most) {
                break;
            }
            newton.kkt.solve();
            for (int i = 6; i < rates.length; i++) {
                s.v[i] += x[i - 6];
            }
        }
        System.arraycopy(s.v, 0, rates, 0, rates.length);
    }

    private MovingBalance search(State guess, Inertia inertia) {
        State s = guess.copy();
        s.rest();
        solves = 0;
        begin(s);
        slide(Friction.Mode.NONE);
        if (!settle(s, 0) || Correction.wrongBranch(asm, s) != null) {
            return failed(s);
        }
        move(s, inertia);
        double[] shares = new double[bounds.length];
        State free = s.copy();
        if (amplification(s, 1, shares) < DOUBTFUL && balance(s, 1)) {
            double amplification = amplification(s, 1, shares);
            if (amplification < 1 && near(free, s)) {
                return new MovingBalance(
                        balanced(s), MovingBalance.Outcome.BALANCED, amplification, shares, 1);
            }
        }
        return march(free);
    }

    private void begin(State s) {
        asm.refreshSettings();
        asm.clock(s.time);
        asm.evaluate(s);
        for (Stop stop : asm.stops) {
            stop.start(s);
        }
    }

    private void slide(Friction.Mode mode) {
        for (Friction f : asm.frictions) {
            f.mode(mode);
        }
        asm.engage();
    }

    /** Newton with fixed friction until pose and loads stand still. */
    private boolean settle(State s, double floor) {
        for (int i = 0; i < MOST; i++) {
            newton.evaluate(s, SIGMA);
            double change = newton.solve(s);
            boolean same = decideStops();
            residual = newton.move(s);
            solves++;
            if (!(residual < 1e3)) {
                return false;
            }
            double even = EVEN * asm.largestLoad() + NOISE;
            if (same
                    && residual < Math.max(SETTLED, floor)
                    && (change < even || residual < 1e-14)) {
                return true;
            }
        }
        return false;
    }

    private boolean decideStops() {
        boolean same = true;
        double[] x = newton.kkt.vector();
        for (Stop stop : asm.stops) {
            int row = stop.rowAt();
            same &= !stop.decide(asm.phi[row] + asm.change(stop.rowAt(), x), asm.lambda[row]);
        }
        asm.engage();
        return same;
    }

    /** Velocities from the drivers, directions of slip, and inertia loads if asked for. */
    private void move(State s, Inertia inertia) {
        asm.evaluate(s);
        kinematics.velocities(s);
        double fastest = 0;
        for (int i = 1; i < asm.bodies; i++) {
            for (int c = 0; c < 6; c++) {
                fastest = Math.max(fastest, Math.abs(s.v[6 * i + c]));
            }
        }
        for (int k = 0; k < bounds.length; k++) {
            Friction f = asm.frictions[k];
            double slip = asm.rate(f.rowAt(), s.v);
            remaining[k] = f.slipFactor(slip);
            f.mode(
                    Math.abs(slip) <= STILL * fastest
                            ? Friction.Mode.NONE
                            : slip > 0 ? Friction.Mode.FORCE_MINUS : Friction.Mode.FORCE_PLUS);
        }
        asm.engage();
        System.arraycopy(s.v, 0, rates, 0, rates.length);
        if (inertia == Inertia.INCLUDED) {
            kinematics.kinematicAccelerations(s);
        } else {
            s.rest();
        }
    }

    /** Newton on pose, loads and bounds together; friction is scaled by {@code scale}. */
    private boolean balance(State s, double scale) {
        loop.forget();
        Arrays.fill(bounds, 0);
        double before = Double.MAX_VALUE;
        for (int i = 0; i < MOST; i++) {
            hold();
            newton.evaluate(s, SIGMA);
            double change = newton.solve(s);
            boolean same = decideStops();
            residual = newton.move(s);
            solves++;
            if (!(residual < 1e3)) {
                return false;
            }
            double worst = gaps(scale);
            double even = EVEN * asm.largestLoad() + NOISE;
            if (same && worst <= 1 && residual < SETTLED && (change < even || residual < 1e-14)) {
                return true;
            }
            if (!loop.known() || worst > 0.3 * before) {
                loop.sense(s, factors(scale));
            }
            double[] step = loop.correct(gaps);
            for (int k = 0; k < bounds.length; k++) {
                bounds[k] += step[k];
            }
            before = worst;
        }
        return false;
    }

    private void hold() {
        for (int k = 0; k < bounds.length; k++) {
            asm.frictions[k].bound(bounds[k]);
        }
        asm.engage();
    }

    /** Fills law - bound; returns the largest, in units of what is accurate enough. */
    private double gaps(double scale) {
        factors(scale);
        double worst = 0;
        double load = asm.largestLoad();
        for (int k = 0; k < bounds.length; k++) {
            Friction f = asm.frictions[k];
            if (f.mode() == Friction.Mode.NONE) {
                gaps[k] = 0;
                continue;
            }
            gaps[k] = factors[k] * f.law().bound(asm.lambda) - bounds[k];
            double fine = 10 * EVEN * Math.abs(bounds[k]) + 1e-12 * load + 1e-13;
            worst = Math.max(worst, Math.abs(gaps[k]) / fine);
        }
        return worst;
    }

    /**
     * What a law's bound is multiplied with: the share of friction looked at, and slip weakening.
     */
    private double[] factors(double scale) {
        for (int k = 0; k < factors.length; k++) {
            factors[k] = scale * remaining[k];
        }
        return factors;
    }

    private double amplification(State s, double scale, double[] shares) {
        if (bounds.length == 0) {
            return 0;
        }
        loop.sense(s, factors(scale));
        return loop.amplification(shares);
    }

    /**
     * Raises friction from nothing, following the balance, as far as one exists. This finds the
     * branch that belongs to the given loads, and the share of friction at which it runs away.
     */
    private MovingBalance march(State free) {
        double[] shares = new double[bounds.length];
        State s = free.copy();
        Arrays.fill(asm.lambda, 0);
        Arrays.fill(bounds, 0);
        hold();
        if (!settle(s, 0)) {
            return failed(s);
        }
        Equilibrium last = balanced(s);
        double reached = 0;
        double amplification = amplification(s, 0, shares);
        double step = 0.25;
        while (reached < 1 && step > 1e-4) {
            double next = Math.min(1, reached + step);
            State trial = s.copy();
            double now = balance(trial, next) ? amplification(trial, next, shares) : 1;
            if (now < 1 && near(s, trial)) {
                s = trial;
                reached = next;
                amplification = now;
                last = balanced(s);
            } else {
                step *= 0.5;
                System.arraycopy(last.multipliers(), 0, asm.lambda, 0, asm.rowCount);
            }
        }
        return reached == 1
                ? new MovingBalance(last, MovingBalance.Outcome.BALANCED, amplification, shares, 1)
                : new MovingBalance(
                        last, MovingBalance.Outcome.LOCKED, 1 / reached, shares, reached);
    }

    /** Whether two poses differ by give of the joints only, not by a snap to another branch. */
    private boolean near(State a, State b) {
        for (int i = 1; i < asm.bodies; i++) {
            for (int c = 3 * i; c < 3 * i + 3; c++) {
                if (!(Math.abs(a.x[c] - b.x[c]) <= SNAP * asm.reach(i))) {
                    return false;
                }
            }
        }
        return true;
    }

    private Equilibrium balanced(State s) {
        System.arraycopy(rates, 0, s.v, 0, rates.length);
        for (int i = 0; i < asm.bodies; i++) {
            s.spin(i);
        }
        return new Equilibrium(s, asm.lambda, solves, null);
    }

    private MovingBalance failed(State s) {
        Failure branch = Correction.wrongBranch(asm, s);
        Failure why =
                branch != null
                        ? branch
                        : Correction.failure(asm, newton.kkt.vector(), s.time, residual);
        return new MovingBalance(
                new Equilibrium(s, asm.lambda, solves, why),
                MovingBalance.Outcome.FAILED,
                Double.NaN,
                new double[bounds.length],
                0);
    }
}
