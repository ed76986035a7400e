// SPDX-License-Identifier: Apache-2.0
package foldwright.proof.multibody;

import foldwright.mechanics.Mechanism;
import foldwright.mechanics.body.Body;
import foldwright.mechanics.body.Inertia;
import foldwright.mechanics.body.Marker;
import foldwright.mechanics.body.MassProperties;
import foldwright.mechanics.body.Pose;
import foldwright.mechanics.body.Rotation;
import foldwright.mechanics.body.State;
import foldwright.mechanics.body.Vec3;
import foldwright.mechanics.force.Laws;
import foldwright.mechanics.joint.Coordinate;
import foldwright.mechanics.joint.Driver;
import foldwright.mechanics.joint.Freedom;
import foldwright.mechanics.joint.JointKind;
import foldwright.mechanics.joint.PairJoint;
import foldwright.mechanics.joint.PrescribedMotion;
import foldwright.mechanics.solve.Equilibrium;
import foldwright.mechanics.solve.Kinetostatics;
import java.util.ArrayList;
import java.util.List;

/**
 * One side of a scissor lift in the x-y plane, gravity along -y: left foot pinned, right foot in a
 * slot, platform pinned at the left top node and in a slot at the right one; every pin is a full
 * three-dimensional hinge, so the closed loops are redundant.
 */
public final class Scissor {
    public static final double GRAVITY = 9.81;

    /**
     * @param stages number of X's
     * @param arm length pin to pin [m]
     * @param angle of the arms from the horizontal at assembly [rad]
     * @param armMass of each arm, slender and uniform [kg]
     * @param platformMass [kg]
     * @param loadAt place of the platform's centre of mass, from the left, as a share of the span
     *     [1]
     */
    public record Case(
            int stages,
            double arm,
            double angle,
            double armMass,
            double platformMass,
            double loadAt) {}

    public final Mechanism mechanism = new Mechanism();
    public final List<PairJoint> centres = new ArrayList<>();
    public final List<PairJoint> lefts = new ArrayList<>();
    public final List<PairJoint> rights = new ArrayList<>();
    public final PairJoint leftFoot;
    public final PairJoint rightFoot;
    public final Driver foot;
    public final Coordinate footTravel;
    public final Body platform;
    private final Case set;
    private final double span;
    private final double rise;

    public Scissor(Case set) {
        this.set = set;
        span = set.arm() * Math.cos(set.angle());
        rise = set.arm() * Math.sin(set.angle());
        mechanism.gravity(new Vec3(0, -GRAVITY, 0));
        List<Body> rising = new ArrayList<>();
        List<Body> falling = new ArrayList<>();
        for (int k = 0; k < set.stages(); k++) {
            rising.add(arm("rising arm " + k, node(0, k), set.angle()));
            falling.add(arm("falling arm " + k, node(1, k), Math.PI - set.angle()));
        }
        platform = platform();
        leftFoot = pin("left foot", mechanism.base(), rising.get(0), node(0, 0));
        Body slider = slider();
        mechanism.joint(
                "guide",
                JointKind.PRISMATIC,
                mechanism.base().markerFromBase(guide()),
                slider.markerFromBase(guide()));
        rightFoot = pin("right foot", slider, falling.get(0), node(1, 0));
        for (int k = 0; k < set.stages(); k++) {
            Body up = rising.get(k);
            Body down = falling.get(k);
            centres.add(pin("centre " + k, down, up, node(0.5, k + 0.5)));
            if (k + 1 < set.stages()) {
                lefts.add(pin("left " + k, rising.get(k + 1), down, node(0, k + 1)));
                rights.add(pin("right " + k, falling.get(k + 1), up, node(1, k + 1)));
            }
        }
        Vec3 leftTop = node(0, set.stages());
        Vec3 rightTop = node(1, set.stages());
        pin("left top", platform, falling.get(set.stages() - 1), leftTop);
        slot("right top", platform, rising.get(set.stages() - 1), rightTop);
        footTravel = mechanism.travel(baseAlongX(), slider.marker(Vec3.ZERO));
        foot = mechanism.drive("foot", footTravel, PrescribedMotion.uniform(span, 0, 0));
    }

    private Vec3 node(double x, double y) {
        return new Vec3(x * span, y * rise, 0);
    }

    private Body arm(String name, Vec3 foot, double angle) {
        Vec3 end = new Vec3(set.arm(), 0, 0);
        MassProperties rod = MassProperties.rod(Math.max(set.armMass(), 1e-9), Vec3.ZERO, end);
        return mechanism.body(name, new Pose(foot, Rotation.about(Vec3.Z, angle)), rod);
    }

    private Body platform() {
        MassProperties mass =
                new MassProperties(
                        set.platformMass(),
                        new Vec3(set.loadAt() * span, 0, 0),
                        Inertia.principal(1e-3, 1e-3, 1e-3));
        return mechanism.body("platform", Pose.at(node(0, set.stages())), mass);
    }

    private PairJoint pin(String name, Body a, Body b, Vec3 at) {
        return mechanism.joint(name, JointKind.REVOLUTE, a, b, Pose.at(at));
    }

    private PairJoint slot(String name, Body a, Body b, Vec3 at) {
        return mechanism.joint(name, JointKind.PIN_IN_SLOT, a, b, Pose.at(at));
    }

    private Marker baseAlongX() {
        return mechanism.base().marker(Vec3.ZERO, Vec3.X);
    }

    private Body slider() {
        Inertia little = Inertia.principal(1e-9, 1e-9, 1e-9);
        return mechanism.body(
                "slider", Pose.at(node(1, 0)), new MassProperties(1e-6, Vec3.ZERO, little));
    }

    private Pose guide() {
        return new Pose(node(1, 0), Rotation.frame(Vec3.X));
    }

    /** Load of a pin on its second body, along base axes as they were at assembly [N]. */
    public static Vec3 force(Equilibrium e, PairJoint pin) {
        return new Vec3(e.load(pin, Freedom.TX), e.load(pin, Freedom.TY), e.load(pin, Freedom.TZ));
    }

    /** Pull of the drive on the foot, inwards [N]. */
    public double pull(Equilibrium e) {
        return -e.load(foot);
    }

    /** Balance at the assembly angle with the foot at a rate [m/s] and acceleration [m/s2]. */
    public Equilibrium moving(double rate, double acceleration) {
        foot.follow(PrescribedMotion.uniform(span, rate, acceleration));
        return new Kinetostatics(mechanism)
                .solve(mechanism.start(), Kinetostatics.Inertia.INCLUDED)
                .balance();
    }

    /** Height of the platform's pin above the left foot [m]. */
    public double height(State s) {
        return s.point(platform.marker(Vec3.ZERO)).y();
    }

    /** Distance of the feet [m]. */
    public double footDistance(State s) {
        return footTravel.value(s);
    }

    /** Arm angle from the distance of the feet [rad]. */
    public double angle(State s) {
        return Math.acos(footDistance(s) / set.arm());
    }

    /** Spring between the feet, drive let go: rate [N/m], free length [m]. */
    public Scissor withSpring(double rate, double free) {
        foot.release();
        mechanism.law("spring", footTravel, Laws.spring(rate, free, 0));
        return this;
    }
}
