// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.solve;

import foldwright.mechanics.Mechanism;
import foldwright.mechanics.body.Marker;
import foldwright.mechanics.body.Rotation;
import foldwright.mechanics.body.State;
import foldwright.mechanics.body.Vec3;
import foldwright.mechanics.joint.Friction;
import foldwright.mechanics.joint.Stop;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;

/**
 * Small motion about an equilibrium: stiffness of laws, of joints (their compliance), of stuck
 * friction, and of geometry under load. Sliding friction, open stops and dampers take no part.
 */
public final class Linearisation {
    /**
     * First eigenvalue shift of the mode search [1/s2], which makes free motion regular; raised a
     * hundredfold while the factorisation, which does not pivot, meets a zero.
     */
    private static final double FIRST_SHIFT = 1;

    /** Vectors beyond those asked for. */
    private static final int SPARE = 6;

    /** Modes more than 1/sqrt of this faster than the slowest are rounding, and left out. */
    private static final double VANISHED = 1e-7;

    private static final int MOST_ROUNDS = 300;
    private static final int MOST_SWEEPS = 400;
    private final Assembly asm;
    private final Kkt kkt;
    private final State state;
    private double shift;

    /** Takes the pose, loads and contact states of an equilibrium; friction as it is set now. */
    public Linearisation(Mechanism mechanism, Equilibrium at) {
        asm = new Assembly(mechanism);
        kkt = new Kkt(asm, Kkt.Geometry.LOADED);
        state = at.state();
        state.rest();
        asm.clock(state.time);
        System.arraycopy(at.multipliers(), 0, asm.lambda, 0, asm.rowCount);
        for (Stop stop : asm.stops) {
            stop.restore(asm.lambda[stop.rowAt()] > 0);
        }
        asm.engage();
        asm.evaluate(state);
    }

    /** Friction rows hold: they count as springs of their bristle stiffness. */
    public Linearisation withStuckFriction() {
        for (Friction f : asm.frictions) {
            f.mode(Friction.Mode.STICK);
        }
        asm.engage();
        return this;
    }

    /**
     * Compliance seen at a point: displacement [m] and turn [rad] of the point in the base frame
     * (rows) per unit force [N] and moment [N m] on it (columns), x, y, z each.
     */
    public double[][] compliance(Marker at) {
        if (at.body().isBase()) {
            return new double[6][6];
        }
        kkt.fillStatic(state, Kkt.SIGMA);
        kkt.factor();
        double[][] loads = new double[6][];
        for (int j = 0; j < 6; j++) {
            loads[j] = unitLoad(at, j);
        }
        double[][] c = new double[6][6];
        for (int j = 0; j < 6; j++) {
            double[] x = refine(loads[j]);
            for (int i = 0; i < 6; i++) {
                for (int k = 0; k < 6 * (asm.bodies - 1); k++) {
                    c[i][j] += loads[i][k] * x[k];
                }
            }
        }
        return c;
    }

    /**
     * Right-hand side for unit {@code j} (force x, y, z, moment x, y, z; base frame) at a marker.
     */
    private double[] unitLoad(Marker at, int j) {
        Vec3 e = new Vec3(j % 3 == 0 ? 1 : 0, j % 3 == 1 ? 1 : 0, j % 3 == 2 ? 1 : 0);
        Rotation turn = state.pose(at.body()).attitude();
        Vec3 f = j < 3 ? e : Vec3.ZERO;
        Vec3 m = turn.inverse().apply(j < 3 ? turn.apply(at.arm()).cross(e) : e);
        double[] load = {f.x(), f.y(), f.z(), m.x(), m.y(), m.z()};
        double[] all = new double[kkt.dimension()];
        System.arraycopy(load, 0, all, 6 * at.body().index() - 6, 6);
        return all;
    }

    /** Solves without the added SIGMA M: x = (K + SIGMA M)^-1 (load + SIGMA M x), repeated. */
    private double[] refine(double[] load) {
        double[] x = new double[load.length];
        for (int sweep = 0; sweep < MOST_SWEEPS; sweep++) {
            double[] next = load.clone();
            for (int i = 1; i < asm.bodies; i++) {
                double m = Kkt.SIGMA * asm.evenMass(i);
                double j = m * asm.reach(i) * asm.reach(i);
                for (int k = 0; k < 6; k++) {
                    next[6 * i - 6 + k] += (k < 3 ? m : j) * x[6 * i - 6 + k];
                }
            }
            kkt.solve(next);
            double change = 0;
            double size = 0;
            for (int k = 0; k < 6 * (asm.bodies - 1); k++) {
                change = Math.max(change, Math.abs(next[k] - x[k]));
                size = Math.max(size, Math.abs(next[k]));
            }
            x = next;
            if (change <= 1e-13 * size) {
                break;
            }
        }
        return x;
    }

