// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.body;

import java.util.Arrays;

/**
 * Pose, velocity and acceleration of all bodies at one instant, as flat arrays that the solver
 * updates in place; body 0 is the base.
 *
 * <p>The arrays are shared with the solver on purpose (no copies inside a step); a caller that
 * keeps a state takes {@link #copy()}.
 */
public final class State {
    /** Time [s]. */
    public double time;

    /** Centres of mass, 3 a body [m, base frame]. */
    public final double[] x;

    /** Attitudes as unit quaternions (w, x, y, z), 4 a body, body to base. */
    public final double[] q;

    /** The same attitudes as matrices, 9 a body, row-major; {@link #refresh} keeps them in step. */
    public final double[] r;

    /**
     * Velocity of the centre [m/s, base frame] and angular velocity [rad/s, body frame], 6 a body.
     */
    public final double[] v;

    /** Accelerations: time derivative of {@link #v}. */
    public final double[] a;

    /** Angular velocity in the base frame, 3 a body [rad/s]. */
    public final double[] w;

    /** Last accepted values of angles that may exceed a turn [rad]. */
    public final double[] memory;

    private final int bodies;

    /**
     * @param bodies number of bodies, the base included
     * @param angles number of remembered angles
     */
    public State(int bodies, int angles) {
        this.bodies = bodies;
        x = new double[3 * bodies];
        q = new double[4 * bodies];
        r = new double[9 * bodies];
        v = new double[6 * bodies];
        a = new double[6 * bodies];
        w = new double[3 * bodies];
        memory = new double[angles];
        for (int i = 0; i < bodies; i++) {
            q[4 * i] = 1;
        }
        refresh();
    }

    /** Number of bodies, the base included. */
    public int bodies() {
        return bodies;
    }

    public State copy() {
        State s = new State(bodies, memory.length);
        s.set(this);
        return s;
    }

    /** Takes over everything from {@code o}, which has the same size. */
    public void set(State o) {
        time = o.time;
        System.arraycopy(o.x, 0, x, 0, x.length);
        System.arraycopy(o.q, 0, q, 0, q.length);
        System.arraycopy(o.r, 0, r, 0, r.length);
        System.arraycopy(o.v, 0, v, 0, v.length);
        System.arraycopy(o.a, 0, a, 0, a.length);
        System.arraycopy(o.w, 0, w, 0, w.length);
        System.arraycopy(o.memory, 0, memory, 0, memory.length);
    }

    /** All velocities and accelerations to zero. */
    public void rest() {
        Arrays.fill(v, 0);
        Arrays.fill(a, 0);
        Arrays.fill(w, 0);
    }

    /** Matrices and base-frame angular velocities from quaternions and body-frame ones. */
    public void refresh() {
        for (int i = 0; i < bodies; i++) {
            matrix(i);
            spin(i);
        }
    }

    /** Matrix of body {@code i} from its quaternion. */
    public void matrix(int i) {
        double qw = q[4 * i];
        double qx = q[4 * i + 1];
        double qy = q[4 * i + 2];
        double qz = q[4 * i + 3];
        int k = 9 * i;
        r[k] = 1 - 2 * (qy * qy + qz * qz);
        r[k + 1] = 2 * (qx * qy - qw * qz);
        r[k + 2] = 2 * (qx * qz + qw * qy);
        r[k + 3] = 2 * (qx * qy + qw * qz);
        r[k + 4] = 1 - 2 * (qx * qx + qz * qz);
        r[k + 5] = 2 * (qy * qz - qw * qx);
        r[k + 6] = 2 * (qx * qz - qw * qy);
        r[k + 7] = 2 * (qy * qz + qw * qx);
        r[k + 8] = 1 - 2 * (qx * qx + qy * qy);
    }

    /** Base-frame angular velocity of body {@code i}. */
    public void spin(int i) {
        int k = 9 * i;
        double ox = v[6 * i + 3];
        double oy = v[6 * i + 4];
        double oz = v[6 * i + 5];
        w[3 * i] = r[k] * ox + r[k + 1] * oy + r[k + 2] * oz;
        w[3 * i + 1] = r[k + 3] * ox + r[k + 4] * oy + r[k + 5] * oz;
        w[3 * i + 2] = r[k + 6] * ox + r[k + 7] * oy + r[k + 8] * oz;
    }

