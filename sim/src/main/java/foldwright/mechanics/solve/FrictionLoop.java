// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.solve;

import foldwright.mechanics.body.State;
import foldwright.mechanics.joint.Friction;
import foldwright.mechanics.joint.Rows;
import java.util.Arrays;

/**
 * How sliding friction feeds on itself: friction bounds depend on joint loads, which depend on
 * friction. B[k][f] = change of the bound of row k per unit of friction in row f.
 *
 * <p>The loads are balanced where b = law(b); Newton on that uses B. As friction grows in
 * proportion, the balance runs away where a real eigenvalue of B reaches one: the mechanism locks
 * however hard it is driven.
 */
final class FrictionLoop {
    /** The power iteration goes in strides of 2^7 steps, at most this many. */
    private static final int SQUARINGS = 7;

    private static final int ROUNDS = 16;

    private final Assembly asm;
    private final Kkt kkt;
    private final Friction[] frictions;
    private final int n;
    private final double[][] b;
    private final double[][] lu;
    private final int[] order;
    private final double[] step;
    private final double[] trial;
    private final double[] direction;

    /** Solution of the system for a unit of friction in each sliding row. */
    private final double[][] responses;

    private boolean known;

    FrictionLoop(Assembly asm, Kkt kkt) {
        this.asm = asm;
        this.kkt = kkt;
        frictions = asm.frictions;
        n = frictions.length;
        b = new double[n][n];
        lu = new double[n][n];
        order = new int[n];
        responses = new double[n][kkt.dimension()];
        step = new double[n];
        trial = new double[asm.rowCount];
        direction = new double[asm.rowCount];
    }

    boolean known() {
        return known;
    }

    void forget() {
        known = false;
    }

