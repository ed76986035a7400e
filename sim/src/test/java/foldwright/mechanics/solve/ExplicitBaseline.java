// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.solve;

import foldwright.mechanics.Mechanism;
import foldwright.mechanics.body.State;
import foldwright.mechanics.joint.Rows;
import java.util.Arrays;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;

/**
 * The plain way to move a mechanism, for comparison only: an explicit integrator of the library on
 * positions and velocities, accelerations from a dense LU decomposition of {@code [M G'; G -e I]}
 * with the same rows, and Baumgarte's feedback of position and velocity gaps.
 *
 * <p>The small compliance {@code e} is needed because redundant rows make the matrix singular. J.
 * Baumgarte, Stabilization of constraints and integrals of motion in dynamical systems, Computer
 * Methods in Applied Mechanics and Engineering 1 (1972) 1-16.
 */
public final class ExplicitBaseline implements FirstOrderDifferentialEquations {
    private static final double COMPLIANCE = 1e-8;

    /** Rate at which gaps fade [1/s]. */
    private static final double FADING = 20;

    private final Assembly asm;
    private final State state;
    private final double[] curve;
    private final int bodies;
    private final int unknowns;
    private long evaluations;

    public ExplicitBaseline(Mechanism mechanism) {
        asm = new Assembly(mechanism);
        state = mechanism.start();
        bodies = asm.bodies;
        curve = new double[asm.rowCount];
        unknowns = 6 * (bodies - 1) + asm.rowCount;
    }

    @Override
    public int getDimension() {
        return 13 * (bodies - 1);
    }

    /** Right-hand sides computed so far. */
    public long evaluations() {
        return evaluations;
    }

    /** Centres, quaternions and velocities of the bodies, 13 a body. */
    public double[] pack(State s) {
        double[] y = new double[getDimension()];
        for (int i = 1; i < bodies; i++) {
            int at = 13 * (i - 1);
            System.arraycopy(s.x, 3 * i, y, at, 3);
            System.arraycopy(s.q, 4 * i, y, at + 3, 4);
            System.arraycopy(s.v, 6 * i, y, at + 7, 6);
        }
        return y;
    }

    /** The state of a vector, with unit quaternions; shared. */
    public State unpack(double[] y) {
        for (int i = 1; i < bodies; i++) {
            int at = 13 * (i - 1);
            System.arraycopy(y, at, state.x, 3 * i, 3);
            double n = 0;
            for (int c = 3; c < 7; c++) {
                n += y[at + c] * y[at + c];
            }
            for (int c = 0; c < 4; c++) {
                state.q[4 * i + c] = y[at + 3 + c] / Math.sqrt(n);
            }
            System.arraycopy(y, at + 7, state.v, 6 * i, 6);
        }
        state.refresh();
        return state;
    }

    @Override
    public void computeDerivatives(double t, double[] y, double[] rate) {
        evaluations++;
        State s = unpack(y);
        Arrays.fill(s.a, 0);
        asm.evaluate(s);
        double[][] m = new double[unknowns][unknowns];
        double[] right = new double[unknowns];
        asm.imbalance(s, right);
        fillMass(m);
        fillRows(m, right);
        double[] x =
                new LUDecomposition(new Array2DRowRealMatrix(m, false), 0)
                        .getSolver()
                        .solve(new Array2DRowRealMatrix(right))
                        .getColumn(0);
        for (int i = 1; i < bodies; i++) {
            writeRates(i, y, x, rate);
        }
    }

    private void fillMass(double[][] m) {
        for (int i = 1; i < bodies; i++) {
            int at = 6 * (i - 1);
            for (int r = 0; r < 3; r++) {
                m[at + r][at + r] = asm.mass(i);
                for (int c = 0; c < 3; c++) {
                    m[at + 3 + r][at + 3 + c] = asm.inertia()[9 * i + 3 * r + c];
                }
            }
        }
    }

    private void fillRows(double[][] m, double[] right) {
        for (Rows rows : asm.rows) {
            rows.convective(state, curve);
            for (int i = 0; i < rows.size(); i++) {
                int row = rows.rowAt() + i;
                int at = 6 * (bodies - 1) + row;
                m[at][at] = -COMPLIANCE;
                right[at] =
                        -curve[row]
                                - 2 * FADING * asm.rate(row, state.v)
                                - FADING * FADING * asm.phi[row];
                for (int k = 0; k < rows.count(); k++) {
                    for (int c = 0; c < 6 && rows.body(k) > 0; c++) {
                        double g =
                                asm.g[
                                        asm.table.at[asm.table.first[asm.table.block[row]] + k]
                                                + 6 * i
                                                + c];
                        m[at][6 * (rows.body(k) - 1) + c] = g;
                        m[6 * (rows.body(k) - 1) + c][at] = g;
                    }
                }
            }
        }
    }

    /** x' = v, q' = q w / 2, v' = a. */
    private static void writeRates(int i, double[] y, double[] x, double[] rate) {
        int at = 13 * (i - 1);
        System.arraycopy(y, at + 7, rate, at, 3);
        double w = y[at + 3];
        double a = y[at + 4];
        double b = y[at + 5];
        double c = y[at + 6];
        double ox = y[at + 10];
        double oy = y[at + 11];
        double oz = y[at + 12];
        rate[at + 3] = 0.5 * (-a * ox - b * oy - c * oz);
        rate[at + 4] = 0.5 * (w * ox + b * oz - c * oy);
        rate[at + 5] = 0.5 * (w * oy + c * ox - a * oz);
        rate[at + 6] = 0.5 * (w * oz + a * oy - b * ox);
        System.arraycopy(x, 6 * (i - 1), rate, at + 7, 6);
    }
}
