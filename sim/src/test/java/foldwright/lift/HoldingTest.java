// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import static org.assertj.core.api.Assertions.assertThat;

import foldwright.mechanics.joint.FrictionBound;
import foldwright.mechanics.solve.Equilibrium;
import foldwright.mechanics.solve.Statics;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Statics finds the state in which a lift is held by friction wherever the thread is self-locking:
 * Tr10x2 from tan(lead angle) cos(flank angle) = 0.0683 on (Shigley, Mechanical Engineering Design,
 * 9th ed., p. 418), with a detent of any strength beside it.
 */
class HoldingTest {
    @ParameterizedTest
    @CsvSource({".10, 0", ".15, 0", ".15, .015", ".05, 1"})
    void heldAtEveryHeight(double friction, double detent) {
        var machine = Sketch.vanBench().build();
        for (double height = .04; height < .27; height += .01) {
            DrivenLift lift = new DrivenLift(machine, Give.IDEAL, friction, height);
            for (DrivenLift.Rotor rotor : lift.rotors()) {
                lift.mechanism()
                        .friction("detent", rotor.turn(), FrictionBound.constant(detent), 1e-6);
            }
            Equilibrium held = new Statics(lift.mechanism()).holding(lift.start());
            assertThat(held.failure()).as("height %.2f m", height).isEmpty();
        }
    }
}