    /** Finds B at the present multipliers with the present factor, one solve a sliding row. */
    void sense(State s, double[] factors) {
        for (int f = 0; f < n; f++) {
            double sign = Math.signum(direction(f));
            for (int k = 0; k < n; k++) {
                b[k][f] = 0;
            }
            if (sign != 0) {
                respond(s, f, sign, factors);
            }
        }
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                lu[i][j] = (i == j ? 1 : 0) - b[i][j];
            }
        }
        decompose();
        known = true;
    }

    private double direction(int f) {
        return switch (frictions[f].mode()) {
            case FORCE_PLUS -> 1;
            case FORCE_MINUS -> -1;
            default -> 0;
        };
    }

    /** Column f of B: multipliers' response to a unit of friction, then differences of the laws. */
    private void respond(State s, int f, double sign, double[] factors) {
        double[] x = responses[f];
        Arrays.fill(x, 0);
        int row = frictions[f].rowAt();
        BlockTable t = asm.table;
        int block = t.block[row];
        for (int k = t.first[block]; k < t.first[block + 1]; k++) {
            int body = t.body[k];
            for (int c = 0; body > 0 && c < 6; c++) {
                x[6 * body - 6 + c] += sign * asm.g[t.at[k] + c];
            }
        }
        kkt.solve(s, x);
        double most = 0;
        for (int i = 0; i < asm.rowCount; i++) {
            direction[i] = asm.engaged[i] ? -x[kkt.rowPlace(i)] : 0;
            most = Math.max(most, Math.abs(direction[i]));
        }
        direction[row] = sign;
        double eps = 1e-5 * Math.max(asm.largestLoad(), 1e-3) / Math.max(most, 1e-12);
        for (int k = 0; k < n; k++) {
            if (direction(k) != 0 && frictions[k].law().source() != null) {
                b[k][f] = factors[k] * (law(k, eps) - law(k, -eps)) / (2 * eps);
            }
        }
    }

    private double law(int k, double eps) {
        Rows source = frictions[k].law().source();
        double[] lambda = asm.lambda;
        for (int i = source.rowAt(); i < source.rowAt() + source.size(); i++) {
            trial[i] = lambda[i] + eps * direction[i];
        }
        return frictions[k].law().bound(trial);
    }

    /** Newton step of the bounds for gaps law - b; the result stays in place. */
    double[] correct(double[] gap) {
        for (int i = 0; i < n; i++) {
            step[i] = gap[order[i]];
        }
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < i; j++) {
                step[i] -= lu[i][j] * step[j];
            }
        }
        for (int i = n - 1; i >= 0; i--) {
            for (int j = i + 1; j < n; j++) {
                step[i] -= lu[i][j] * step[j];
            }
            step[i] /= lu[i][i];
        }
        return step;
    }

    /** Adds to a solution of the system what a change {@code step} of the bounds does. */
    void respond(double[] change, double[] x) {
        for (int f = 0; f < n; f++) {
            double d = change[f];
            if (d != 0) {
                double[] r = responses[f];
                for (int i = 0; i < r.length; i++) {
                    x[i] += d * r[i];
                }
            }
        }
    }

    /** LU with row exchanges, rows kept in {@link #order}. */
    private void decompose() {
        for (int i = 0; i < n; i++) {
            order[i] = i;
        }
        for (int k = 0; k < n; k++) {
            int p = k;
            for (int i = k + 1; i < n; i++) {
                p = Math.abs(lu[i][k]) > Math.abs(lu[p][k]) ? i : p;
            }
            double[] row = lu[k];
            lu[k] = lu[p];
            lu[p] = row;
            int o = order[k];
            order[k] = order[p];
            order[p] = o;
            for (int i = k + 1; i < n; i++) {
                double m = lu[i][k] / lu[k][k];
                lu[i][k] = m;
                for (int j = k + 1; j < n; j++) {
                    lu[i][j] -= m * lu[k][j];
                }
            }
        }
    }

    /**
     * Eigenvalue of B with the largest real part, not below 0: at 1 the mechanism locks. Power
     * iteration on B + shift I, whose dominant eigenvalue is that one plus the shift; by repeated
     * squaring, since the second eigenvalue is often close.
     *
     * @param shares receives the shares of the friction rows in the loop that feeds itself
     */
    double amplification(double[] shares) {
        double shift = 0.5 * norm();
        if (shift == 0) {
            return 0;
        }
        double[][] power = shifted(shift);
        for (int k = 0; k < SQUARINGS; k++) {
            power = squared(power);
        }
        double[] v = new double[n];
        for (int i = 0; i < n; i++) {
            v[i] = 1 + 0.01 * i;
        }
        double value = 0;
        for (int round = 0; round < ROUNDS; round++) {
            v = unit(times(power, v));
            double next = dot(v, times(b, v)) / dot(v, v);
            if (Math.abs(next - value) < 1e-12 * shift) {
                break;
            }
            value = next;
        }
        for (int i = 0; i < n; i++) {
            shares[i] = Math.abs(v[i]);
        }
        return Math.max(0, value);
    }

    private double[][] shifted(double shift) {
        double[][] out = new double[n][];
        for (int i = 0; i < n; i++) {
            out[i] = b[i].clone();
            out[i][i] += shift;
        }
        return out;
    }

    /** The square, divided by its largest entry so that it stays in range. */
    private double[][] squared(double[][] m) {
        double[][] out = new double[n][n];
        double most = 0;
        for (int i = 0; i < n; i++) {
            double[] row = out[i];
            for (int k = 0; k < n; k++) {
                double f = m[i][k];
                double[] other = m[k];
                for (int j = 0; j < n && f != 0; j++) {
                    row[j] += f * other[j];
                }
            }
            for (double e : row) {
                most = Math.max(most, Math.abs(e));
            }
        }
        for (double[] row : out) {
            for (int j = 0; j < n && most > 0; j++) {
                row[j] /= most;
            }
        }
        return out;
    }

    private static double[] times(double[][] m, double[] v) {
        double[] w = new double[v.length];
        for (int i = 0; i < v.length; i++) {
            w[i] = dot(m[i], v);
        }
        return w;
    }

    private static double dot(double[] x, double[] y) {
        double sum = 0;
        for (int i = 0; i < x.length; i++) {
            sum += x[i] * y[i];
        }
        return sum;
    }

    /** Scaled to a sum of sizes of one; unchanged if it is zero. */
    private static double[] unit(double[] v) {
        double size = 0;
        for (double e : v) {
            size += Math.abs(e);
        }
        for (int i = 0; i < v.length && size > 0; i++) {
            v[i] /= size;
        }
        return v;
    }

    /** Largest row sum of B. */
    private double norm() {
        double most = 0;
        for (double[] row : b) {
            double sum = 0;
            for (double e : row) {
                sum += Math.abs(e);
            }
            most = Math.max(most, sum);
        }
        return most;
    }
}
