// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.joint;

import foldwright.mechanics.body.Marker;
import foldwright.mechanics.body.State;

/** Distance between the points of two markers [m]; has no direction, hence no gradient, at zero. */
public final class PointDistance extends Coordinate {
    private final Frame a;
    private final Frame b;
    private final double[] n = new double[3];
    private final double[] m = new double[3];
    private final double[] block = new double[36];
    private final double[] la = new double[18];
    private final double[] lb = new double[18];
    private double length;

    public PointDistance(Marker from, Marker to) {
        super(from.body().index(), to.body().index());
        a = new Frame(from);
        b = new Frame(to);
    }

    private void place(State s) {
        a.place(s);
        b.place(s);
        n[0] = b.px - a.px;
        n[1] = b.py - a.py;
        n[2] = b.pz - a.pz;
        length = Math.sqrt(n[0] * n[0] + n[1] * n[1] + n[2] * n[2]);
        double f = 1 / length;
        n[0] *= f;
        n[1] *= f;
        n[2] *= f;
    }

    @Override
    public double value(State s) {
        place(s);
        return length;
    }

    @Override
    public double evaluate(State s, double[] g, int at) {
        place(s);
        m[0] = a.ry * n[2] - a.rz * n[1];
        m[1] = a.rz * n[0] - a.rx * n[2];
        m[2] = a.rx * n[1] - a.ry * n[0];
        Gradient.write(s, a.body, g, at, -1, n, 0, m);
        m[0] = b.ry * n[2] - b.rz * n[1];
        m[1] = b.rz * n[0] - b.rx * n[2];
        m[2] = b.rx * n[1] - b.ry * n[0];
        Gradient.write(s, b.body, g, at + 6, 1, n, 0, m);
        return length;
    }

    @Override
    public double convective(State s) {
        place(s);
        double along = 0;
        double speed2 = 0;
        double rate = 0;
        for (int c = 0; c < 3; c++) {
            double vel = pointVelocity(s, b, c) - pointVelocity(s, a, c);
            speed2 += vel * vel;
            rate += n[c] * vel;
            along += n[c] * (centripetal(s, b, c) - centripetal(s, a, c));
        }
        return along + (speed2 - rate * rate) / length;
    }

    private static double pointVelocity(State s, Frame f, int c) {
        int i = 3 * f.body;
        double wx = s.w[i];
        double wy = s.w[i + 1];
        double wz = s.w[i + 2];
        double spin =
                switch (c) {
                    case 0 -> wy * f.rz - wz * f.ry;
                    case 1 -> wz * f.rx - wx * f.rz;
                    default -> wx * f.ry - wy * f.rx;
                };
        return s.v[2 * i + c] + spin;
    }

    /** Component {@code c} of w x (w x r). */
    private static double centripetal(State s, Frame f, int c) {
        int i = 3 * f.body;
        double wx = s.w[i];
        double wy = s.w[i + 1];
        double wz = s.w[i + 2];
        double dot = wx * f.rx + wy * f.ry + wz * f.rz;
        double w2 = wx * wx + wy * wy + wz * wz;
        return switch (c) {
            case 0 -> wx * dot - w2 * f.rx;
            case 1 -> wy * dot - w2 * f.ry;
            default -> wz * dot - w2 * f.rz;
        };
    }

    /**
     * With L_i = d p_i / d(shift, turn) of each end: second derivative = L' (I - nn')/l L + n .
     * second derivative of the points (turn against turn, N(n, r)).
     */
    @Override
    public void hessian(State s, double factor, Stiffness out) {
        place(s);
        lever(s, a, la, -1);
        lever(s, b, lb, 1);
        double f = factor / length;
        product(la, la, f);
        curvature(s, a, -factor);
        out.add(a.body, a.body, block);
        product(lb, lb, f);
        curvature(s, b, factor);
        out.add(b.body, b.body, block);
        product(la, lb, f);
        out.add(a.body, b.body, block);
    }

    /** sign times [I, -[r]x R], 3 x 6. */
    private static void lever(State s, Frame f, double[] l, double sign) {
        double[] r = s.r;
        int k = 9 * f.body;
        for (int j = 0; j < 3; j++) {
            for (int i = 0; i < 3; i++) {
                l[6 * i + j] = i == j ? sign : 0;
            }
            double ex = r[k + j];
            double ey = r[k + 3 + j];
            double ez = r[k + 6 + j];
            l[3 + j] = sign * (ey * f.rz - ez * f.ry);
            l[9 + j] = sign * (ez * f.rx - ex * f.rz);
            l[15 + j] = sign * (ex * f.ry - ey * f.rx);
        }
    }

    private void product(double[] p, double[] q, double f) {
        for (int i = 0; i < 6; i++) {
            double np = n[0] * p[i] + n[1] * p[6 + i] + n[2] * p[12 + i];
            for (int j = 0; j < 6; j++) {
                double nq = n[0] * q[j] + n[1] * q[6 + j] + n[2] * q[12 + j];
                double full = p[i] * q[j] + p[6 + i] * q[6 + j] + p[12 + i] * q[12 + j];
                block[6 * i + j] = f * (full - np * nq);
            }
        }
    }

    private void curvature(State s, Frame f, double factor) {
        double[] r = s.r;
        int k = 9 * f.body;
        double dot = n[0] * f.rx + n[1] * f.ry + n[2] * f.rz;
        for (int i = 0; i < 3; i++) {
            double ni = r[k + i] * n[0] + r[k + 3 + i] * n[1] + r[k + 6 + i] * n[2];
            double ri = r[k + i] * f.rx + r[k + 3 + i] * f.ry + r[k + 6 + i] * f.rz;
            for (int j = 0; j < 3; j++) {
                double nj = r[k + j] * n[0] + r[k + 3 + j] * n[1] + r[k + 6 + j] * n[2];
                double rj = r[k + j] * f.rx + r[k + 3 + j] * f.ry + r[k + 6 + j] * f.rz;
                double full = 0.5 * (ni * rj + nj * ri) - (i == j ? dot : 0);
                block[6 * (3 + i) + 3 + j] += factor * full;
            }
        }
    }
}
