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
import foldwright.mechanics.force.Laws;
import foldwright.mechanics.joint.Driver;
import foldwright.mechanics.joint.Freedom;
import foldwright.mechanics.joint.JointKind;
import foldwright.mechanics.joint.PairJoint;
import foldwright.mechanics.joint.PrescribedMotion;
import foldwright.mechanics.solve.Equilibrium;
import foldwright.mechanics.solve.Kinetostatics;

/** Four-bar linkage in the x-y plane, open branch, the crank driven: loads at one instant. */
public final class FourBar {
    /**
     * A moving link.
     *
     * @param length [m]
     * @param mass [kg]
     * @param centre distance of the centre of mass from the link's first pin [m]
     * @param centreAngle of the centre of mass from the link's line [rad]
     * @param inertia about the centre of mass [kg m2]
     */
    public record Link(
            double length, double mass, double centre, double centreAngle, double inertia) {}

    /**
     * What drives and loads the linkage.
     *
     * @param ground distance of the fixed pins [m]
     * @param angle of the crank [rad]
     * @param speed of the crank [rad/s]
     * @param acceleration of the crank [rad/s2]
     * @param gravity along -y [m/s2]
     * @param rockerTorque [N m]
     */
    public record Drive(
            double ground,
            double angle,
            double speed,
            double acceleration,
            double gravity,
            double rockerTorque) {}

    private final Body coupler;
    private final Body rocker;
    private final PairJoint p12;
    private final PairJoint p23;
    private final PairJoint p34;
    private final PairJoint p14;
    private final Driver drive;
    private final Equilibrium balance;
    private final double angle3;
    private final double angle4;

    /**
     * @param force on the coupler [N, base frame]
     * @param at point of that force from the coupler's first pin, along and across its line [m]
     */
    public FourBar(Link crank, Link link, Link out, Drive d, Vec3 force, Vec3 at) {
        Mechanism m = new Mechanism();
        m.gravity(new Vec3(0, -d.gravity(), 0));
        Vec3 a = new Vec3(crank.length(), 0, 0);
        Vec3 pinA = Rotation.about(Vec3.Z, d.angle()).apply(a);
        Vec3 ground = new Vec3(d.ground(), 0, 0);
        Vec3 pinB = meeting(pinA, link.length(), ground, out.length());
        angle3 = Math.atan2(pinB.y() - pinA.y(), pinB.x() - pinA.x());
        angle4 = Math.atan2(pinB.y(), pinB.x() - d.ground());
        Body first = body(m, "crank", crank, Vec3.ZERO, d.angle());
        coupler = body(m, "coupler", link, pinA, angle3);
        rocker = body(m, "rocker", out, ground, angle4);
        p12 = m.joint("12", JointKind.REVOLUTE, m.base(), first, Pose.ORIGIN);
        p23 = m.joint("32", JointKind.REVOLUTE, coupler, first, Pose.at(pinA));
        p34 = m.joint("43", JointKind.REVOLUTE, rocker, coupler, Pose.at(pinB));
        p14 = m.joint("14", JointKind.REVOLUTE, m.base(), rocker, Pose.at(ground));
        drive =
                m.drive(
                        "drive",
                        m.angle(m.base(), first, Vec3.Z),
                        PrescribedMotion.uniform(0, d.speed(), d.acceleration()));
        m.load("load", coupler.marker(at)).force(force);
        m.law("rocker torque", m.angle(m.base(), rocker, Vec3.Z), Laws.constant(d.rockerTorque()));
        balance = new Kinetostatics(m).solve(m.start(), Kinetostatics.Inertia.INCLUDED).balance();
    }

    private static Body body(Mechanism m, String name, Link l, Vec3 pin, double angle) {
        Vec3 centre =
                new Vec3(
                        l.centre() * Math.cos(l.centreAngle()),
                        l.centre() * Math.sin(l.centreAngle()),
                        0);
        Inertia j = Inertia.principal(l.inertia(), l.inertia(), l.inertia());
        MassProperties mass = new MassProperties(l.mass(), centre, j);
        return m.body(name, new Pose(pin, Rotation.about(Vec3.Z, angle)), mass);
    }

    /** Upper point at distance r from a and s from b. */
    private static Vec3 meeting(Vec3 a, double r, Vec3 b, double s) {
        Vec3 ab = b.minus(a);
        double d = ab.length();
        double along = (r * r - s * s + d * d) / (2 * d);
        double across = Math.sqrt(r * r - along * along);
        Vec3 u = ab.unit();
        return a.plus(u.times(along)).plus(Vec3.Z.cross(u).times(across));
    }

    /** Angles of coupler and rocker [rad]. */
    public double[] angles() {
        return new double[] {angle3, angle4};
    }

    /** Angular speeds of coupler and rocker [rad/s]. */
    public double[] rates() {
        State s = balance.state();
        return new double[] {s.v[6 * coupler.index() + 5], s.v[6 * rocker.index() + 5]};
    }

    /** Angular accelerations of coupler and rocker [rad/s2]. */
    public double[] accelerations() {
        State s = balance.state();
        return new double[] {s.a[6 * coupler.index() + 5], s.a[6 * rocker.index() + 5]};
    }

    /**
     * Pin forces F12x, F12y, F32x, F32y, F43x, F43y, F14x, F14y: of the first on the second [N].
     */
    public double[] forces() {
        double[] f = new double[8];
        PairJoint[] pins = {p12, p23, p34, p14};
        for (int i = 0; i < 4; i++) {
            f[2 * i] = balance.load(pins[i], Freedom.TX);
            f[2 * i + 1] = balance.load(pins[i], Freedom.TY);
        }
        return f;
    }

    /** Torque on the crank [N m]. */
    public double torque() {
        return balance.load(drive);
    }
}
