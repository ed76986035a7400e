// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.joint;

import foldwright.mechanics.body.Marker;
import foldwright.mechanics.body.State;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Joint of two bodies that locks a set of travels and turns between a marker on each.
 *
 * <p>Travel row along axis u of A: phi = u . (pB - pA). Turn rows are products of axes: RX = -
 * yA.zB, RY = xA.zB, RZ = yA.xB; each is the small turn of B against A about that axis of A. lambda
 * is the force [N] or moment [N m] on B, in A's axes, at B's marker.
 */
public final class PairJoint extends Rows {
    private final Frame a;
    private final Frame b;
    private final Freedom[] rows;
    private final int[] rowOf = new int[6];
    private final boolean turns;
    private final Hessians second = new Hessians();
    private PairTable alone;

    public PairJoint(String name, Set<Freedom> locked, Marker onA, Marker onB) {
        super(name, locked.size(), onA.body().index(), onB.body().index());
        check(name, locked);
        a = new Frame(onA);
        b = new Frame(onB);
        rows = EnumSet.copyOf(locked).toArray(Freedom[]::new);
        java.util.Arrays.fill(rowOf, -1);
        boolean any = false;
        for (int i = 0; i < rows.length; i++) {
            rowOf[rows[i].ordinal()] = i;
            any |= rows[i].ordinal() >= 3;
            if (rows[i].ordinal() >= 3) {
                soften(i, IDEAL_TURN, 0);
            }
        }
        turns = any;
    }

    private static void check(String name, Set<Freedom> locked) {
        boolean x = locked.contains(Freedom.RX);
        boolean y = locked.contains(Freedom.RY);
        if (locked.isEmpty() || x != y) {
            throw new IllegalArgumentException(
                    "joint \""
                            + name
                            + "\": RX and RY go together, at least one row; found "
                            + locked);
        }
    }

    Frame frameA() {
        return a;
    }

    Frame frameB() {
        return b;
    }

    /** Row that locks {@code f}, or -1. */
    public int row(Freedom f) {
        return rowOf[f.ordinal()];
    }

    /**
     * Load on B along {@code f} in A's axes, at B's marker [N, N m]; 0 if the joint is free there.
     */
    public double load(Freedom f, double[] lambda) {
        int i = rowOf[f.ordinal()];
        return i < 0 ? 0 : lambda[rowAt() + i];
    }

    @Override
    public String rowName(int row) {
        return rows[row].load();
    }

    @Override
    public double reach(int k) {
        return k == 0 ? a.reach() : b.reach();
    }

    private void place(State s) {
        a.place(s);
        a.axes(s);
        b.place(s);
        if (turns) {
            b.axis(s, 0);
            b.axis(s, 2);
        }
    }

    /** By itself; solvers evaluate all joints of a mechanism together, see {@link PairTable}. */
    @Override
    public void evaluate(State s, double[] phi, double[] g, int at) {
        if (alone == null) {
            alone = new PairTable(List.of(this), new int[] {0, 6 * size()});
        }
        alone.evaluate(s, phi, g, at);
    }

    /** u . (pB - pA) for the axis at {@code iu} of A. */
    static double along(Frame a, Frame b, int iu) {
        double[] u = a.u;
        return u[iu] * (b.px - a.px) + u[iu + 1] * (b.py - a.py) + u[iu + 2] * (b.pz - a.pz);
    }

    /**
     * The same with its gradient: B (u, rB x u), A -(u, (rA + d) x u), moments turned to the
     * bodies.
     */
    static double translation(
            State s, Frame a, Frame b, int iu, double[] m, double[] g, int atA, int atB) {
        double[] u = a.u;
        double ux = u[iu];
        double uy = u[iu + 1];
        double uz = u[iu + 2];
        double dx = b.px - a.px;
        double dy = b.py - a.py;
        double dz = b.pz - a.pz;
        double lx = a.rx + dx;
        double ly = a.ry + dy;
        double lz = a.rz + dz;
        m[0] = ly * uz - lz * uy;
        m[1] = lz * ux - lx * uz;
        m[2] = lx * uy - ly * ux;
        Gradient.write(s, a.body, g, atA, -1, u, iu, m);
        m[0] = b.ry * uz - b.rz * uy;
        m[1] = b.rz * ux - b.rx * uz;
        m[2] = b.rx * uy - b.ry * ux;
        Gradient.write(s, b.body, g, atB, 1, u, iu, m);
        return ux * dx + uy * dy + uz * dz;
    }

