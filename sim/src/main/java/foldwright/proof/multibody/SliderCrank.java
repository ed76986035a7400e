// SPDX-License-Identifier: Apache-2.0
package foldwright.proof.multibody;

import foldwright.mechanics.Mechanism;
import foldwright.mechanics.body.Body;
import foldwright.mechanics.body.Inertia;
import foldwright.mechanics.body.MassProperties;
import foldwright.mechanics.body.Pose;
import foldwright.mechanics.body.Rotation;
import foldwright.mechanics.body.Vec3;
import foldwright.mechanics.joint.Coordinate;
import foldwright.mechanics.joint.Driver;
import foldwright.mechanics.joint.Freedom;
import foldwright.mechanics.joint.FrictionBound;
import foldwright.mechanics.joint.JointKind;
import foldwright.mechanics.joint.PairJoint;
import foldwright.mechanics.joint.PrescribedMotion;
import foldwright.mechanics.solve.Equilibrium;
import foldwright.mechanics.solve.Kinetostatics;

/**
 * Slider-crank in the x-y plane without gravity, the crank driven at a prescribed rate, dry
 * friction mu |N| on the slider.
 */
public final class SliderCrank {
    /**
     * @param crank length [m]
     * @param rod length [m]
     * @param crankMass [kg], centred on its bearing
     * @param rodMass [kg], centred
     * @param rodInertia about its centre [kg m2]
     * @param sliderMass [kg]
     */
    public record Parts(
            double crank,
            double rod,
            double crankMass,
            double rodMass,
            double rodInertia,
            double sliderMass) {
        /** Data of Ravn (1998) and Flores et al. (2006), from memory. */
        public static final Parts CLEARANCE_LITERATURE = new Parts(.05, .12, .30, .21, 2.5e-5, .14);
    }

    private final PairJoint crankPin;
    private final PairJoint gudgeon;
    private final PairJoint guide;
    private final Driver drive;
    private final Body rod;
    private final Body slider;
    private final Equilibrium balance;

    /**
     * Loads at one instant.
     *
     * @param angle of the crank from the slider's line [rad]
     * @param speed of the crank, constant [rad/s]
     * @param mu friction coefficient of the slider
     */
    public SliderCrank(Parts p, double angle, double speed, double mu) {
        Mechanism m = new Mechanism();
        Vec3 pin = new Vec3(p.crank() * Math.cos(angle), p.crank() * Math.sin(angle), 0);
        double lean = -Math.asin(pin.y() / p.rod());
        Vec3 end = new Vec3(pin.x() + p.rod() * Math.cos(lean), 0, 0);
        Body crank =
                m.body(
                        "crank",
                        new Pose(Vec3.ZERO, Rotation.about(Vec3.Z, angle)),
                        mass(p.crankMass(), Vec3.ZERO, 1e-5));
        rod =
                m.body(
                        "rod",
                        new Pose(pin, Rotation.about(Vec3.Z, lean)),
                        mass(p.rodMass(), new Vec3(p.rod() / 2, 0, 0), p.rodInertia()));
        slider = m.body("slider", Pose.at(end), mass(p.sliderMass(), Vec3.ZERO, 1e-5));
        m.joint("bearing", JointKind.REVOLUTE, m.base(), crank, Pose.ORIGIN);
        // hinge axes stay along the base's, so loads read in the axes of the first body are turned
        crankPin = m.joint("crank pin", JointKind.REVOLUTE, rod, crank, Pose.at(pin));
        gudgeon = m.joint("gudgeon", JointKind.REVOLUTE, rod, slider, Pose.at(end));
        Pose line = new Pose(end, Rotation.frame(Vec3.X, Vec3.Y));
        guide = m.joint("guide", JointKind.PRISMATIC, m.base(), slider, line);
        Coordinate turn = m.angle(m.base(), crank, Vec3.Z);
        drive = m.drive("drive", turn, PrescribedMotion.uniform(0, speed, 0));
        if (mu > 0) {
            Coordinate way = m.travel(m.base(), slider, end, Vec3.X);
            m.friction("slide", way, FrictionBound.slide(guide, mu), 1e-9);
        }
        balance = new Kinetostatics(m).solve(m.start(), Kinetostatics.Inertia.INCLUDED).balance();
    }

    private static MassProperties mass(double m, Vec3 centre, double inertia) {
        return new MassProperties(m, centre, Inertia.principal(inertia, inertia, inertia));
    }

    /** Torque on the crank [N m]. */
    public double torque() {
        return balance.load(drive);
    }

    /** Force of the guide on the slider, along y [N]. */
    public double guideForce() {
        return balance.load(guide, Freedom.TX);
    }

    /** Force of the rod on the slider [N, base frame]. */
    public Vec3 onSlider() {
        return pinForce(gudgeon);
    }

    /** Force of the crank on the rod [N, base frame]. */
    public Vec3 onRod() {
        return pinForce(crankPin).times(-1);
    }

    /** Joint axes were along the base's at assembly, which is this instant. */
    private Vec3 pinForce(PairJoint pin) {
        return new Vec3(balance.load(pin, Freedom.TX), balance.load(pin, Freedom.TY), 0);
    }

    /** Slider position, speed and acceleration along x [m, m/s, m/s2]. */
    public Vec3 slider() {
        int i = slider.index();
        return new Vec3(
                balance.state().x[3 * i], balance.state().v[6 * i], balance.state().a[6 * i]);
    }

    /** Angular speed of the rod [rad/s]. */
    public double rodRate() {
        return balance.state().angularVelocity(rod).z();
    }
}
