// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.joint;

import foldwright.mechanics.body.Marker;
import foldwright.mechanics.body.State;
import foldwright.mechanics.body.Vec3;

/** A marker made ready for the solver: arm and axes as plain numbers, seen from the base. */
final class Frame {
    final int body;

    /** Arm from the centre of mass [m, body axes]. */
    final double sx;

    final double sy;
    final double sz;

    /** Axes in body axes: x, y, z of the marker one after the other. */
    final double[] e = new double[9];

    /** Arm and point [m, base frame]. */
    double rx;

    double ry;
    double rz;
    double px;
    double py;
    double pz;

    /** Axes in the base frame: x, y, z of the marker one after the other. */
    final double[] u = new double[9];

    Frame(Marker m) {
        body = m.body().index();
        Vec3 s = m.arm();
        sx = s.x();
        sy = s.y();
        sz = s.z();
        Vec3[] own = {m.axis(Vec3.X), m.axis(Vec3.Y), m.axis(Vec3.Z)};
        for (int i = 0; i < 3; i++) {
            e[3 * i] = own[i].x();
            e[3 * i + 1] = own[i].y();
            e[3 * i + 2] = own[i].z();
        }
    }

    /** Writes arm and axes, twelve numbers in body axes, at {@code out[at...]}. */
    void copy(double[] out, int at) {
        out[at] = sx;
        out[at + 1] = sy;
        out[at + 2] = sz;
        System.arraycopy(e, 0, out, at + 3, 9);
    }

    /** Arm and point in the base frame. */
    void place(State s) {
        double[] r = s.r;
        int k = 9 * body;
        rx = r[k] * sx + r[k + 1] * sy + r[k + 2] * sz;
        ry = r[k + 3] * sx + r[k + 4] * sy + r[k + 5] * sz;
        rz = r[k + 6] * sx + r[k + 7] * sy + r[k + 8] * sz;
        px = s.x[3 * body] + rx;
        py = s.x[3 * body + 1] + ry;
        pz = s.x[3 * body + 2] + rz;
    }

    /** The three axes in the base frame. */
    void axes(State s) {
        axis(s, 0);
        axis(s, 1);
        axis(s, 2);
    }

    /** Axis {@code i} (0 x, 1 y, 2 z) in the base frame. */
    void axis(State s, int i) {
        double[] r = s.r;
        int k = 9 * body;
        int j = 3 * i;
        double ex = e[j];
        double ey = e[j + 1];
        double ez = e[j + 2];
        u[j] = r[k] * ex + r[k + 1] * ey + r[k + 2] * ez;
        u[j + 1] = r[k + 3] * ex + r[k + 4] * ey + r[k + 5] * ez;
        u[j + 2] = r[k + 6] * ex + r[k + 7] * ey + r[k + 8] * ez;
    }

    /**
     * Writes a vector of the base frame, {@code in[from...]}, in body axes at {@code out[to...]}.
     */
    void toBody(State s, double[] in, int from, double[] out, int to) {
        double[] r = s.r;
        int k = 9 * body;
        double x = in[from];
        double y = in[from + 1];
        double z = in[from + 2];
        out[to] = r[k] * x + r[k + 3] * y + r[k + 6] * z;
        out[to + 1] = r[k + 1] * x + r[k + 4] * y + r[k + 7] * z;
        out[to + 2] = r[k + 2] * x + r[k + 5] * y + r[k + 8] * z;
    }

    /** Largest distance of this marker from the centre of mass that matters for scaling [m]. */
    double reach() {
        return Math.sqrt(sx * sx + sy * sy + sz * sz);
    }
}
