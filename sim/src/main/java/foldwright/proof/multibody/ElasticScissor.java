// SPDX-License-Identifier: Apache-2.0
package foldwright.proof.multibody;

import foldwright.mechanics.Mechanism;
import foldwright.mechanics.body.Body;
import foldwright.mechanics.body.Inertia;
import foldwright.mechanics.body.MassProperties;
import foldwright.mechanics.body.Pose;
import foldwright.mechanics.body.Rotation;
import foldwright.mechanics.body.Vec3;
import foldwright.mechanics.joint.Freedom;
import foldwright.mechanics.joint.JointKind;
import foldwright.mechanics.joint.PairJoint;
import foldwright.mechanics.joint.Rows;
import foldwright.mechanics.solve.Equilibrium;
import foldwright.mechanics.solve.Linearisation;
import foldwright.mechanics.solve.Statics;
import java.util.List;

/**
 * Scissor with elastic arms, feet held: sag of the platform under a central load by linear theory.
 *
 * <p>Between two pins an arm is two rigid halves joined at their middle by the compliance of the
 * beam, referred to that middle: there the flexibility of a uniform beam is diagonal, L3/(12 EI)
 * for shear, L/(EI) for bending, L/(EA) for length, so the model is exact for loads at the pins.
 */
public final class ElasticScissor {
    /**
     * @param bending stiffness EI [N m2]
     * @param tension stiffness EA [N]
     */
    public record Beam(double bending, double tension) {}

    private final Mechanism m = new Mechanism();
    private final double half;
    private final Beam beam;
    private final double span;
    private final double rise;
    private final double angle;
    private final Body platform;

    /**
     * @param stages number of X's
     * @param arm length pin to pin [m]
     * @param angle of the arms [rad]
     */
    public ElasticScissor(int stages, double arm, double angle, Beam beam) {
        this.beam = beam;
        this.angle = angle;
        half = arm / 2;
        span = arm * Math.cos(angle);
        rise = arm * Math.sin(angle);
        Body below = m.base();
        Body belowOther = m.base();
        for (int k = 0; k < stages; k++) {
            Body[] rising = arm("rising " + k, node(0, k), angle);
            Body[] falling = arm("falling " + k, node(1, k), Math.PI - angle);
            pin("left " + k, below, rising[0], node(0, k));
            pin("right " + k, belowOther, falling[0], node(1, k));
            pin("centre " + k, falling[1], rising[1], node(.5, k + .5));
            below = falling[2];
            belowOther = rising[2];
        }
        platform = body("platform", node(0, stages), 0);
        pin("left top", platform, below, node(0, stages));
        rigid(
                m.joint(
                        "right top",
                        JointKind.PIN_IN_SLOT,
                        platform,
                        belowOther,
                        Pose.at(node(1, stages))));
    }

    private void pin(String name, Body a, Body b, Vec3 at) {
        rigid(m.joint(name, JointKind.REVOLUTE, a, b, Pose.at(at)));
    }

    /**
     * Pins give a hundredth of the usual ideal compliance: at flat arms it counts a hundredfold.
     */
    private static void rigid(PairJoint pin) {
        for (Freedom f : List.of(Freedom.TX, Freedom.TY)) {
            if (pin.row(f) >= 0) {
                pin.soften(pin.row(f), 0.01 * Rows.IDEAL, 0);
            }
        }
    }

    private Vec3 node(double x, double y) {
        return new Vec3(x * span, y * rise, 0);
    }

    private Body body(String name, Vec3 at, double turn) {
        MassProperties mass =
                new MassProperties(.05, Vec3.ZERO, Inertia.principal(1e-5, 1e-5, 1e-5));
        return m.body(name, new Pose(at, Rotation.about(Vec3.Z, turn)), mass);
    }

    /** Three rigid parts: foot quarter, middle half with the centre pin, top quarter. */
    private Body[] arm(String name, Vec3 foot, double turn) {
        Vec3 along = new Vec3(Math.cos(turn), Math.sin(turn), 0);
        Body[] parts = {
            body(name + " foot", foot, turn),
            body(name + " middle", foot.plus(along.times(half)), turn),
            body(name + " top", foot.plus(along.times(2 * half)), turn)
        };
        give(name + " lower", parts[0], parts[1], foot.plus(along.times(0.5 * half)), turn);
        give(name + " upper", parts[1], parts[2], foot.plus(along.times(1.5 * half)), turn);
        return parts;
    }

    private void give(String name, Body a, Body b, Vec3 at, double turn) {
        Pose frame = new Pose(at, Rotation.about(Vec3.Z, turn));
        PairJoint j = m.joint(name, JointKind.FIXED, a, b, frame);
        j.soften(j.row(Freedom.TX), half / beam.tension(), 0);
        j.soften(j.row(Freedom.TY), half * half * half / (12 * beam.bending()), 0);
        j.soften(j.row(Freedom.RZ), half / beam.bending(), 0);
    }

    /** Sag of the platform's middle per unit of load there [m/N]. */
    public double sagPerForce() {
        Equilibrium unloaded = new Statics(m).frictionless(m.start());
        Linearisation l = new Linearisation(m, unloaded);
        return l.compliance(platform.marker(new Vec3(span / 2, 0, 0)))[1][1];
    }

    /** Angle of the arms at assembly [rad]. */
    public double angle() {
        return angle;
    }
}
