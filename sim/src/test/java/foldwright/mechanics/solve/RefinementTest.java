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
import foldwright.mechanics.joint.JointKind;
import org.junit.jupiter.api.Test;

/** A mass on a spring, 2 Hz, let go at 10 mm: closed form x = 10 mm cos(4 pi t). */
class RefinementTest {
    private static final double OMEGA = 4 * Math.PI;

    private static double[] place(double step) {
        Mechanism m = new Mechanism();
        Vec3 size = new Vec3(.1, .1, .1);
        Body b = m.body("mass", Pose.ORIGIN, MassProperties.block(1, Vec3.ZERO, size));
        m.joint("rail", JointKind.PRISMATIC, m.base(), b, Vec3.ZERO, Vec3.X);
        m.law("spring", m.travel(m.base(), b, Vec3.ZERO, Vec3.X), Laws.spring(OMEGA * OMEGA, 0, 0));
        State start = m.start();
        start.place(b, Pose.at(new Vec3(0.01, 0, 0)));
        Stepper run = new Stepper(m, start, Settings.ofStep(step));
        run.runTo(0.6);
        return new double[] {run.state().x[3]};
    }

    @Test
    void takesTheErrorOfSecondOrderAway() {
        double[] exact = {0.01 * Math.cos(OMEGA * 0.6)};
        Refinement fine = Refinement.of(RefinementTest::place, 1e-3);
        Refinement coarse = Refinement.of(RefinementTest::place, 2e-3);
        double error = fine.plain()[0] - exact[0];
        assertThat(Math.abs(error)).isGreaterThan(1e-7);
        assertThat(fine.error()[0]).isCloseTo(error, within(0.02 * Math.abs(error)));
        assertThat(fine.refinedGap(exact)).isLessThan(0.02 * fine.plainGap(exact));
        assertThat(Refinement.order(fine, coarse, 0)).isCloseTo(2, within(0.02));
    }
}
