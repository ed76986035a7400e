// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.joint;

import foldwright.mechanics.body.Marker;
import foldwright.mechanics.body.State;
import java.util.EnumSet;
import java.util.Set;

/**
 * Joint of two bodies that locks a set of travels and turns between a marker on each.
 *
 * <p>Travel row along axis u of A: phi = u . (pB - pA). Turn rows are products of axes: RX = -
 * yA.zB, RY = xA.zB, RZ = yA.xB; each is the small turn of B against A about that axis of A. lambda
 * is the force [N] or moment [N m] on B, in A's axes, at B's marker.
 */
public final class PairJoint extends Rows {
    /** Axis of A and of B (offset into the axes) and sign of each turn row. */
    private static final int[] TURN_A = {3, 0, 3};

    private static final int[] TURN_B = {6, 6, 0};
    private static final double[] TURN_SIGN = {-1, 1, 1};

    private final Frame a;
    private final Frame b;
    private final Freedom[] rows;
    private final int[] rowOf = new int[6];
    private final boolean turnsB;
    private final double[] offset = new double[3];

    /** From A's centre to B's point [m, body axes of A]. */
    private final double[] arm = new double[3];

    /** Axes of A's marker in body axes of B, and of B's marker in those of A. */
    private final double[] axesOfA = new double[9];

    private final double[] axesOfB = new double[9];
    private final Hessians second = new Hessians();

    public PairJoint(String name, Set<Freedom> locked, Marker onA, Marker onB) {
        super(name, locked.size(), onA.body().index(), onB.body().index());
        check(name, locked);
        a = new Frame(onA);
        b = new Frame(onB);
        rows = EnumSet.copyOf(locked).toArray(Freedom[]::new);
        java.util.Arrays.fill(rowOf, -1);
        boolean turns = false;
        for (int i = 0; i < rows.length; i++) {
            rowOf[rows[i].ordinal()] = i;
            turns |= rows[i].ordinal() >= 3;
            if (rows[i].ordinal() >= 3) {
                soften(i, IDEAL_TURN, 0);
            }
        }
        turnsB = turns;
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
        if (turnsB) {
            b.axis(s, 0);
            b.axis(s, 2);
        }
    }

    @Override
    public void evaluate(State s, double[] phi, double[] g) {
        view(s);
        int row = rowAt();
        int ga = gAt();
        int gb = ga + 6 * rows.length;
        for (int i = 0; i < rows.length; i++) {
            int f = rows[i].ordinal();
            phi[row + i] =
                    f < 3
                            ? travel(3 * f, g, ga + 6 * i, gb + 6 * i)
                            : alignment(f - 3, g, ga + 6 * i, gb + 6 * i);
        }
    }

    /** Each body's vectors in the axes of the other, in which moments are cross products. */
    private void view(State s) {
        place(s);
        offset[0] = b.px - a.px;
        offset[1] = b.py - a.py;
        offset[2] = b.pz - a.pz;
        a.toBody(s, offset, 0, arm, 0);
        arm[0] += a.sx;
        arm[1] += a.sy;
        arm[2] += a.sz;
        b.toBody(s, a.u, 0, axesOfA, 0);
        b.toBody(s, a.u, 3, axesOfA, 3);
        b.toBody(s, a.u, 6, axesOfA, 6);
        if (turnsB) {
            a.toBody(s, b.u, 0, axesOfB, 0);
            a.toBody(s, b.u, 6, axesOfB, 6);
        }
    }

    /**
     * u . (pB - pA) with its gradient: B (u, sB x u), A -(u, l x u), moments in axes of the body, l
     * the arm from A's centre to B's point.
     */
    private double travel(int iu, double[] g, int atA, int atB) {
        double[] u = a.u;
        double ux = u[iu];
        double uy = u[iu + 1];
        double uz = u[iu + 2];
        g[atA] = -ux;
        g[atA + 1] = -uy;
        g[atA + 2] = -uz;
        double ex = a.e[iu];
        double ey = a.e[iu + 1];
        double ez = a.e[iu + 2];
        g[atA + 3] = arm[2] * ey - arm[1] * ez;
        g[atA + 4] = arm[0] * ez - arm[2] * ex;
        g[atA + 5] = arm[1] * ex - arm[0] * ey;
        g[atB] = ux;
        g[atB + 1] = uy;
        g[atB + 2] = uz;
        double wx = axesOfA[iu];
        double wy = axesOfA[iu + 1];
        double wz = axesOfA[iu + 2];
        g[atB + 3] = b.sy * wz - b.sz * wy;
        g[atB + 4] = b.sz * wx - b.sx * wz;
        g[atB + 5] = b.sx * wy - b.sy * wx;
        return ux * offset[0] + uy * offset[1] + uz * offset[2];
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

    /**
     * Turn row {@code t} (0 x, 1 y, 2 z): sign uA . wB, gradient sign (w x u) on B, minus that on
     * A, each in axes of the body.
     */
    private double alignment(int t, double[] g, int atA, int atB) {
        int iu = TURN_A[t];
        int iw = TURN_B[t];
        double sign = TURN_SIGN[t];
        double ex = sign * a.e[iu];
        double ey = sign * a.e[iu + 1];
        double ez = sign * a.e[iu + 2];
        double vx = axesOfB[iw];
        double vy = axesOfB[iw + 1];
        double vz = axesOfB[iw + 2];
        g[atA] = g[atA + 1] = g[atA + 2] = 0;
        g[atA + 3] = vz * ey - vy * ez;
        g[atA + 4] = vx * ez - vz * ex;
        g[atA + 5] = vy * ex - vx * ey;
        double ux = sign * axesOfA[iu];
        double uy = sign * axesOfA[iu + 1];
        double uz = sign * axesOfA[iu + 2];
        double wx = b.e[iw];
        double wy = b.e[iw + 1];
        double wz = b.e[iw + 2];
        g[atB] = g[atB + 1] = g[atB + 2] = 0;
        g[atB + 3] = wy * uz - wz * uy;
        g[atB + 4] = wz * ux - wx * uz;
        g[atB + 5] = wx * uy - wy * ux;
        return ex * vx + ey * vy + ez * vz;
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
        int iu = TURN_A[t];
        int iw = TURN_B[t];
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
        return TURN_SIGN[t] * (ends + 2 * (ux * wx + uy * wy + uz * wz));
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
                        TURN_A[t],
                        b.body,
                        b.u,
                        TURN_B[t],
                        load * TURN_SIGN[t],
                        out);
            }
        }
    }
}
