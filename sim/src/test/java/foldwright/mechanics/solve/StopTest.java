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
import foldwright.mechanics.joint.Coordinate;
import foldwright.mechanics.joint.JointKind;
import foldwright.mechanics.joint.Stop;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** One-sided stops: plastic impact, rest with the right push, letting go, the energy account. */
class StopTest {
    private final Mechanism m = new Mechanism();
    private Body mass;
    private Stop floor;

    @BeforeEach
    void dropOneKilogramFromTenCentimetres() {
        m.gravity(new Vec3(0, 0, -9.81));
        mass =
                m.body(
                        "mass",
                        Pose.at(new Vec3(0, 0, .1)),
                        MassProperties.block(1, Vec3.ZERO, new Vec3(.1, .1, .1)));
        m.joint("rail", JointKind.PRISMATIC, m.base(), mass, new Vec3(0, 0, .1), Vec3.Z);
        Coordinate height = m.travel(m.base(), mass, new Vec3(0, 0, .1), Vec3.Z);
        floor = m.stop("floor", height, -.1, Stop.Side.ABOVE);
    }

    @Test
    void fallsRestsAndCarriesTheWeight() {
        Stepper run = new Stepper(m, m.start(), Settings.ofStep(1e-3));
        assertThat(run.runTo(0.6)).isEqualTo(Stepper.Outcome.DONE);
        // the gap relaxes over two steps: exp(-200) of a step's way is left, then compliance
        assertThat(run.state().x[5]).isCloseTo(0, within(1e-7));
        assertThat(run.multiplier(floor.rowAt())).isCloseTo(9.81, within(1e-6));
        EnergyLedger e = run.ledger();
        double lost = e.damping() + e.numerical();
        assertThat(lost).as("all energy of height").isCloseTo(.981, within(1e-6));
        assertThat(e.closing()).isCloseTo(0, within(1e-9));
    }

    @Test
    void doesNotPull() {
        State start = m.start();
        start.x[5] = 0;
        start.move(mass, Vec3.Z, Vec3.ZERO);
        Stepper run = new Stepper(m, start, Settings.ofStep(1e-3));
        run.runTo(.1);
        double height = .1 - .5 * 9.81 * .01;
        // free flight is exact for the scheme but for its start
        assertThat(run.state().x[5]).isCloseTo(height, within(1e-6));
        assertThat(floor.engaged()).isFalse();
    }
}
