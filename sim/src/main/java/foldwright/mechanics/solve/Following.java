// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.solve;

import foldwright.mechanics.body.State;
import foldwright.mechanics.joint.Driver;

/**
 * Balance of loads at the next pose of a course of close neighbours, from what the last ones tell:
 * with one factorisation, which leaves out how the geometry changes under load.
 */
final class Following {
    /** Accuracy of loads [1], of bounds in units of the fine one, of poses [m], of rates [1]. */
    private static final double EVEN = 1e-7;

    private static final double GAP = 100;
    private static final double SETTLED = 1e-9;
    private static final double STEADY = 1e-11;
    private static final int MOST = 12;
    private static final int SWEEPS = 6;

    /** Correction of a pose beyond which it is no neighbour [m]. */
    private static final double FAR = 0.02;

    private final Assembly asm;
    private final StaticNewton newton;
    private final SlidingBounds friction;
    private final FrictionLoop loop;
    private final Course course;
    private int solves;

    /**
     * A follower without a course yet.
     *
     * @param kkt without geometric stiffness
     * @param loop how friction feeds on itself, as the last full solution left it
     */
    Following(Assembly asm, Kkt kkt, SlidingBounds friction, FrictionLoop loop, Course course) {
        this.asm = asm;
        this.friction = friction;
        this.loop = loop;
        newton = new StaticNewton(asm, kkt);
        this.course = course;
    }

    /** Newton solves of the last pose. */
    int solves() {
        return solves;
    }

    /**
     * Finds balance at a pose, and velocities that the drivers give there; false if it does not
     * settle, or if friction acts the other way there. The state is changed into what is found.
     */
    boolean next(State s) {
        solves = 0;
        s.rest();
        newton.startStops(s);
        course.guess(s, asm.lambda, friction.bounds());
        friction.hold();
        newton.evaluate(s, Kkt.SIGMA);
        while (solves < MOST) {
            double change = newton.solve(s);
            boolean same = newton.decideStops();
            double moved = newton.move(s);
            solves++;
            double even = EVEN * asm.largestLoad() + 1e-8;
            if (same && friction.gaps(1) <= GAP && moved < SETTLED && change < even) {
                rates(s);
                return friction.slidesSo(s);
            }
            if (!same || !(moved < FAR)) {
                return false;
            }
            friction.correct(loop);
            friction.hold();
            newton.evaluate(s, 0);
        }
        return false;
    }

    /** Velocities that the drivers give, with the factor at hand, refined until the rows hold. */
    private void rates(State s) {
        course.guessRates(s.v);
        double[] x = newton.kkt.vector();
        double scale = fastest();
        double before = Double.POSITIVE_INFINITY;
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            double gap = Accelerations.rateGaps(asm, newton.kkt, s) / scale;
            // Rows that contradict each other keep a gap.
            if (gap <= STEADY || gap > 0.5 * before) {
                break;
            }
            before = gap;
            newton.kkt.solve();
            for (int i = 6; i < s.v.length; i++) {
                s.v[i] += x[i - 6];
            }
        }
        for (int i = 0; i < asm.bodies; i++) {
            s.spin(i);
        }
    }

    /** Fastest of the drivers; 1 where all stand still [SI]. */
    private double fastest() {
        double most = 0;
        for (Driver driver : asm.drivers) {
            most = Math.max(most, Math.abs(driver.rate()));
        }
        return most > 0 ? most : 1;
    }
}
