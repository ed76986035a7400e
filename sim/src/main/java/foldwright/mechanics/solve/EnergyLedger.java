// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.solve;

import foldwright.mechanics.body.State;
import foldwright.mechanics.body.Vec3;
import foldwright.mechanics.force.Force;
import foldwright.mechanics.joint.Driver;
import foldwright.mechanics.joint.Friction;
import foldwright.mechanics.joint.ScalarRow;
import foldwright.mechanics.joint.Stop;

/**
 * Where the energy of a run went since its start [J].
 *
 * <pre>
 * work = change of (kinetic + height + springs + joints) + friction + damping + numerical + closing
 * </pre>
 *
 * Work of drivers and of laws without stored energy is input. Numerical damping is the work that
 * the difference formulas of the integrator take: half the sum of inertia loads at both ends of a
 * step times its displacement, minus the change of kinetic energy. All others are found from the
 * forces themselves, so the closing error is a real check: it holds the error of the trapezoids and
 * anything that a law says wrong about itself.
 */
public final class EnergyLedger {
    private final Assembly asm;
    private final double[] inertia;
    private final double[] before;
    private final double[] driverAt;
    private final double[] driverForce;
    private final double[] damperAt;
    private final double[] damperForce;
    private final double[] stopAt;
    private final double[] stopForce;
    private double impacts;
    private double start;
    private double kinetic;
    private double height;
    private double springs;
    private double joints;
    private double driverWork;
    private double damping;
    private double numerical;
    private double turnover;
    private double lastWork;
    private double lastFriction;

    EnergyLedger(Assembly asm) {
        this.asm = asm;
        inertia = new double[6 * asm.bodies];
        before = new double[6 * asm.bodies];
        driverAt = new double[asm.drivers.length];
        driverForce = new double[asm.drivers.length];
        damperAt = new double[asm.rowCount];
        damperForce = new double[asm.rowCount];
        stopAt = new double[asm.stops.length];
        stopForce = new double[asm.stops.length];
    }

    void begin(State s) {
        for (Force f : asm.forces) {
            f.begin(s);
        }
        for (Friction f : asm.frictions) {
            f.begin(s, asm.lambda[f.rowAt()]);
        }
        inertiaLoads(s, before);
        levels(s);
        start = stored();
        for (int i = 0; i < driverAt.length; i++) {
            driverAt[i] = asm.drivers[i].target();
            driverForce[i] = asm.lambda[asm.drivers[i].rowAt()];
        }
        strike(s);
        impacts = 0;
        damperHeat(s);
    }

    /** Accounts for an accepted step with displacements {@code z} (6 a body). */
    void account(State s, double[] z) {
        double t0 = kinetic;
        double h0 = height;
        double u0 = springs + joints;
        inertiaLoads(s, inertia);
        double trapezoid = 0;
        for (int i = 6; i < inertia.length; i++) {
            trapezoid += 0.5 * (inertia[i] + before[i]) * z[i];
            before[i] = inertia[i];
        }
        levels(s);
        numerical += trapezoid - (kinetic - t0);
        drive();
        strike(s);
        damping += damperHeat(s);
        double work = work();
        double friction = friction();
        turnover +=
                0.5
                        * (Math.abs(kinetic - t0)
                                + Math.abs(height - h0)
                                + Math.abs(springs + joints - u0)
                                + Math.abs(work - lastWork)
                                + Math.abs(friction - lastFriction));
        lastWork = work;
        lastFriction = friction;
    }

    /**
     * Goes on after a jump of forces with the loads that stops and drivers carry from then on. What
     * a new start from other accelerations does to joints that give is numerical: their loads
     * follow from the pose and did not jump.
     */
    void resume(double[] loads) {
        for (int i = 0; i < stopForce.length; i++) {
            stopForce[i] = reload(asm.stops[i], loads);
        }
        for (int i = 0; i < driverForce.length; i++) {
            driverForce[i] = reload(asm.drivers[i], loads);
        }
    }

    /** Puts the jump of a row's load on the inertia loads it is in balance with. */
    private double reload(ScalarRow row, double[] loads) {
        double jump = loads[row.rowAt()] - asm.lambda[row.rowAt()];
        BlockTable t = asm.table;
        int block = t.block[row.rowAt()];
        for (int k = t.first[block]; k < t.first[block + 1]; k++) {
            int body = 6 * t.body[k];
            for (int c = 0; c < 6; c++) {
                before[body + c] += jump * asm.g[t.at[k] + c];
            }
        }
        return loads[row.rowAt()];
    }

    /** Work that stops took, by the same trapezoid as all loads: they store nothing. */
    private void strike(State s) {
        for (int i = 0; i < stopAt.length; i++) {
            Stop stop = asm.stops[i];
            double push = asm.lambda[stop.rowAt()];
            double gap = stop.gap(s);
            impacts -= 0.5 * (push + stopForce[i]) * (gap - stopAt[i]);
            stopAt[i] = gap;
            stopForce[i] = push;
        }
    }

    private void drive() {
        for (int i = 0; i < driverAt.length; i++) {
            Driver d = asm.drivers[i];
            double force = asm.lambda[d.rowAt()];
            driverWork += 0.5 * (force + driverForce[i]) * (d.target() - driverAt[i]);
            driverAt[i] = d.target();
            driverForce[i] = force;
        }
    }

