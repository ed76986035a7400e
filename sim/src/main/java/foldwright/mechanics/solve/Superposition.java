// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.solve;

import foldwright.mechanics.Mechanism;
import foldwright.mechanics.body.State;
import foldwright.mechanics.joint.Friction;
import foldwright.mechanics.joint.Rows;
import java.util.Arrays;
import java.util.List;

/**
 * What joints and drivers carry under single loads while the pose stays as it is.
 *
 * <p>At a fixed pose the balance is linear: G' lambda = -load, and what joints carry beyond that
 * goes the way of least give, C lambda = -G u. So what is found for parts of a load adds up to what
 * is found for the whole, to rounding. Every freedom must be driven. Friction rows are no supports
 * here: their forces are loads like others.
 */
public final class Superposition {
    private static final int MOST = 60;

    /** Change of the multipliers, against the largest, below which they stand still. */
    private static final double SETTLED = 1e-14;

    /** Change that rounding may leave, against the largest, with a result still good. */
    private static final double GOOD = 1e-9;

    private final Assembly asm;
    private final Kkt kkt;
    private final State pose;
    private final double[] whole;

    /** Loads at a pose. */
    public interface Loads {
        /** Adds force [N, base frame] and moment about the centre [N m, body axes], 6 a body. */
        void apply(State s, double[] load);
    }

    /**
     * Takes the pose of a balance.
     *
     * @param mechanism the one that was balanced, with its friction rows sliding or left out
     */
    public Superposition(Mechanism mechanism, Equilibrium balance) {
        asm = new Assembly(mechanism);
        kkt = new Kkt(asm, Kkt.Geometry.PLAIN);
        pose = balance.state();
        whole = balance.multipliers();
        pose.rest();
        asm.clock(pose.time);
        asm.evaluate(pose);
        for (Friction f : asm.frictions) {
            asm.engaged[f.rowAt()] = false;
        }
        kkt.fill(pose, Kkt.SIGMA, 0, 0, 0);
        kkt.factor();
    }

    /** Multipliers under a load alone. */
    public Equilibrium under(Loads loads) {
        return settle(loads, List.of());
    }

    /** Multipliers under the forces that some friction rows have in the balance. */
    public Equilibrium under(List<Friction> rows) {
        return settle((s, load) -> {}, rows);
    }

    private Equilibrium settle(Loads loads, List<Friction> rows) {
        double[] applied = new double[asm.load.length];
        loads.apply(pose, applied);
        double[] give = new double[applied.length - 6];
        Arrays.fill(asm.lambda, 0);
        for (Friction f : rows) {
            asm.lambda[f.rowAt()] = whole[f.rowAt()];
        }
        double before;
        double change = Double.POSITIVE_INFINITY;
        int solves = 0;
        do {
            before = change;
            change = sweep(applied, give);
            solves++;
        } while (change > SETTLED * asm.largestLoad() && change < before && solves < MOST);
        boolean found = change <= GOOD * asm.largestLoad();
        return new Equilibrium(
                pose,
                asm.lambda,
                solves,
                found ? null : Correction.failure(asm, kkt.vector(), pose.time, change));
    }

    /** One solve for what is left; returns the largest change of a multiplier [N, N m]. */
    private double sweep(double[] applied, double[] give) {
        System.arraycopy(applied, 0, asm.load, 0, applied.length);
        asm.react();
        double[] x = kkt.vector();
        Arrays.fill(x, 0);
        System.arraycopy(asm.load, 6, x, 0, give.length);
        for (Rows r : asm.rows) {
            for (int row = r.rowAt(); row < r.rowAt() + r.size(); row++) {
                if (asm.engaged[row]) {
                    x[kkt.rowPlace(row)] = -asm.change(row, give) - asm.c[row] * asm.lambda[row];
                }
            }
        }
        kkt.solve();
        for (int i = 0; i < give.length; i++) {
            give[i] += x[i];
        }
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
}
