// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.joint;

import foldwright.mechanics.body.Marker;
import foldwright.mechanics.body.State;

/**
 * Turn of marker B against marker A about their common z axis [rad], counted over any number of
 * turns from the last accepted value.
 *
 * <p>angle = atan2(yA.xB - xA.yB, xA.xB + yA.yB); its gradient is (zA + zB)/(1 + zA.zB), which is
 * the exact derivative also for axes that are not quite parallel. The second derivative is left
 * out: it is zero for parallel axes except across a freedom that a hinge locks.
 */
public final class AxisAngle extends Coordinate {
    private static final double TURN = 2 * Math.PI;
    private final Frame a;
    private final Frame b;
    private final int memory;

    /**
     * @param memory place of the remembered value in {@link State#memory}
     */
    public AxisAngle(Marker from, Marker to, int memory) {
        super(from.body().index(), to.body().index());
        a = new Frame(from);
        b = new Frame(to);
        this.memory = memory;
    }

    @Override
    public double value(State s) {
        a.axes(s);
        b.axes(s);
        return angle(s);
    }

    private double angle(State s) {
        double[] u = a.u;
        double[] w = b.u;
        double sin =
                u[3] * w[0] + u[4] * w[1] + u[5] * w[2] - u[0] * w[3] - u[1] * w[4] - u[2] * w[5];
        double cos =
                u[0] * w[0] + u[1] * w[1] + u[2] * w[2] + u[3] * w[3] + u[4] * w[4] + u[5] * w[5];
        double principal = Math.atan2(sin, cos);
        return principal + TURN * Math.rint((s.memory[memory] - principal) / TURN);
    }

    @Override
    public double evaluate(State s, double[] g, int at) {
        double value = value(s);
        double[] u = a.u;
        double[] w = b.u;
        double f = 1 / (1 + u[6] * w[6] + u[7] * w[7] + u[8] * w[8]);
        double nx = f * (u[6] + w[6]);
        double ny = f * (u[7] + w[7]);
        double nz = f * (u[8] + w[8]);
        g[at] = g[at + 1] = g[at + 2] = 0;
        g[at + 6] = g[at + 7] = g[at + 8] = 0;
        Gradient.turn(s, a.body, g, at + 3, -nx, -ny, -nz);
        Gradient.turn(s, b.body, g, at + 9, nx, ny, nz);
        return value;
    }

    @Override
    public double convective(State s) {
        a.axis(s, 2);
        b.axis(s, 2);
        double[] u = a.u;
        double[] w = b.u;
        double[] o = s.w;
        int i = 3 * a.body;
        int j = 3 * b.body;
        double ax = o[i + 1] * u[8] - o[i + 2] * u[7];
        double ay = o[i + 2] * u[6] - o[i] * u[8];
        double az = o[i] * u[7] - o[i + 1] * u[6];
        double bx = o[j + 1] * w[8] - o[j + 2] * w[7];
        double by = o[j + 2] * w[6] - o[j] * w[8];
        double bz = o[j] * w[7] - o[j + 1] * w[6];
        double f = 1 / (1 + u[6] * w[6] + u[7] * w[7] + u[8] * w[8]);
        double df =
                -f * f * (ax * w[6] + ay * w[7] + az * w[8] + u[6] * bx + u[7] * by + u[8] * bz);
        double rx = o[j] - o[i];
        double ry = o[j + 1] - o[i + 1];
        double rz = o[j + 2] - o[i + 2];
        return f * ((ax + bx) * rx + (ay + by) * ry + (az + bz) * rz)
                + df * ((u[6] + w[6]) * rx + (u[7] + w[7]) * ry + (u[8] + w[8]) * rz);
    }

    @Override
    public void hessian(State s, double factor, Stiffness out) {
        // zero in every direction a hinge leaves free; see the class comment
    }

    @Override
    public void accept(State s) {
        s.memory[memory] = value(s);
    }
}
