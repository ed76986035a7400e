// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.joint;

import foldwright.mechanics.body.State;

/**
 * Second derivatives of the two functions that all joints are made of, with respect to centre
 * displacements [base frame] and turns R exp(p) [body axes]: the translation {@code u . d} with the
 * axis u on body A and d from A's marker to B's, and the alignment {@code u . w} with u on A, w on
 * B.
 *
 * <p>With theta = R p and N(a, b) = (ab' + ba')/2 - (a.b) I:
 *
 * <pre>
 * u . d: AA N(u, rA + d)   BB N(u, rB)   A-turn x B-shift [u]x   A-turn x B-turn (u.rB) I - rB u'
 * u . w: AA N(u, w)        BB N(u, w)    A-turn x B-turn (u.w) I - w u'
 * </pre>
 */
final class Hessians {
    private final double[] block = new double[36];
    private final double[] m = new double[9];
    private final double[] t = new double[9];

    /** Adds f times the second derivative of u . d. */
    void translation(State s, Frame a, Frame b, double[] u, int iu, double f, Stiffness out) {
        double ux = f * u[iu];
        double uy = f * u[iu + 1];
        double uz = f * u[iu + 2];
        double lx = a.rx + b.px - a.px;
        double ly = a.ry + b.py - a.py;
        double lz = a.rz + b.pz - a.pz;
        own(s, a.body, ux, uy, uz, lx, ly, lz, out);
        own(s, b.body, ux, uy, uz, b.rx, b.ry, b.rz, out);
        // A-turn against B-shift and, with the other sign, against A-shift
        m[0] = 0;
        m[1] = -uz;
        m[2] = uy;
        m[3] = uz;
        m[4] = 0;
        m[5] = -ux;
        m[6] = -uy;
        m[7] = ux;
        m[8] = 0;
        bodyRows(s, a.body);
        clear();
        put(3, 0, t, 1);
        cross(ux, uy, uz, b.rx, b.ry, b.rz);
        bodyRows(s, a.body);
        bodyColumns(s, b.body);
        put(3, 3, t, 1);
        out.add(a.body, b.body, block);
        shiftTurn(s, a.body, ux, uy, uz, out);
    }

    /** A-turn against A-shift: -[u]x and its transpose, one symmetric block of A. */
    private void shiftTurn(State s, int a, double ux, double uy, double uz, Stiffness out) {
        m[0] = 0;
        m[1] = uz;
        m[2] = -uy;
        m[3] = -uz;
        m[4] = 0;
        m[5] = ux;
        m[6] = uy;
        m[7] = -ux;
        m[8] = 0;
        bodyRows(s, a);
        clear();
        put(3, 0, t, 1);
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                block[6 * j + 3 + i] = t[3 * i + j];
            }
        }
        out.add(a, a, block);
    }

    /** Adds f times the second derivative of u . w. */
    void alignment(
            State s,
            int a,
            double[] u,
            int iu,
            int b,
            double[] w,
            int iw,
            double f,
            Stiffness out) {
        double ux = f * u[iu];
        double uy = f * u[iu + 1];
        double uz = f * u[iu + 2];
        own(s, a, ux, uy, uz, w[iw], w[iw + 1], w[iw + 2], out);
        own(s, b, ux, uy, uz, w[iw], w[iw + 1], w[iw + 2], out);
        cross(ux, uy, uz, w[iw], w[iw + 1], w[iw + 2]);
        bodyRows(s, a);
        bodyColumns(s, b);
        clear();
        put(3, 3, t, 1);
        out.add(a, b, block);
    }

    /** N(u, r) of one body, turn against turn. */
    private void own(
            State s,
            int body,
            double ux,
            double uy,
            double uz,
            double rx,
            double ry,
            double rz,
            Stiffness out) {
        double dot = ux * rx + uy * ry + uz * rz;
        m[0] = ux * rx - dot;
        m[4] = uy * ry - dot;
        m[8] = uz * rz - dot;
        m[1] = m[3] = 0.5 * (ux * ry + uy * rx);
        m[2] = m[6] = 0.5 * (ux * rz + uz * rx);
        m[5] = m[7] = 0.5 * (uy * rz + uz * ry);
        bodyRows(s, body);
        bodyColumns(s, body);
        clear();
        put(3, 3, t, 1);
        out.add(body, body, block);
    }

    /** m = (u.r) I - r u'. */
    private void cross(double ux, double uy, double uz, double rx, double ry, double rz) {
        double dot = ux * rx + uy * ry + uz * rz;
        m[0] = dot - rx * ux;
        m[1] = -rx * uy;
        m[2] = -rx * uz;
        m[3] = -ry * ux;
        m[4] = dot - ry * uy;
        m[5] = -ry * uz;
        m[6] = -rz * ux;
        m[7] = -rz * uy;
        m[8] = dot - rz * uz;
    }

    /** t = R' m. */
    private void bodyRows(State s, int body) {
        double[] r = s.r;
        int k = 9 * body;
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                t[3 * i + j] = r[k + i] * m[j] + r[k + 3 + i] * m[3 + j] + r[k + 6 + i] * m[6 + j];
            }
        }
    }

    /** t = t R. */
    private void bodyColumns(State s, int body) {
        double[] r = s.r;
        int k = 9 * body;
        for (int i = 0; i < 3; i++) {
            double a = t[3 * i];
            double b = t[3 * i + 1];
            double c = t[3 * i + 2];
            for (int j = 0; j < 3; j++) {
                t[3 * i + j] = a * r[k + j] + b * r[k + 3 + j] + c * r[k + 6 + j];
            }
        }
    }

    private void clear() {
        java.util.Arrays.fill(block, 0);
    }

    private void put(int row, int column, double[] v, double f) {
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                block[6 * (row + i) + column + j] = f * v[3 * i + j];
            }
        }
    }
}
