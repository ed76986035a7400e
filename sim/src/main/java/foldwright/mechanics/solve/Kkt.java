// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.solve;

import foldwright.mechanics.body.State;
import foldwright.mechanics.force.Force;
import foldwright.mechanics.joint.Rows;
import foldwright.mechanics.joint.ScalarRow;
import foldwright.mechanics.joint.Stiffness;
import foldwright.mechanics.sparse.BlockLdl;
import foldwright.mechanics.sparse.BlockPattern;
import java.util.Arrays;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * The system [S G'; G -C] of an assembly: fills, factorises and solves it.
 *
 * <p>S = mass M + stiffness K + damping D. Unknowns: body displacements (6 a body from body 1),
 * then minus the increments of the multipliers.
 */
final class Kkt implements Stiffness {
    /** Whether the change of geometry under load is part of S. */
    enum Geometry {
        /** Inertia and force laws only: less fill, enough for short steps. */
        PLAIN,
        /** With geometric stiffness, which couples the bodies of every joint. */
        LOADED
    }

    /** Pseudo-stiffness of the masses, which keeps free directions of balances regular [1/s2]. */
    static final double SIGMA = 10;

    private final Assembly asm;
    private final Geometry geometry;
    private final BlockLdl ldl;
    private final double[] values;
    private final int bodies;
    private final int[] diagonal;

    /** Coupled bodies a > b as sorted keys a n + b, and where their blocks stand in the values. */
    private final long[] pairKeys;

    private final int[] pairPlaces;

    /** Places of the diagonals of the row blocks, and of their couplings, -1 for the base. */
    private final int[] rowDiagonal;

    private final int[] coupling;

    /** Row blocks in the order of their places, so that filling writes one stream. */
    private final int[] order;

    /** Row blocks whose Jacobians the assembly does not write here itself. */
    private final int[] copied;

    /** Bodies whose blocks take tangents of forces or geometric stiffness. */
    private final int[] loaded;

    /** Whether a body's block is full; otherwise it has mass alone: three numbers and a tensor. */
    private final boolean[] full;

    private final double[] work;

    /** Attitudes in whose axes a kept factor takes turns. */
    private final double[] axes;

    private boolean kept;

    Kkt(Assembly asm, Geometry geometry) {
        this.asm = asm;
        this.geometry = geometry;
        bodies = asm.bodies;
        loaded = loadedBodies();
        full = new boolean[bodies];
        BlockPattern p = new BlockPattern();
        for (int i : loaded) {
            full[i] = true;
        }
        for (int i = 1; i < bodies; i++) {
            if (full[i]) {
                p.addBody(6);
            } else {
                p.addBody(1, 1, 1, 3);
            }
        }
        BlockTable t = asm.table;
        int[] block = new int[t.count];
        for (int r = 0; r < t.count; r++) {
            block[r] = p.addJoint(ones(t.size[r]));
            for (int k = t.first[r]; k < t.first[r + 1]; k++) {
                if (t.body[k] > 0) {
                    p.couple(block[r], t.body[k] - 1);
                }
            }
        }
        SortedSet<Long> pairs = pairs();
        for (long key : pairs) {
            p.couple((int) (key / bodies) - 1, (int) (key % bodies) - 1);
        }
        ldl = BlockLdl.analyse(p, asm.room());
        values = ldl.values();
        diagonal = new int[bodies];
        for (int i = 1; i < bodies; i++) {
            diagonal[i] = ldl.diagonal(i - 1);
        }
        pairKeys = new long[pairs.size()];
        pairPlaces = new int[pairKeys.length];
        int next = 0;
        for (long key : pairs) {
            pairKeys[next++] = key;
        }
        for (int k = 0; k < pairKeys.length; k++) {
            int a = (int) (pairKeys[k] / bodies);
            int b = (int) (pairKeys[k] % bodies);
            pairPlaces[k] = ldl.coupling(a - 1, b - 1);
        }
        rowDiagonal = new int[t.count];
        coupling = new int[t.body.length];
        for (int r = 0; r < t.count; r++) {
            rowDiagonal[r] = ldl.diagonal(block[r]);
            for (int k = t.first[r]; k < t.first[r + 1]; k++) {
                coupling[k] = t.body[k] == 0 ? -1 : ldl.coupling(block[r], t.body[k] - 1);
            }
        }
        order = all(t.count);
        BlockTable.sort(order, rowDiagonal);
        if (!asm.shared()) {
            asm.share(values, coupling, values.length - asm.room());
        }
        copied = copied();
        work = new double[ldl.dimension()];
        axes = new double[9 * bodies];
    }

    private static int[] all(int count) {
        int[] out = new int[count];
        for (int i = 0; i < count; i++) {
            out[i] = i;
        }
        return out;
    }

    private int[] copied() {
        int[] out = new int[asm.rows.length];
        int n = 0;
        for (int r = 0; r < out.length; r++) {
            if (asm.g != values || asm.rows[r] instanceof ScalarRow) {
                out[n++] = r;
            }
        }
        return Arrays.copyOf(out, n);
    }

    private static int[] ones(int n) {
        int[] out = new int[n];
        Arrays.fill(out, 1);
        return out;
    }

    private SortedSet<Long> pairs() {
        SortedSet<Long> pairs = new TreeSet<>();
        for (Force f : asm.forces) {
            addPairs(pairs, f.bodies());
        }
        if (geometry == Geometry.LOADED) {
            for (Rows r : asm.rows) {
                int[] list = new int[r.count()];
                for (int k = 0; k < list.length; k++) {
                    list[k] = r.body(k);
                }
                addPairs(pairs, list);
            }
        }
        return pairs;
    }

    private int[] loadedBodies() {
        boolean[] loads = new boolean[bodies];
        Arrays.fill(loads, geometry == Geometry.LOADED);
        for (Force f : asm.forces) {
            for (int b : f.bodies()) {
                loads[b] = true;
            }
        }
        int[] out = new int[bodies];
        int n = 0;
        for (int b = 1; b < bodies; b++) {
            if (loads[b]) {
                out[n++] = b;
            }
        }
        return Arrays.copyOf(out, n);
    }

    private void addPairs(SortedSet<Long> pairs, int[] list) {
        for (int a : list) {
            for (int b : list) {
                if (a > b && b > 0) {
                    pairs.add((long) a * bodies + b);
                }
            }
        }
    }

    private int pair(int a, int b) {
        return pairPlaces[Arrays.binarySearch(pairKeys, (long) a * bodies + b)];
    }

    /** Number of unknowns. */
    int dimension() {
        return work.length;
    }

    /** Place of a row's unknown. */
    int rowPlace(int row) {
        return 6 * (bodies - 1) + row;
    }

    /** Vector that {@link #solve} works on: right-hand side in, solution out. */
    double[] vector() {
        return work;
    }

    double health() {
        return ldl.smallestPivotRatio();
    }

    /**
     * Fills the system at the last evaluated state.
     *
     * @param mass factor of M
     * @param stiffness factor of K
     * @param damping factor of D
     * @param rowRate d/dz of a row's rate: damped rows are divided by 1 + d rowRate
     */
    void fill(State s, double mass, double stiffness, double damping, double rowRate) {
        clearLoaded();
        fillMass(mass);
        fillTangents(s, stiffness, damping);
        fillRows(rowRate);
    }

    /**
     * Fills the system of statics: tangents, and sigma [1/s2] times masses that are evened out, so
     * that a nearly massless body does not spoil the elimination.
     */
    void fillStatic(State s, double sigma) {
        clearLoaded();
        for (int i = 1; i < bodies; i++) {
            double m = sigma * asm.evenMass(i);
            double j = m * asm.reach(i) * asm.reach(i);
            int at = diagonal[i];
            int step = full[i] ? 7 : 1;
            int turn = at + 3 * step;
            int next = full[i] ? 7 : 4;
            if (!full[i]) {
                Arrays.fill(values, turn, turn + 9, 0);
            }
            for (int k = 0; k < 3; k++) {
                values[at + k * step] = m;
                values[turn + k * next] = j;
            }
        }
        fillTangents(s, 1, 0);
        fillRows(0);
    }

    /** Blocks that forces add to are summed up; all others are written whole. */
    private void clearLoaded() {
        for (int i : loaded) {
            Arrays.fill(values, diagonal[i], diagonal[i] + 36, 0);
        }
        for (int at : pairPlaces) {
            Arrays.fill(values, at, at + 36, 0);
        }
    }

    private void fillTangents(State s, double stiffness, double damping) {
        if (stiffness != 0 || damping != 0) {
            for (Force f : asm.forces) {
                f.tangent(s, stiffness, damping, this);
            }
        }
        if (geometry == Geometry.LOADED && stiffness != 0) {
            for (Force f : asm.forces) {
                f.geometric(s, stiffness, this);
            }
            for (Rows r : asm.rows) {
                r.geometric(s, asm.lambda, this);
            }
        }
    }

    private void fillMass(double f) {
        double[] j = asm.inertia();
        for (int i = 1; i < bodies; i++) {
            int at = diagonal[i];
            int step = full[i] ? 7 : 1;
            double m = f * asm.mass(i);
            values[at] = m;
            values[at + step] = m;
            values[at + 2 * step] = m;
            int turn = at + 3 * step;
            int row = full[i] ? 6 : 3;
            for (int r = 0; r < 3; r++) {
                for (int k = 0; k < 3; k++) {
                    values[turn + row * r + k] = f * j[9 * i + 3 * r + k];
                }
            }
        }
    }

    private void fillRows(double rowRate) {
        BlockTable t = asm.table;
        for (int r : order) {
            int size = t.size[r];
            int row = t.row[r];
            int at = rowDiagonal[r];
            if (asm.engaged[row]) {
                for (int i = 0; i < size; i++) {
                    double d = asm.d[row + i];
                    values[at + i] = d == 0 ? -asm.c[row + i] : -asm.c[row + i] / (1 + d * rowRate);
                }
            } else {
                Arrays.fill(values, at, at + size, -1);
            }
        }
        for (int r : copied) {
            copyJacobians(r);
        }
    }

    private void copyJacobians(int r) {
        BlockTable t = asm.table;
        int length = 6 * t.size[r];
        for (int k = t.first[r]; k < t.first[r + 1]; k++) {
            if (coupling[k] < 0) {
                continue;
            }
            if (asm.engaged[t.row[r]]) {
                System.arraycopy(asm.g, t.at[k], values, coupling[k], length);
            } else {
                Arrays.fill(values, coupling[k], coupling[k] + length, 0);
            }
        }
    }

    /** Same compliance on every engaged row, for systems at velocity or acceleration level. */
    void regularise(double compliance) {
        BlockTable t = asm.table;
        for (int r = 0; r < t.count; r++) {
            int size = t.size[r];
            for (int i = 0; i < size && asm.engaged[t.row[r]]; i++) {
                values[rowDiagonal[r] + i] = -compliance;
            }
        }
    }

    @Override
    public void add(int a, int b, double[] block) {
        if (a == 0 || b == 0) {
            return;
        }
        if (a == b) {
            addDiagonal(diagonal[a], block);
        } else if (a > b) {
            int at = pair(a, b);
            for (int i = 0; i < 36; i++) {
                values[at + i] += block[i];
            }
        } else {
            int at = pair(b, a);
            for (int i = 0; i < 6; i++) {
                for (int j = 0; j < 6; j++) {
                    values[at + 6 * j + i] += block[6 * i + j];
                }
            }
        }
    }

    private void addDiagonal(int at, double[] block) {
        for (int i = 0; i < 6; i++) {
            for (int j = 0; j < 6; j++) {
                values[at + 6 * i + j] += 0.5 * (block[6 * i + j] + block[6 * j + i]);
            }
        }
    }

    void factor() {
        ldl.factor();
        kept = false;
    }

    /** Factorises and solves in place at the state of the last filling. */
    void factorAndSolve(double[] x) {
        ldl.factorAndSolve(x);
        kept = false;
    }

    /**
     * The factor found at this state's attitudes will serve others. It goes on taking turns of the
     * bodies in the axes they had then: a rotor that spins between bearings looks the same from
     * there for ever, while in its own axes the bearings run round it.
     */
    void keep(State s) {
        System.arraycopy(s.r, 0, axes, 0, axes.length);
        kept = true;
    }

    /** Solves in place on a vector of the caller. */
    void solve(double[] x) {
        ldl.solve(x);
    }

    /** Solves in place on {@link #vector}. */
    void solve() {
        ldl.solve(work);
    }

    /** Solves in place at a state, whose attitudes may differ from those of a kept factor. */
    void solve(State s, double[] x) {
        if (kept) {
            turn(s.r, axes, x);
        }
        ldl.solve(x);
        if (kept) {
            turn(axes, s.r, x);
        }
    }

    /**
     * Turn components of a vector from body axes of attitudes {@code a} into those of {@code b}.
     */
    private void turn(double[] a, double[] b, double[] x) {
        for (int i = 1; i < bodies; i++) {
            int k = 9 * i;
            int at = 6 * i - 3;
            double u = x[at];
            double v = x[at + 1];
            double w = x[at + 2];
            double p = a[k] * u + a[k + 1] * v + a[k + 2] * w;
            double q = a[k + 3] * u + a[k + 4] * v + a[k + 5] * w;
            double r = a[k + 6] * u + a[k + 7] * v + a[k + 8] * w;
            x[at] = b[k] * p + b[k + 3] * q + b[k + 6] * r;
            x[at + 1] = b[k + 1] * p + b[k + 4] * q + b[k + 7] * r;
            x[at + 2] = b[k + 2] * p + b[k + 5] * q + b[k + 8] * r;
        }
    }
}
