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
import foldwright.mechanics.force.ForceLaw;
import foldwright.mechanics.joint.Coordinate;
import foldwright.mechanics.joint.JointKind;
import org.junit.jupiter.api.Test;

/**
 * A 50-pole stepper, torque -T sin(50 (angle - field)), stays with its field also on coarse steps.
 */
class StepMotorTest {
    private static final double TORQUE = .3;
    private static final double SPEED = 2 * Math.PI * .27;

    private static final class FieldLaw implements ForceLaw {
        @Override
        public void evaluate(double value, double rate, double time, Response out) {
            double lag = 50 * (value - SPEED * time);
            out.clear();
            out.loss = -2e-3 * rate;
            out.force = -TORQUE * Math.sin(lag) + out.loss;
            out.stiffness = 50 * TORQUE * Math.cos(lag);
            out.damping = 2e-3;
        }

        @Override
        public double largestUpdate() {
            return Math.PI / 2 / 50;
        }
    }

    @Test
    void doesNotJumpPolesWithinNewton() {
        for (double step : new double[] {1e-3, 5e-3, 1e-2, 2e-2}) {
            Mechanism m = new Mechanism();
            MassProperties rotor =
                    new MassProperties(.1, Vec3.ZERO, Inertia.principal(5e-6, 5e-6, 5e-6));
            Body b = m.body("rotor", Pose.ORIGIN, rotor);
            m.joint("bearing", JointKind.REVOLUTE, m.base(), b, Vec3.ZERO, Vec3.Z);
            Coordinate turn = m.angle(m.base(), b, Vec3.Z);
            m.law("motor", turn, new FieldLaw());
            Stepper run = new Stepper(m, m.start(), Settings.ofStep(step));
            assertThat(run.runTo(2)).isEqualTo(Stepper.Outcome.DONE);
            // drag at speed leaves a small steady lag; a pole more would be 0.126 rad
            double lag = Math.asin(2e-3 * SPEED / TORQUE) / 50;
            assertThat(turn.value(run.state()))
                    .as("step %s", step)
                    .isCloseTo(SPEED * run.state().time - lag, within(5e-3));
        }
    }
}
