// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.mechanics.Mechanism;
import foldwright.mechanics.body.Body;
import foldwright.mechanics.body.MassProperties;
import foldwright.mechanics.body.Pose;
import foldwright.mechanics.body.State;
import foldwright.mechanics.body.Vec3;
import foldwright.mechanics.force.Laws;
import foldwright.mechanics.joint.Coordinate;
import foldwright.mechanics.joint.Driver;
import foldwright.mechanics.joint.Friction;
import foldwright.mechanics.joint.FrictionBound;
import foldwright.mechanics.joint.JointKind;
import foldwright.mechanics.joint.PairJoint;
import foldwright.mechanics.joint.PrescribedMotion;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Friction that depends on the joint's own load, against closed forms of Coulomb friction. */
class FrictionTest {
    private final Mechanism m = new Mechanism();

    @Test
    void slidingBlockStopsAfterV2Over2MuG() {
        m.gravity(new Vec3(0, 0, -9.81));
        Body b = block("block", Vec3.ZERO);
        PairJoint rail = m.joint("rail", JointKind.PRISMATIC, m.base(), b, Vec3.ZERO, Vec3.X);
        Coordinate way = m.travel(m.base(), b, Vec3.ZERO, Vec3.X);
        Friction f = m.friction("mu", way, FrictionBound.slide(rail, .3), 1e-8);
        State start = m.start();
        start.move(b, Vec3.X, Vec3.ZERO);
        Stepper run = new Stepper(m, start, Settings.ofStep(1e-3));
        run.runTo(1);
        double distance = 1 / (2 * .3 * 9.81);
        // first step without friction load history and last step: half a step each at 1 m/s
        assertThat(run.state().x[3]).isCloseTo(distance, within(1e-3));
        assertThat(f.mode()).isEqualTo(Friction.Mode.STICK);
        assertThat(run.ledger().friction()).isCloseTo(.5, within(1e-3));
        assertThat(run.ledger().closing()).isCloseTo(0, within(1e-5));
        double speed = run.state().v[6];
        assertThat(speed).as("really at rest").isCloseTo(0, within(1e-9));
    }

    /** Pushed at offset e, a guide of length l carries N = F e/l at both ends: F = load/(1 - k). */
    @ParameterizedTest
    @ValueSource(doubles = {.01, .03, .049, .051, .08})
    void shortGuideJamsWhenTheFrictionConeCloses(double offset) {
        double length = .02;
        double mu = .2;
        Body b = block("block", Vec3.ZERO);
        PairJoint guide = m.joint("guide", JointKind.PRISMATIC, m.base(), b, Vec3.ZERO, Vec3.X);
        Vec3 at = new Vec3(0, offset, 0);
        Body pusher = block("pusher", at);
        m.joint("pusher guide", JointKind.PRISMATIC, m.base(), pusher, at, Vec3.X);
        m.joint("contact", JointKind.POINT_ON_PLANE, pusher, b, at, Vec3.X);
        Coordinate way = m.travel(m.base(), b, Vec3.ZERO, Vec3.X);
        m.law("load", way, Laws.constant(-10));
        m.friction("guide friction", way, FrictionBound.guide(guide, mu, length), 1e-8);
        Driver push =
                m.drive(
                        "push",
                        m.travel(m.base(), pusher, at, Vec3.X),
                        PrescribedMotion.uniform(0, .01, 0));
        MovingBalance r = new Kinetostatics(m).solve(m.start(), Kinetostatics.Inertia.IGNORED);
        double k = 2 * mu * offset / length;
        // the search for the locking share stops at 1e-4
        assertThat(r.amplification()).isCloseTo(k, within(3e-4 * k));
        if (k < 1) {
            assertThat(r.outcome()).isEqualTo(MovingBalance.Outcome.BALANCED);
            double force = 10 / (1 - k);
            assertThat(r.balance().load(push)).isCloseTo(force, within(1e-6 * force));
        } else {
            assertThat(r.outcome()).isEqualTo(MovingBalance.Outcome.LOCKED);
            assertThat(r.reachableShare()).isCloseTo(1 / k, within(3e-4));
        }
    }

    /** A pin of radius r turning under a load F resists with mu r F (friction circle). */
    @Test
    void pinResistsByItsFrictionCircle() {
        m.gravity(new Vec3(0, -9.81, 0));
        Body wheel = block("wheel", Vec3.ZERO);
        PairJoint pin = m.joint("pin", JointKind.REVOLUTE, m.base(), wheel, Vec3.ZERO, Vec3.Z);
        Coordinate turn = m.angle(m.base(), wheel, Vec3.Z);
        m.friction("bush", turn, FrictionBound.pin(pin, .3, .004), 1e-6);
        Driver d = m.drive("drive", turn, PrescribedMotion.uniform(0, 1, 0));
        MovingBalance r = new Kinetostatics(m).solve(m.start(), Kinetostatics.Inertia.IGNORED);
        double torque = .3 * .004 * 9.81;
        assertThat(r.balance().load(d)).isCloseTo(torque, within(1e-9));
    }

    private Body block(String name, Vec3 at) {
        return m.body(
                name, Pose.at(at), MassProperties.block(1, Vec3.ZERO, new Vec3(.02, .02, .02)));
    }
}