    /**
     * The {@code count} slowest modes, or all if there are fewer, slowest first (unstable ones
     * before all); subspace iteration with the sparse factor.
     */
    public List<Mode> modes(int count) {
        int n = 6 * (asm.bodies - 1);
        factorShifted(n);
        List<double[]> space = startSpace(Math.min(n, count + SPARE), n);
        double[] values = new double[0];
        for (int round = 0; round < MOST_ROUNDS; round++) {
            List<double[]> next = new ArrayList<>();
            for (double[] u : space) {
                double[] rhs = new double[kkt.dimension()];
                asm.massTimes(u, rhs);
                kkt.solve(rhs);
                next.add(Arrays.copyOf(rhs, n));
            }
            double[] before = values;
            values = ritz(space, next);
            if (settled(before, values, count)) {
                break;
            }
        }
        return report(space, values, count);
    }

    private void factorShifted(int n) {
        shift = FIRST_SHIFT / 100;
        double size;
        do {
            shift *= 100;
            kkt.fill(state, shift, 1, 0, 0);
            kkt.factor();
            double[] rhs = new double[kkt.dimension()];
            asm.massTimes(startSpace(1, n).get(0), rhs);
            kkt.solve(rhs);
            size = Arrays.stream(rhs).map(Math::abs).sum();
        } while (!(size < 1e12) && shift < 1e12);
    }

    private List<double[]> startSpace(int size, int n) {
        Random random = new Random(1);
        List<double[]> space = new ArrayList<>();
        for (int k = 0; k < size; k++) {
            double[] u = new double[n];
            for (int i = 0; i < n; i++) {
                u[i] = random.nextDouble() - 0.5;
            }
            space.add(u);
        }
        return space;
    }

    /**
     * Rayleigh-Ritz on the span of {@code next}: replaces {@code space} by its best vectors,
     * returns their eigenvalues omega2, slowest first.
     */
    private double[] ritz(List<double[]> space, List<double[]> next) {
        List<double[]> basis = orthonormal(next);
        int p = basis.size();
        int n = basis.get(0).length;
        Array2DRowRealMatrix h = new Array2DRowRealMatrix(p, p);
        for (int j = 0; j < p; j++) {
            double[] rhs = new double[kkt.dimension()];
            asm.massTimes(basis.get(j), rhs);
            kkt.solve(rhs);
            for (int i = 0; i < p; i++) {
                h.setEntry(i, j, asm.massProduct(basis.get(i), rhs));
            }
        }
        EigenDecomposition eigen = new EigenDecomposition(h.add(h.transpose()).scalarMultiply(0.5));
        Integer[] order = new Integer[p];
        Arrays.setAll(order, i -> i);
        double[] omega2 = new double[p];
        Arrays.setAll(omega2, i -> 1 / eigen.getRealEigenvalue(i) - shift);
        Arrays.sort(order, (i, j) -> Double.compare(omega2[i], omega2[j]));
        space.clear();
        double[] sorted = new double[p];
        for (int k = 0; k < p; k++) {
            double[] u = new double[n];
            for (int i = 0; i < p; i++) {
                double y = eigen.getEigenvector(order[k]).getEntry(i);
                for (int c = 0; c < n; c++) {
                    u[c] += y * basis.get(i)[c];
                }
            }
            space.add(u);
            sorted[k] = omega2[order[k]];
        }
        return sorted;
    }

    /** Gram-Schmidt twice in the inner product of the mass matrix; what has vanished is dropped. */
    private List<double[]> orthonormal(List<double[]> vectors) {
        List<double[]> basis = new ArrayList<>();
        double first = 0;
        for (double[] u : vectors) {
            first = Math.max(first, Math.sqrt(asm.massProduct(u, u)));
        }
        for (double[] u : vectors) {
            for (int pass = 0; pass < 2; pass++) {
                for (double[] b : basis) {
                    double f = asm.massProduct(b, u);
                    for (int i = 0; i < u.length; i++) {
                        u[i] -= f * b[i];
                    }
                }
            }
            double size = Math.sqrt(asm.massProduct(u, u));
            if (size > VANISHED * first) {
                for (int i = 0; i < u.length; i++) {
                    u[i] /= size;
                }
                basis.add(u);
            }
        }
        return basis;
    }

    private boolean settled(double[] before, double[] now, int count) {
        int n = Math.min(count, Math.min(before.length, now.length));
        boolean same = before.length > 0;
        for (int i = 0; i < n; i++) {
            same &= Math.abs(now[i] - before[i]) <= 1e-11 * (Math.abs(now[i]) + shift);
        }
        return same;
    }

    private static List<Mode> report(List<double[]> space, double[] values, int count) {
        List<Mode> modes = new ArrayList<>();
        for (int k = 0; k < Math.min(count, values.length); k++) {
            List<Double> shape = new ArrayList<>();
            for (double u : space.get(k)) {
                shape.add(u);
            }
            modes.add(new Mode(values[k], shape));
        }
        return modes;
    }
}