    /**
     * Attitude of body {@code i} = attitude {@code from} (4 numbers at {@code at}) turned by the
     * rotation vector (px, py, pz) [rad, body axes]: q = from * exp(p).
     */
    public void turn(int i, double[] from, int at, double px, double py, double pz) {
        double t2 = px * px + py * py + pz * pz;
        double s; // sin(t/2)/t
        double c;
        if (t2 < 1e-4) {
            // series to t^6: truncation below 1e-17
            s = 0.5 - t2 / 48 + t2 * t2 / 3840 - t2 * t2 * t2 / 645120;
            c = 1 - t2 / 8 + t2 * t2 / 384 - t2 * t2 * t2 / 46080;
        } else {
            double t = Math.sqrt(t2);
            s = Math.sin(0.5 * t) / t;
            c = Math.cos(0.5 * t);
        }
        double bx = s * px;
        double by = s * py;
        double bz = s * pz;
        double aw = from[at];
        double ax = from[at + 1];
        double ay = from[at + 2];
        double az = from[at + 3];
        double nw = aw * c - ax * bx - ay * by - az * bz;
        double nx = aw * bx + ax * c + ay * bz - az * by;
        double ny = aw * by - ax * bz + ay * c + az * bx;
        double nz = aw * bz + ax * by - ay * bx + az * c;
        // one Newton step keeps the length at one: the input is one to rounding
        double f = 1.5 - 0.5 * (nw * nw + nx * nx + ny * ny + nz * nz);
        q[4 * i] = nw * f;
        q[4 * i + 1] = nx * f;
        q[4 * i + 2] = ny * f;
        q[4 * i + 3] = nz * f;
        matrix(i);
    }

    /** Pose of a body's frame [base frame]. */
    public Pose pose(Body b) {
        int i = b.index();
        Rotation turn = new Rotation(q[4 * i], q[4 * i + 1], q[4 * i + 2], q[4 * i + 3]);
        Vec3 c = new Vec3(x[3 * i], x[3 * i + 1], x[3 * i + 2]);
        if (b.isBase()) {
            return Pose.ORIGIN;
        }
        return new Pose(c.minus(turn.apply(b.mass().centre())), turn);
    }

    /** Puts a body's frame at {@code pose} [base frame]. */
    public void place(Body b, Pose pose) {
        int i = b.index();
        Vec3 c = pose.apply(b.mass().centre());
        x[3 * i] = c.x();
        x[3 * i + 1] = c.y();
        x[3 * i + 2] = c.z();
        Rotation t = pose.attitude();
        q[4 * i] = t.w();
        q[4 * i + 1] = t.x();
        q[4 * i + 2] = t.y();
        q[4 * i + 3] = t.z();
        matrix(i);
        spin(i);
    }

    /** Gives a body's centre of mass a velocity [m/s] and the body an angular one [rad/s, base]. */
    public void move(Body b, Vec3 velocity, Vec3 angular) {
        int i = b.index();
        Vec3 o = pose(b).attitude().inverse().apply(angular);
        double[] n = {velocity.x(), velocity.y(), velocity.z(), o.x(), o.y(), o.z()};
        System.arraycopy(n, 0, v, 6 * i, 6);
        spin(i);
    }

    /** Position of a marker [m, base frame]. */
    public Vec3 point(Marker m) {
        return pose(m.body()).apply(m.local().position());
    }

    /** Velocity of a marker's point [m/s, base frame]. */
    public Vec3 velocity(Marker m) {
        int i = m.body().index();
        Vec3 c = new Vec3(v[6 * i], v[6 * i + 1], v[6 * i + 2]);
        return c.plus(angularVelocity(m.body()).cross(pose(m.body()).attitude().apply(m.arm())));
    }

    /** Angular velocity of a body [rad/s, base frame]. */
    public Vec3 angularVelocity(Body b) {
        int i = b.index();
        return new Vec3(w[3 * i], w[3 * i + 1], w[3 * i + 2]);
    }
}
