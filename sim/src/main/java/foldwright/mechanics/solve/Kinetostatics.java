// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.solve;

import foldwright.mechanics.Mechanism;
import foldwright.mechanics.body.State;
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

    private static final int MOST = 40;
    private static final double SETTLED = 1e-10;

    /** Relative accuracy of loads. */
    private static final double EVEN = 1e-9;

    /** Noise that rigid redundant joints leave in the loads [N, N m]. */
    private static final double NOISE = 1e-8;

    /** From this amplification at the frictionless loads on, friction is raised step by step. */
    private static final double DOUBTFUL = 0.9;

    /** Largest give of joints from friction in one go, as a share of a body's arm [1]. */
    private static final double SNAP = 0.02;

    private final Assembly asm;
    private final StaticNewton newton;
    private final Accelerations kinematics;
    private final FrictionLoop loop;
    private final SlidingBounds friction;
    private final Course course;
    private final double[] rates;
    private Following following;
    private double residual;
    private int solves;

    public Kinetostatics(Mechanism mechanism) {
        asm = new Assembly(mechanism);
        Kkt kkt = new Kkt(asm, Kkt.Geometry.LOADED);
        newton = new StaticNewton(asm, kkt);
        kinematics = new Accelerations(asm, kkt);
        friction = new SlidingBounds(asm);
        loop = new FrictionLoop(asm, kkt);
        course = new Course(asm, friction.count());
        rates = new double[6 * asm.bodies];
    }

    /**
     * Balance near {@code guess}, with drivers at the value, rate and acceleration of their motion
     * at the guess's time. Loads of the last call serve as first guess.
     */
    public MovingBalance solve(State guess, Inertia inertia) {
        MovingBalance found = search(guess, inertia);
        course.begin(found, guess, friction.bounds());
        if (found.outcome() != MovingBalance.Outcome.BALANCED) {
            Arrays.fill(asm.lambda, 0);
        }
        return found;
    }

    /**
     * Balance at the next pose of a course of close neighbours, without inertia: starts from loads,
     * bounds and slip directions of the calls before, so it takes one factorisation. The guess must
     * be the pose itself but for the give of joints. Falls back on {@link #solve} at the start,
     * when a driver or a sliding row turns round, when friction feeds on itself by half or more,
     * and when it does not settle. The amplification told was looked at within the last 40 poses.
     */
    public MovingBalance follow(State guess) {
        asm.clock(guess.time);
        State s = guess.copy();
        if (course.goesOn() && following().next(s) && (!course.due() || looked(s))) {
            course.went(guess, s, friction.bounds());
            return course.balanced(new Equilibrium(s, asm.lambda, following.solves(), null));
        }
        return solve(guess, Inertia.IGNORED);
    }

    /** Made when first asked for: many solvers never follow. */
    private Following following() {
        if (following == null) {
            Kkt plain = new Kkt(asm, Kkt.Geometry.PLAIN);
            following = new Following(asm, plain, friction, loop, course);
        }
        return following;
    }

    /** Looks anew at how friction feeds on itself; true if the course may go on. */
    private boolean looked(State s) {
        newton.evaluate(s, Kkt.SIGMA);
        double[] shares = new double[friction.count()];
        double amplification = amplification(s, 1, shares);
        return course.looked(amplification, shares);
    }

    private MovingBalance search(State guess, Inertia inertia) {
        State s = guess.copy();
        s.rest();
        solves = 0;
        begin(s);
        friction.leaveOut();
        if (!settle(s, 0) || Correction.wrongBranch(asm, s) != null) {
            return failed(s);
        }
        move(s, inertia);
        newton.evaluate(s, Kkt.SIGMA);
        double[] shares = new double[friction.count()];
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
        newton.startStops(s);
    }

    /** Newton with fixed friction until pose and loads stand still. */
    private boolean settle(State s, double floor) {
        for (int i = 0; i < MOST; i++) {
            newton.evaluate(s, Kkt.SIGMA);
            double change = newton.solve(s);
            boolean same = newton.decideStops();
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

    /** Velocities from the drivers, directions of slip, and inertia loads if asked for. */
    private void move(State s, Inertia inertia) {
        asm.evaluate(s);
        kinematics.velocities(s);
        friction.slide(s);
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
        friction.clear();
        double before = Double.MAX_VALUE;
        for (int i = 0; i < MOST; i++) {
            friction.hold();
            newton.evaluate(s, Kkt.SIGMA);
            double change = newton.solve(s);
            boolean same = newton.decideStops();
            residual = newton.move(s);
            solves++;
            if (!(residual < 1e3)) {
                return false;
            }
            double worst = friction.gaps(scale);
            double even = EVEN * asm.largestLoad() + NOISE;
            if (same && worst <= 1 && residual < SETTLED && (change < even || residual < 1e-14)) {
                return true;
            }
            if (!loop.known() || worst > 0.3 * before) {
                loop.sense(s, friction.factors(scale));
            }
            friction.correct(loop);
            before = worst;
        }
        return false;
    }

    private double amplification(State s, double scale, double[] shares) {
        if (friction.count() == 0) {
            return 0;
        }
        loop.sense(s, friction.factors(scale));
        return loop.amplification(shares);
    }

    /**
     * Raises friction from nothing, following the balance, as far as one exists. This finds the
     * branch that belongs to the given loads, and the share of friction at which it runs away.
     */
    private MovingBalance march(State free) {
        double[] shares = new double[friction.count()];
        State s = free.copy();
        Arrays.fill(asm.lambda, 0);
        friction.clear();
        friction.hold();
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
                new double[friction.count()],
                0);
    }
}
