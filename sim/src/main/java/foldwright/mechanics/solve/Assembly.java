// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.solve;

import foldwright.mechanics.Mechanism;
import foldwright.mechanics.body.Body;
import foldwright.mechanics.body.Inertia;
import foldwright.mechanics.body.State;
import foldwright.mechanics.body.Vec3;
import foldwright.mechanics.force.Force;
import foldwright.mechanics.joint.Driver;
import foldwright.mechanics.joint.Friction;
import foldwright.mechanics.joint.PairJoint;
import foldwright.mechanics.joint.PairTable;
import foldwright.mechanics.joint.Reaction;
import foldwright.mechanics.joint.Rows;
import foldwright.mechanics.joint.ScalarRow;
import foldwright.mechanics.joint.Stop;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Rows, Jacobians, loads and residuals of a mechanism at one state, in arrays that all solvers
 * share.
 *
 * <p>Residual of a body: M v' + gyroscopic - load - G' lambda; of a row: phi + c lambda + d
 * dphi/dt.
 */
final class Assembly {
    /** Numbers in the largest Jacobian of one body. */
    private static final int BASE = 36;

    final Mechanism mechanism;
    final int bodies;
    final int rowCount;
    final Rows[] rows;

    /** Where they stand. */
    final BlockTable table;

    final Force[] forces;
    final Friction[] frictions;
    final Stop[] stops;
    final Driver[] drivers;

    /** Whether a row is part of the system; the others hold their multiplier. */
    final boolean[] engaged;

    /** Row values, Jacobians and multipliers. */
    final double[] phi;

    /** Jacobians, at the places of the table. */
    double[] g;

    final double[] lambda;

    /** Applied loads [N base, N m body], 6 a body; {@link #residual} adds the reactions. */
    final double[] load;

    /** Compliance and damping of every row. */
    final double[] c;

    final double[] d;

    /** Rows with damping. */
    int[] damped = new int[0];

    private final ScalarRow[] scalars;
    private final int[] scalarBlocks;
    private final int[] everyBlock;
    private PairTable pairs;
    private boolean shared;
    private final double[] mass;
    private final double[] inertia;
    private final double[] reach;
    private final Vec3 gravity;
    private final double meanMass;

    Assembly(Mechanism m) {
        mechanism = m;
        bodies = m.bodies().size();
        rows = m.rows().toArray(new Rows[0]);
        forces = m.forces().toArray(new Force[0]);
        frictions = pick(Friction.class).toArray(new Friction[0]);
        stops = pick(Stop.class).toArray(new Stop[0]);
        drivers = pick(Driver.class).toArray(new Driver[0]);
        scalars = pick(ScalarRow.class).toArray(new ScalarRow[0]);
        scalarBlocks = blocks(ScalarRow.class);
        everyBlock = blocks(Rows.class);
        rowCount = m.rowCount();
        table = new BlockTable(rows, rowCount);
        listPairs();
        engaged = new boolean[rowCount];
        Arrays.fill(engaged, true);
        phi = new double[rowCount];
        g = new double[table.entries()];
        lambda = new double[rowCount];
        load = new double[6 * bodies];
        c = new double[rowCount];
        d = new double[rowCount];
        mass = new double[bodies];
        inertia = new double[9 * bodies];
        reach = new double[bodies];
        gravity = m.gravity();
        weigh(m);
        meanMass = meanOf(mass);
        refreshSettings();
    }

    /** Mean mass of the bodies but the base [kg]; 1 if there are none. */
    private static double meanOf(double[] mass) {
        double sum = 0;
        for (int i = 1; i < mass.length; i++) {
            sum += mass[i];
        }
        return mass.length > 1 ? sum / (mass.length - 1) : 1;
    }

    private <T> List<T> pick(Class<T> kind) {
        List<T> out = new ArrayList<>();
        for (Rows r : rows) {
            if (kind.isInstance(r)) {
                out.add(kind.cast(r));
            }
        }
        return out;
    }

    private int[] blocks(Class<? extends Rows> kind) {
        int[] out = new int[rows.length];
        int n = 0;
        for (int r = 0; r < rows.length; r++) {
            if (kind.isInstance(rows[r])) {
                out[n++] = r;
            }
        }
        return Arrays.copyOf(out, n);
    }

    /** Pair joints in the order of their Jacobians, so that evaluation writes one stream. */
    private void listPairs() {
        int[] order = blocks(PairJoint.class);
        int[] keys = new int[order.length];
        for (int k = 0; k < keys.length; k++) {
            keys[k] = table.at[table.first[order[k]] + 1];
        }
        BlockTable.sort(order, keys);
        List<PairJoint> joints = new ArrayList<>();
        int[] places = new int[2 * order.length];
        for (int r : order) {
            places[2 * joints.size()] = table.at[table.first[r]];
            places[2 * joints.size() + 1] = table.at[table.first[r] + 1];
            joints.add((PairJoint) rows[r]);
        }
        pairs = new PairTable(joints, places);
    }

