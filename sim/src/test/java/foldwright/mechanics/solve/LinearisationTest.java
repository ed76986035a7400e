// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.mechanics.Mechanism;
import foldwright.mechanics.body.Body;
import foldwright.mechanics.body.Inertia;
import foldwright.mechanics.body.MassProperties;
import foldwright.mechanics.body.Pose;
import foldwright.mechanics.body.Vec3;
import foldwright.mechanics.force.Laws;
import foldwright.mechanics.joint.Coordinate;
import foldwright.mechanics.joint.Freedom;
import foldwright.mechanics.joint.JointKind;
import foldwright.mechanics.joint.PairJoint;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Compliance and modes against handbook beams and oscillators. */
class LinearisationTest {
    /**
     * Cantilever of length L as two rigid halves joined by its compliance at the middle: tip
     * deflection per force L3/(3 EI), slope per force L2/(2 EI), slope per moment L/EI (any
     * handbook of strength of materials).
     */
    @Test
    void cantileverHasItsHandbookCompliance() {
        double length = .4;
        double ei = 20;
        Mechanism m = new Mechanism();
        Body tip =
                m.body(
                        "tip",
                        Pose.at(new Vec3(length, 0, 0)),
                        new MassProperties(.1, Vec3.ZERO, Inertia.principal(1e-4, 1e-4, 1e-4)));
        PairJoint beam =
                m.joint(
                        "beam",
                        JointKind.FIXED,
                        m.base(),
                        tip,
                        Pose.at(new Vec3(length / 2, 0, 0)));
        beam.soften(beam.row(Freedom.TY), Math.pow(length, 3) / (12 * ei), 0);
        beam.soften(beam.row(Freedom.RZ), length / ei, 0);
        Equilibrium rest = new Statics(m).frictionless(m.start());
        double[][] c = new Linearisation(m, rest).compliance(tip.marker(Vec3.ZERO));
        double deflection = Math.pow(length, 3) / (3 * ei);
        // the other rows give 1e-12
        assertThat(c[1][1]).isCloseTo(deflection, within(1e-9 * deflection));
        assertThat(c[5][1]).isCloseTo(length * length / (2 * ei), within(1e-9));
        assertThat(c[1][5]).isCloseTo(c[5][1], within(1e-12));
        assertThat(c[5][5]).isCloseTo(length / ei, within(1e-9));
        double mass = .1;
        double stiffness = 3 * ei / Math.pow(length, 3);
        double bare = Math.sqrt(stiffness / mass) / (2 * Math.PI);
        double found = new Linearisation(m, rest).modes(1).get(0).frequency();
        // the tip's own inertia 1e-4 kg m2 lowers it a little (Rayleigh: 9/4 j/(m L2) / 2)
        double lowered = bare * (1 - 9. / 8 * 1e-4 / (mass * length * length));
        assertThat(found).isCloseTo(lowered, within(1e-4 * bare));
    }

    /** Two equal masses on three equal springs: omega2 = k/m and 3 k/m (any vibration text). */
    @Test
    void twoMassesOnThreeSprings() {
        Mechanism m = new Mechanism();
        MassProperties mass = MassProperties.block(2, Vec3.ZERO, new Vec3(.1, .1, .1));
        Body a = m.body("a", Pose.ORIGIN, mass);
        Body b = m.body("b", Pose.at(Vec3.X), mass);
        m.joint("rail a", JointKind.PRISMATIC, m.base(), a, Vec3.ZERO, Vec3.X);
        m.joint("rail b", JointKind.PRISMATIC, m.base(), b, Vec3.X, Vec3.X);
        Coordinate xa = m.travel(m.base(), a, Vec3.ZERO, Vec3.X);
        Coordinate xb = m.travel(m.base(), b, Vec3.X, Vec3.X);
        Coordinate ab = m.travel(a, b, Vec3.X, Vec3.X);
        for (Coordinate c : List.of(xa, xb, ab)) {
            m.law("spring", c, Laws.spring(800, 0, 0));
        }
        Equilibrium rest = new Statics(m).frictionless(m.start());
        List<Mode> modes = new Linearisation(m, rest).modes(2);
        // joints' compliance 1e-12 lowers the stiffness by 1e-9 of itself
        assertThat(modes.get(0).omega2()).isCloseTo(400, within(1e-5));
        assertThat(modes.get(1).omega2()).isCloseTo(1200, within(1e-5));
    }

    /** A bar on its hinge, upright, falls over: omega2 = -3 g/(2 L). */
    @Test
    void uprightBarIsUnstable() {
        Mechanism m = new Mechanism();
        m.gravity(new Vec3(0, -9.81, 0));
        Vec3 end = new Vec3(0, .5, 0);
        Body bar = m.body("bar", Pose.ORIGIN, MassProperties.rod(1, Vec3.ZERO, end));
        m.joint("hinge", JointKind.REVOLUTE, m.base(), bar, Vec3.ZERO, Vec3.Z);
        Equilibrium rest = new Statics(m).frictionless(m.start());
        Mode mode = new Linearisation(m, rest).modes(1).get(0);
        assertThat(mode.stable()).isFalse();
        assertThat(mode.omega2()).isCloseTo(-1.5 * 9.81 / .5, within(1e-5));
    }

    @Test
    void equilibriumOnTheWrongBranchIsRefused() {
        Mechanism m = new Mechanism();
        m.gravity(new Vec3(0, -9.81, 0));
        Vec3 end = new Vec3(.5, 0, 0);
        Body bar = m.body("bar", Pose.ORIGIN, MassProperties.rod(1, Vec3.ZERO, end));
        m.joint("hinge", JointKind.REVOLUTE, m.base(), bar, Vec3.ZERO, Vec3.Z);
        m.branch("above the horizontal", m.angle(m.base(), bar, Vec3.Z), 0, Math.PI);
        Equilibrium rest = new Statics(m).frictionless(m.start());
        assertThat(rest.found()).isFalse();
        Failure f = rest.failure().orElseThrow();
        assertThat(f.cause()).isEqualTo(Failure.Cause.WRONG_BRANCH);
        assertThat(f.body()).isEqualTo("bar");
        assertThat(f.row()).isEqualTo("above the horizontal");
    }
}
