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
}