    /** Whether Jacobians are written into a system's values. */
    boolean shared() {
        return shared;
    }

    /** Numbers that {@link #share} needs behind the values of a system. */
    int room() {
        int sum = BASE;
        for (int r : scalarBlocks) {
            sum += 6 * (table.first[r + 1] - table.first[r]);
        }
        return sum;
    }

    /**
     * From now on Jacobians are written straight into the values of a system, at {@code places} (as
     * the table lists them, -1 for the base), and need no copying. Those of rows that may leave the
     * system stand in the room behind the values, from {@code free} on; so do those of the base,
     * which nobody reads, one over the other.
     */
    void share(double[] values, int[] places, int free) {
        g = values;
        shared = true;
        for (int k = 0; k < places.length; k++) {
            table.at[k] = places[k] < 0 ? free : places[k];
        }
        int next = free + BASE;
        for (int r : scalarBlocks) {
            for (int k = table.first[r]; k < table.first[r + 1]; k++) {
                table.at[k] = next;
                next += 6;
            }
        }
        listPairs();
    }

    private void weigh(Mechanism m) {
        for (Body b : m.bodies()) {
            int i = b.index();
            mass[i] = b.mass().mass();
            Inertia j = b.mass().inertia();
            double[] t = {j.xx(), j.xy(), j.xz(), j.xy(), j.yy(), j.yz(), j.xz(), j.yz(), j.zz()};
            System.arraycopy(t, 0, inertia, 9 * i, 9);
            // radius of gyration: an arm for bodies without joints
            reach[i] = Math.max(1e-4, Math.sqrt((j.xx() + j.yy() + j.zz()) / (2 * mass[i])));
        }
        for (Rows r : rows) {
            for (int k = 0; k < r.count(); k++) {
                reach[r.body(k)] = Math.max(reach[r.body(k)], r.reach(k));
            }
        }
    }

    /** Takes over compliances, damping and engagement from the rows. */
    void refreshSettings() {
        for (Rows r : rows) {
            for (int i = 0; i < r.size(); i++) {
                c[r.rowAt() + i] = r.compliance(i);
                d[r.rowAt() + i] = r.damping(i);
            }
        }
        listDamped();
        engage();
    }

    private void listDamped() {
        int n = 0;
        int[] all = new int[rowCount];
        for (int row = 0; row < rowCount; row++) {
            if (d[row] > 0) {
                all[n++] = row;
            }
        }
        damped = Arrays.copyOf(all, n);
    }

    /** Gives stops a damping time of at least two steps [s], which makes impacts plastic. */
    void relaxStops(double step) {
        for (Stop stop : stops) {
            d[stop.rowAt()] = Math.max(d[stop.rowAt()], 2 * step);
        }
        listDamped();
    }

    /** Takes over which rows are part of the system, and the multipliers of the others. */
    void engage() {
        for (ScalarRow r : scalars) {
            int row = r.rowAt();
            engaged[row] = r.engaged();
            if (!engaged[row]) {
                lambda[row] = r.held();
            }
        }
    }

    double mass(int body) {
        return mass[body];
    }

    /** Mass of a body, at least a tenth of the mean [kg]; only to keep statics regular. */
    double evenMass(int body) {
        return Math.max(mass[body], 0.1 * meanMass);
    }

    double[] inertia() {
        return inertia;
    }

    /** Arm that turns an angle of the body into a length [m]. */
    double reach(int body) {
        return reach[body];
    }

    /** Sets the targets of prescribed rows. */
    void clock(double time) {
        for (Driver dr : drivers) {
            dr.at(time);
        }
    }

    /** Rows, Jacobians and applied loads at a state. */
    void evaluate(State s) {
        evaluateLoads(s);
        pairs.evaluate(s, phi, g, 0);
    }

    /** The same with the reactions of the present multipliers added to the loads. */
    void evaluateAndReact(State s) {
        evaluateLoads(s);
        react(scalarBlocks);
        pairs.evaluateAndReact(s, phi, g, lambda, load);
    }

    /** Applied loads, and the rows that belong to coordinates. */
    private void evaluateLoads(State s) {
        for (int k = 0; k < scalars.length; k++) {
            scalars[k].evaluate(s, phi, g, table.at[table.first[scalarBlocks[k]]]);
        }
        Arrays.fill(load, 0);
        for (int i = 1; i < bodies; i++) {
            load[6 * i] = mass[i] * gravity.x();
            load[6 * i + 1] = mass[i] * gravity.y();
            load[6 * i + 2] = mass[i] * gravity.z();
        }
        for (Force f : forces) {
            f.apply(s, load);
        }
    }

