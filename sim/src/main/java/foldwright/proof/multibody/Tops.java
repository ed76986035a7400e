// SPDX-License-Identifier: Apache-2.0
package foldwright.proof.multibody;

import foldwright.mechanics.Mechanism;
import foldwright.mechanics.body.Body;
import foldwright.mechanics.body.Inertia;
import foldwright.mechanics.body.MassProperties;
import foldwright.mechanics.body.Pose;
import foldwright.mechanics.body.Rotation;
import foldwright.mechanics.body.State;
import foldwright.mechanics.body.Vec3;
import foldwright.mechanics.joint.JointKind;
import foldwright.mechanics.solve.Settings;
import foldwright.mechanics.solve.Stepper;

/** Spinning single bodies: free rotation and the heavy symmetric top. */
public final class Tops {
    static final double LEAN = Math.toRadians(25);
    private static final double MASS = 0.5;
    private static final double ARM = 0.03;

    private Tops() {}

    /** Body without forces, principal moments {@code j} [kg m2], body rates {@code w} [rad/s]. */
    public static Stepper free(Vec3 j, Vec3 w, double step) {
        Mechanism m = new Mechanism();
        Inertia inertia = Inertia.principal(j.x(), j.y(), j.z());
        Body b = m.body("body", Pose.ORIGIN, new MassProperties(1, Vec3.ZERO, inertia));
        State s = m.start();
        s.move(b, Vec3.ZERO, w);
        return new Stepper(m, s, Settings.ofStep(step));
    }

    /** Body rates of the only body [rad/s]. */
    public static double[] rates(State s) {
        return new double[] {s.v[9], s.v[10], s.v[11]};
    }

    /**
     * Top with its point on a ball joint, leaning 25 deg in the y-z plane, spinning at 150 rad/s
     * about its axis and precessing at {@code precession} [rad/s] about the vertical z.
     */
    public static Stepper heavy(double precession, double step) {
        Mechanism m = new Mechanism();
        m.gravity(new Vec3(0, 0, -9.81));
        double across = 8e-4 - MASS * ARM * ARM;
        Inertia inertia = Inertia.principal(across, across, 6e-4);
        Pose lean = new Pose(Vec3.ZERO, Rotation.about(Vec3.X, LEAN));
        Body b = m.body("top", lean, new MassProperties(MASS, new Vec3(0, 0, ARM), inertia));
        m.joint("point", JointKind.SPHERICAL, m.base(), b, Vec3.ZERO, Vec3.Z);
        Vec3 axis = axisOf(m.start());
        // body rate along the axis stays 150: the precession's part of it is taken off the spin
        Vec3 w = axis.times(150 - precession * axis.z()).plus(new Vec3(0, 0, precession));
        State s = m.start();
        s.move(b, w.cross(axis.times(ARM)), w);
        return new Stepper(m, s, Settings.ofStep(step));
    }

    /** Axis of the only body. */
    public static double[] axis(State s) {
        Vec3 a = axisOf(s);
        return new double[] {a.x(), a.y(), a.z()};
    }

    private static Vec3 axisOf(State s) {
        return new Vec3(s.r[9 + 2], s.r[9 + 5], s.r[9 + 8]);
    }
}