    @Override
    public void convective(State s, double[] out) {
        place(s);
        for (int i = 0; i < rows.length; i++) {
            int f = rows[i].ordinal();
            out[rowAt() + i] =
                    f < 3 ? translationConvective(s, a, b, 3 * f) : alignmentConvective(s, f - 3);
        }
    }

    /** u'' . d + 2 u' . d' + u . d'' with all body accelerations zero. */
    static double translationConvective(State s, Frame a, Frame b, int iu) {
        double[] u = a.u;
        double[] o = s.w;
        double ux = u[iu];
        double uy = u[iu + 1];
        double uz = u[iu + 2];
        int i = 3 * a.body;
        int j = 3 * b.body;
        double ax = o[i];
        double ay = o[i + 1];
        double az = o[i + 2];
        double bx = o[j];
        double by = o[j + 1];
        double bz = o[j + 2];
        double dx = b.px - a.px;
        double dy = b.py - a.py;
        double dz = b.pz - a.pz;
        // d' and u'
        double vx = s.v[2 * j] + by * b.rz - bz * b.ry - s.v[2 * i] - ay * a.rz + az * a.ry;
        double vy = s.v[2 * j + 1] + bz * b.rx - bx * b.rz - s.v[2 * i + 1] - az * a.rx + ax * a.rz;
        double vz = s.v[2 * j + 2] + bx * b.ry - by * b.rx - s.v[2 * i + 2] - ax * a.ry + ay * a.rx;
        double cross =
                (ay * uz - az * uy) * vx + (az * ux - ax * uz) * vy + (ax * uy - ay * ux) * vz;
        return 2 * cross
                + doubleCross(ax, ay, az, ux, uy, uz, dx, dy, dz)
                + doubleCross(bx, by, bz, b.rx, b.ry, b.rz, ux, uy, uz)
                - doubleCross(ax, ay, az, a.rx, a.ry, a.rz, ux, uy, uz);
    }

    /** (w x (w x p)) . q. */
    private static double doubleCross(
            double wx,
            double wy,
            double wz,
            double px,
            double py,
            double pz,
            double qx,
            double qy,
            double qz) {
        return (wx * px + wy * py + wz * pz) * (wx * qx + wy * qy + wz * qz)
                - (wx * wx + wy * wy + wz * wz) * (px * qx + py * qy + pz * qz);
    }

    private double alignmentConvective(State s, int t) {
        double[] u = a.u;
        double[] w = b.u;
        double[] o = s.w;
        int iu = PairTable.TURN_A[t];
        int iw = PairTable.TURN_B[t];
        int i = 3 * a.body;
        int j = 3 * b.body;
        double ux = o[i + 1] * u[iu + 2] - o[i + 2] * u[iu + 1];
        double uy = o[i + 2] * u[iu] - o[i] * u[iu + 2];
        double uz = o[i] * u[iu + 1] - o[i + 1] * u[iu];
        double wx = o[j + 1] * w[iw + 2] - o[j + 2] * w[iw + 1];
        double wy = o[j + 2] * w[iw] - o[j] * w[iw + 2];
        double wz = o[j] * w[iw + 1] - o[j + 1] * w[iw];
        double ends =
                doubleCross(
                                o[i], o[i + 1], o[i + 2], u[iu], u[iu + 1], u[iu + 2], w[iw],
                                w[iw + 1], w[iw + 2])
                        + doubleCross(
                                o[j], o[j + 1], o[j + 2], w[iw], w[iw + 1], w[iw + 2], u[iu],
                                u[iu + 1], u[iu + 2]);
        return PairTable.TURN_SIGN[t] * (ends + 2 * (ux * wx + uy * wy + uz * wz));
    }

    @Override
    public void geometric(State s, double[] lambda, Stiffness out) {
        place(s);
        for (int i = 0; i < rows.length; i++) {
            int f = rows[i].ordinal();
            double load = -lambda[rowAt() + i];
            if (f < 3) {
                second.translation(s, a, b, a.u, 3 * f, load, out);
            } else {
                int t = f - 3;
                second.alignment(
                        s,
                        a.body,
                        a.u,
                        PairTable.TURN_A[t],
                        b.body,
                        b.u,
                        PairTable.TURN_B[t],
                        load * PairTable.TURN_SIGN[t],
                        out);
            }
        }
    }
}