    /** Rows that remember something take over an accepted state. */
    void accept(State s) {
        for (ScalarRow r : scalars) {
            r.accept(s, lambda);
        }
    }

    /** Adds G' lambda to {@link #load}. */
    void react() {
        react(everyBlock);
    }

    private void react(int[] blocks) {
        BlockTable t = table;
        for (int r : blocks) {
            for (int k = t.first[r]; k < t.first[r + 1]; k++) {
                if (t.body[k] > 0) {
                    Reaction.add(t.size[r], lambda, t.row[r], g, t.at[k], load, 6 * t.body[k]);
                }
            }
        }
    }

    /**
     * Minus the residuals of the bodies at {@code out[0...]} (6 a body from body 1): load +
     * reactions - M v' - gyroscopic. Call after {@link #evaluate} and {@link #react}.
     */
    void imbalance(State s, double[] out) {
        for (int i = 1; i < bodies; i++) {
            int k = 6 * i;
            int o = k - 6;
            double m = mass[i];
            out[o] = load[k] - m * s.a[k];
            out[o + 1] = load[k + 1] - m * s.a[k + 1];
            out[o + 2] = load[k + 2] - m * s.a[k + 2];
            turnImbalance(s, i, out, o + 3);
        }
    }

    /** M - J a - w x J w in body axes. */
    private void turnImbalance(State s, int i, double[] out, int o) {
        int k = 6 * i + 3;
        int n = 9 * i;
        double wx = s.v[k];
        double wy = s.v[k + 1];
        double wz = s.v[k + 2];
        double ax = s.a[k];
        double ay = s.a[k + 1];
        double az = s.a[k + 2];
        double[] j = inertia;
        double hx = j[n] * wx + j[n + 1] * wy + j[n + 2] * wz;
        double hy = j[n + 3] * wx + j[n + 4] * wy + j[n + 5] * wz;
        double hz = j[n + 6] * wx + j[n + 7] * wy + j[n + 8] * wz;
        out[o] = load[k] - j[n] * ax - j[n + 1] * ay - j[n + 2] * az - wy * hz + wz * hy;
        out[o + 1] =
                load[k + 1] - j[n + 3] * ax - j[n + 4] * ay - j[n + 5] * az - wz * hx + wx * hz;
        out[o + 2] =
                load[k + 2] - j[n + 6] * ax - j[n + 7] * ay - j[n + 8] * az - wx * hy + wy * hx;
    }

    /** M u for displacements from body 1 on. */
    void massTimes(double[] u, double[] out) {
        for (int i = 1; i < bodies; i++) {
            int k = 6 * i - 6;
            int n = 9 * i;
            for (int c = 0; c < 3; c++) {
                out[k + c] = mass[i] * u[k + c];
                out[k + 3 + c] =
                        inertia[n + 3 * c] * u[k + 3]
                                + inertia[n + 3 * c + 1] * u[k + 4]
                                + inertia[n + 3 * c + 2] * u[k + 5];
            }
        }
    }

    /** u' M w for displacements from body 1 on. */
    double massProduct(double[] u, double[] w) {
        double[] mw = new double[6 * bodies - 6];
        massTimes(w, mw);
        double sum = 0;
        for (int i = 0; i < mw.length; i++) {
            sum += u[i] * mw[i];
        }
        return sum;
    }

    /** Largest multiplier [N, N m]. */
    double largestLoad() {
        double most = 0;
        for (int i = 0; i < rowCount; i++) {
            most = Math.max(most, Math.abs(lambda[i]));
        }
        return most;
    }

    /** Rate of a row, from velocities, or what belongs to other motions [m/s or rad/s]. */
    double rate(int row, double[] v) {
        BlockTable t = table;
        int r = t.block[row];
        int within = 6 * (row - t.row[r]);
        double sum = 0;
        for (int k = t.first[r]; k < t.first[r + 1]; k++) {
            int b = 6 * t.body[k];
            int at = t.at[k] + within;
            for (int n = 0; n < 6 && b > 0; n++) {
                sum += g[at + n] * v[b + n];
            }
        }
        return sum;
    }

    /** Linearised change of a row by a solution of the system (6 a body from body 1). */
    double change(int row, double[] x) {
        BlockTable t = table;
        int r = t.block[row];
        int within = 6 * (row - t.row[r]);
        double sum = 0;
        for (int k = t.first[r]; k < t.first[r + 1]; k++) {
            int b = 6 * t.body[k] - 6;
            int at = t.at[k] + within;
            for (int n = 0; n < 6 && b >= 0; n++) {
                sum += g[at + n] * x[b + n];
            }
        }
        return sum;
    }
}
