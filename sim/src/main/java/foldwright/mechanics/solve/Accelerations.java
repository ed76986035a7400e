// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.solve;

import foldwright.mechanics.body.State;
import foldwright.mechanics.joint.Driver;
import foldwright.mechanics.joint.Rows;
import java.util.Arrays;

/**
 * Velocities and accelerations that satisfy all engaged rows at a given pose.
 *
 * <p>Accelerations: M a + gyroscopic = load + G' lambda, G a + convective = prescribed. Redundant
 * rows make the system singular; it is solved with a small compliance and refined until the true
 * rows hold, which leaves the smallest multipliers.
 */
final class Accelerations {
    private static final double SOFT = 1e-9;
    private static final int SWEEPS = 12;

    /**
     * Gap left over what drivers prescribe from which rows contradict each other [1]. Rows that
     * agree leave 1e-14; a nut that is held by a stuck thread leaves its lead over a turn of the
     * crank, some 1e-4.
     */
    private static final double AGREE = 1e-6;

    /** Gap that loads leave in any case, as rows are a little soft here [m/s² or rad/s²]. */
    private static final double ROUNDING = 1e-7;

    private final Assembly asm;
    private final Kkt kkt;
    private final double[] curve;

    Accelerations(Assembly asm, Kkt kkt) {
        this.asm = asm;
        this.kkt = kkt;
        curve = new double[asm.rowCount];
    }

    /**
     * Nearest velocities, in the sense of kinetic energy, that satisfy the rows with the prescribed
     * rates of drivers. The state must have been evaluated.
     */
    void velocities(State s) {
        kkt.fill(s, 1, 0, 0, 0);
        kkt.regularise(SOFT);
        kkt.factor();
        double[] x = kkt.vector();
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            if (rateGaps(asm, kkt, s) < 1e-14) {
                break;
            }
            kkt.solve();
            for (int i = 6; i < s.v.length; i++) {
                s.v[i] += x[i - 6];
            }
        }
        for (int i = 0; i < asm.bodies; i++) {
            s.spin(i);
        }
    }

    /** Writes how far engaged rows are from their rate as the load; returns the largest [m/s]. */
    static double rateGaps(Assembly asm, Kkt kkt, State s) {
        double[] x = kkt.vector();
        Arrays.fill(x, 0);
        double worst = 0;
        for (Rows r : asm.rows) {
            double want = r instanceof Driver driver ? driver.rate() : 0;
            for (int row = r.rowAt(); row < r.rowAt() + r.size(); row++) {
                if (asm.engaged[row]) {
                    double gap = want - asm.rate(row, s.v);
                    x[kkt.rowPlace(row)] = gap;
                    worst = Math.max(worst, Math.abs(gap));
                }
            }
        }
        return worst;
    }

    /**
     * Smallest accelerations that satisfy the rows with the prescribed accelerations of drivers,
     * loads aside: those of a mechanism whose every freedom is driven.
     */
    void kinematicAccelerations(State s) {
        for (Rows r : asm.rows) {
            r.convective(s, curve);
        }
        kkt.fill(s, 1, 0, 0, 0);
        kkt.regularise(SOFT);
        kkt.factor();
        Arrays.fill(s.a, 0);
        double[] x = kkt.vector();
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            Arrays.fill(x, 0);
            double worst = accelerationGaps(s, x);
            if (worst < 1e-13) {
                break;
            }
            kkt.solve();
            for (int i = 6; i < s.a.length; i++) {
                s.a[i] += x[i - 6];
            }
        }
    }

    /** Writes how far engaged rows are from their acceleration; returns the largest [m/s2]. */
    private double accelerationGaps(State s, double[] x) {
        double worst = 0;
        for (Rows r : asm.rows) {
            for (int i = 0; i < r.size(); i++) {
                int row = r.rowAt() + i;
                if (asm.engaged[row]) {
                    double want = r instanceof Driver ? ((Driver) r).acceleration() : 0;
                    double gap = want - curve[row] - asm.rate(row, s.a);
                    x[kkt.rowPlace(row)] = gap;
                    worst = Math.max(worst, Math.abs(gap));
                }
            }
        }
        return worst;
    }

    /**
     * Accelerations and multipliers; overwrites {@code s.a} and the multipliers of engaged rows.
     *
     * @return false where rows contradict what drivers prescribe, as friction that still sticks
     *     while a driver winds it up: at this level every row is rigid, so there are no such
     *     accelerations, and what was written is of no use
     */
    boolean accelerations(State s) {
        for (Rows r : asm.rows) {
            r.convective(s, curve);
        }
        kkt.fill(s, 1, 0, 0, 0);
        kkt.regularise(SOFT);
        kkt.factor();
        double[] x = kkt.vector();
        Arrays.fill(s.a, 0);
        double before = Double.MAX_VALUE;
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            asm.evaluate(s);
            asm.react();
            Arrays.fill(x, 0);
            asm.imbalance(s, x);
            accelerationGaps(s, x);
            kkt.solve();
            double size = 0;
            for (int i = 6; i < s.a.length; i++) {
                s.a[i] += x[i - 6];
                size += x[i - 6] * x[i - 6];
            }
            for (int row = 0; row < asm.rowCount; row++) {
                if (asm.engaged[row]) {
                    asm.lambda[row] -= x[kkt.rowPlace(row)];
                }
            }
            if (size == 0 || size > 0.25 * before) {
                break;
            }
            before = size;
        }
        return asm.drivers.length == 0 || accelerationGaps(s, x) <= AGREE * wanted() + ROUNDING;
    }

    /** Largest acceleration that a driver or the speed of the bodies asks of a row. */
    private double wanted() {
        double most = 0;
        for (Driver d : asm.drivers) {
            most = Math.max(most, d.engaged() ? Math.abs(d.acceleration()) : 0);
        }
        for (int row = 0; row < asm.rowCount; row++) {
            most = Math.max(most, asm.engaged[row] ? Math.abs(curve[row]) : 0);
        }
        return most;
    }
}
