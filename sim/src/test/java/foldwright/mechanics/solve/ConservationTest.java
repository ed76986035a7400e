// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.mechanics.Mechanism;
import foldwright.mechanics.body.Body;
import foldwright.mechanics.body.MassProperties;
import foldwright.mechanics.body.Pose;
import foldwright.mechanics.body.Rotation;
import foldwright.mechanics.body.State;
import foldwright.mechanics.body.Vec3;
import foldwright.mechanics.force.Laws;
import foldwright.mechanics.joint.JointKind;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;

/** Free chains of random bodies, joints and springs keep momentum and energy. */
class ConservationTest {
    private static final JointKind[] KINDS = {
        JointKind.REVOLUTE, JointKind.SPHERICAL, JointKind.UNIVERSAL, JointKind.CYLINDRICAL
    };

    @Property(tries = 20, seed = "20261125")
    void freeChainKeepsMomentumAndEnergy(@ForAll @IntRange(min = 0, max = 1 << 30) int seed) {
        Random random = new Random(seed);
        Mechanism m = new Mechanism();
        int count = 2 + random.nextInt(3);
        Body before = null;
        for (int i = 0; i < count; i++) {
            Vec3 at = new Vec3(i, 0, 0);
            Vec3 size = new Vec3(1, .1 + .2 * random.nextDouble(), .1 + .2 * random.nextDouble());
            double mass = .5 + random.nextDouble();
            Body b = m.body("body " + i, Pose.at(at), MassProperties.block(mass, Vec3.ZERO, size));
            if (before != null) {
                Pose frame = new Pose(new Vec3(i - .5, 0, 0), Rotation.frame(vector(random)));
                m.joint("joint " + i, KINDS[random.nextInt(KINDS.length)], before, b, frame);
                m.law(
                        "spring " + i,
                        m.distance(before.marker(new Vec3(0, .3, 0)), b.marker(vector(random))),
                        Laws.spring(5, .2, 0));
            }
            before = b;
        }
        State start = m.start();
        Vec3 w = vector(random);
        for (Body b : m.bodies().subList(1, count + 1)) {
            start.move(b, w.cross(start.point(b.marker(Vec3.ZERO))), w);
        }
        Stepper run = new Stepper(m, start, Settings.ofStep(1e-3));
        double[] before6 = momenta(m, run.state());
        double energy = energy(run);
        assertThat(run.runTo(.5)).isEqualTo(Stepper.Outcome.DONE);
        double[] after6 = momenta(m, run.state());
        for (int i = 0; i < 6; i++) {
            // linear: rounding of equal and opposite reactions; angular: second order of the step
            double allowed = i < 3 ? 1e-9 : 1e-4;
            assertThat(after6[i]).as("momentum %d", i).isCloseTo(before6[i], within(allowed));
        }
        // second order of the step: (rate x step)2 of a few joule
        assertThat(energy(run)).isCloseTo(energy, within(1e-4 * (1 + energy)));
        assertThat(run.ledger().closing())
                .isCloseTo(0, within(1e-4 * run.ledger().turnover() + 1e-7));
    }

    private static double energy(Stepper run) {
        EnergyLedger e = run.ledger();
        return e.kinetic() + e.springs() + e.joints();
    }

    private static Vec3 vector(Random random) {
        return new Vec3(
                random.nextDouble() + .1, random.nextDouble() - .5, random.nextDouble() - .5);
    }

    /** Linear and angular momentum about the origin. */
    private static double[] momenta(Mechanism m, State s) {
        Vec3 p = Vec3.ZERO;
        Vec3 l = Vec3.ZERO;
        for (Body b : m.bodies().subList(1, m.bodies().size())) {
            Vec3 c = s.point(b.marker(Vec3.ZERO));
            Vec3 mv = s.velocity(b.marker(Vec3.ZERO)).times(b.mass().mass());
            Rotation turn = s.pose(b).attitude();
            Vec3 own = b.mass().inertia().apply(turn.inverse().apply(s.angularVelocity(b)));
            p = p.plus(mv);
            l = l.plus(c.cross(mv)).plus(turn.apply(own));
        }
        return new double[] {p.x(), p.y(), p.z(), l.x(), l.y(), l.z()};
    }
}