    /** M v' and, for turns, J w' + w x J w. */
    private void inertiaLoads(State s, double[] out) {
        double[] j = asm.inertia();
        for (int i = 1; i < asm.bodies; i++) {
            int k = 6 * i;
            for (int c = 0; c < 3; c++) {
                out[k + c] = asm.mass(i) * s.a[k + c];
            }
            double hx = dot(j, 9 * i, s.v, k + 3);
            double hy = dot(j, 9 * i + 3, s.v, k + 3);
            double hz = dot(j, 9 * i + 6, s.v, k + 3);
            double wx = s.v[k + 3];
            double wy = s.v[k + 4];
            double wz = s.v[k + 5];
            out[k + 3] = dot(j, 9 * i, s.a, k + 3) + wy * hz - wz * hy;
            out[k + 4] = dot(j, 9 * i + 3, s.a, k + 3) + wz * hx - wx * hz;
            out[k + 5] = dot(j, 9 * i + 6, s.a, k + 3) + wx * hy - wy * hx;
        }
    }

    private static double dot(double[] m, int at, double[] v, int from) {
        return m[at] * v[from] + m[at + 1] * v[from + 1] + m[at + 2] * v[from + 2];
    }

    private void levels(State s) {
        double[] j = asm.inertia();
        Vec3 g = asm.mechanism.gravity();
        kinetic = 0;
        height = 0;
        for (int i = 1; i < asm.bodies; i++) {
            int k = 6 * i;
            double m = asm.mass(i);
            double v2 = s.v[k] * s.v[k] + s.v[k + 1] * s.v[k + 1] + s.v[k + 2] * s.v[k + 2];
            double spin = 0;
            for (int c = 0; c < 3; c++) {
                spin += s.v[k + 3 + c] * dot(j, 9 * i + 3 * c, s.v, k + 3);
            }
            kinetic += 0.5 * (m * v2 + spin);
            height -= m * (g.x() * s.x[3 * i] + g.y() * s.x[3 * i + 1] + g.z() * s.x[3 * i + 2]);
        }
        springs = 0;
        for (Force f : asm.forces) {
            springs += f.energy();
        }
        joints = 0;
        for (int row = 0; row < asm.rowCount; row++) {
            joints += plain(row);
        }
        for (int row : asm.damped) {
            joints += elastic(row, s) - plain(row);
        }
        for (Stop stop : asm.stops) {
            // stops store nothing
            joints -= elastic(stop.rowAt(), s);
        }
    }

    /** Energy in the compliance of a row without damping. */
    private double plain(int row) {
        return 0.5 * asm.c[row] * asm.lambda[row] * asm.lambda[row];
    }

    /** Energy in the compliance of any row; the damper beside it carries its share of the load. */
    private double elastic(int row, State s) {
        if (!damps(row)) {
            return plain(row);
        }
        double stretch = asm.c[row] * asm.lambda[row] + asm.d[row] * asm.rate(row, s.v);
        return 0.5 * stretch * stretch / asm.c[row];
    }

    private boolean damps(int row) {
        return asm.d[row] > 0 && asm.c[row] > 0 && asm.engaged[row];
    }

    /** Heat of damped rows since the last call: mean of their force d phi'/c times the way. */
    private double damperHeat(State s) {
        double sum = 0;
        for (int row : asm.damped) {
            if (damps(row) && !(asm.rows[asm.table.block[row]] instanceof Stop)) {
                double v = asm.rate(row, s.v);
                double at = -asm.c[row] * asm.lambda[row] - asm.d[row] * v;
                double force = asm.d[row] / asm.c[row] * v;
                sum += 0.5 * (force + damperForce[row]) * (at - damperAt[row]);
                damperForce[row] = force;
                damperAt[row] = at;
            }
        }
        return sum;
    }

    private double stored() {
        return kinetic + height + springs + joints;
    }

    /** Kinetic energy now. */
    public double kinetic() {
        return kinetic;
    }

    /** Energy of height now, zero at the origin of the base. */
    public double height() {
        return height;
    }

    /** Energy stored in springs now. */
    public double springs() {
        return springs;
    }

    /** Elastic energy in the compliance of joints now. */
    public double joints() {
        return joints;
    }

    /** Work that drivers, motors and loads brought in. */
    public double work() {
        double sum = driverWork;
        for (Force f : asm.forces) {
            sum += f.work();
        }
        return sum;
    }

    /** Heat from dry friction. */
    public double friction() {
        double sum = 0;
        for (Friction f : asm.frictions) {
            sum += f.heat();
        }
        return sum;
    }

    /** Heat from dampers, and from impacts at stops. */
    public double damping() {
        double sum = damping + impacts;
        for (Force f : asm.forces) {
            sum += f.heat();
        }
        return sum;
    }

    /** Energy that the integrator itself took out (or, if negative, put in). */
    public double numerical() {
        return numerical;
    }

    /** What does not add up. */
    public double closing() {
        return work() - (stored() - start) - friction() - damping() - numerical;
    }

    /** Energy that changed its form since the start; the scale for {@link #closing}. */
    public double turnover() {
        return turnover;
    }
}
