// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.force;

import foldwright.mechanics.body.Marker;
import foldwright.mechanics.body.State;
import foldwright.mechanics.body.Vec3;
import foldwright.mechanics.joint.Stiffness;

/** A force at a point of a body and a moment on it, constant in the base frame until set anew. */
public final class PointLoad implements Force {
    private final String name;
    private final int body;
    private final Vec3 arm;
    private final double[] block = new double[36];
    private double fx;
    private double fy;
    private double fz;
    private double mx;
    private double my;
    private double mz;
    private final double[] last = new double[7];
    private final double[] now = new double[7];
    private double work;

    public PointLoad(String name, Marker at) {
        this.name = name;
        body = at.body().index();
        arm = at.arm();
    }

    @Override
    public String name() {
        return name;
    }

    /** Sets the force [N, base frame]; returns this. */
    public PointLoad force(Vec3 f) {
        return force(f.x(), f.y(), f.z());
    }

    /** Sets the force [N, base frame] without allocating; returns this. */
    public PointLoad force(double x, double y, double z) {
        fx = x;
        fy = y;
        fz = z;
        return this;
    }

    /** Sets the moment [N m, base frame]; returns this. */
    public PointLoad moment(Vec3 m) {
        mx = m.x();
        my = m.y();
        mz = m.z();
        return this;
    }

    @Override
    public int[] bodies() {
        return new int[] {body};
    }

    @Override
    public void apply(State s, double[] load) {
        double[] r = s.r;
        int k = 9 * body;
        int i = 6 * body;
        double ax = r[k] * arm.x() + r[k + 1] * arm.y() + r[k + 2] * arm.z();
        double ay = r[k + 3] * arm.x() + r[k + 4] * arm.y() + r[k + 5] * arm.z();
        double az = r[k + 6] * arm.x() + r[k + 7] * arm.y() + r[k + 8] * arm.z();
        double tx = mx + ay * fz - az * fy;
        double ty = my + az * fx - ax * fz;
        double tz = mz + ax * fy - ay * fx;
        load[i] += fx;
        load[i + 1] += fy;
        load[i + 2] += fz;
        load[i + 3] += r[k] * tx + r[k + 3] * ty + r[k + 6] * tz;
        load[i + 4] += r[k + 1] * tx + r[k + 4] * ty + r[k + 7] * tz;
        load[i + 5] += r[k + 2] * tx + r[k + 5] * ty + r[k + 8] * tz;
    }

    @Override
    public void tangent(State s, double stiffness, double damping, Stiffness out) {
        // constant in the base frame: see geometric
    }

    /** -F . second derivative of the point: -((f s' + s f')/2 - (f . s) I) in body axes. */
    @Override
    public void geometric(State s, double stiffness, Stiffness out) {
        double[] r = s.r;
        int k = 9 * body;
        double[] p = {arm.x(), arm.y(), arm.z()};
        double[] f = new double[3];
        double dot = 0;
        for (int i = 0; i < 3; i++) {
            f[i] = r[k + i] * fx + r[k + 3 + i] * fy + r[k + 6 + i] * fz;
            dot += f[i] * p[i];
        }
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                double n = 0.5 * (f[i] * p[j] + f[j] * p[i]) - (i == j ? dot : 0);
                block[6 * (3 + i) + 3 + j] = -stiffness * n;
            }
        }
        out.add(body, body, block);
    }

    @Override
    public double work() {
        return work;
    }

    @Override
    public void begin(State s) {
        work = 0;
        remember(s);
    }

    private void remember(State s) {
        place(s, last);
    }

    /** Point and attitude-turned arm ends: enough for the work of force and moment. */
    private void place(State s, double[] out) {
        double[] r = s.r;
        int k = 9 * body;
        for (int i = 0; i < 3; i++) {
            double a =
                    r[k + 3 * i] * arm.x()
                            + r[k + 3 * i + 1] * arm.y()
                            + r[k + 3 * i + 2] * arm.z();
            out[i] = s.x[3 * body + i] + a;
            out[3 + i] = s.w[3 * body + i];
        }
        out[6] = s.time;
    }

    /** Work of the force over the way of its point; of the moment by the trapezoid of its power. */
    @Override
    public void accept(State s) {
        place(s, now);
        double h = 0.5 * (now[6] - last[6]);
        work += fx * (now[0] - last[0]) + fy * (now[1] - last[1]) + fz * (now[2] - last[2]);
        work += h * (mx * (now[3] + last[3]) + my * (now[4] + last[4]) + mz * (now[5] + last[5]));
        System.arraycopy(now, 0, last, 0, last.length);
    }
}
