// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.mechanics.Mechanism;
import foldwright.mechanics.body.Body;
import foldwright.mechanics.body.MassProperties;
import foldwright.mechanics.body.Pose;
import foldwright.mechanics.body.Rotation;
import foldwright.mechanics.body.State;
import foldwright.mechanics.body.Vec3;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Jacobians of pair joints against central differences of the rows, far from the closed pose. */
class PairJointGradientTest {
    private static final double STEP = 1e-6;

    private final Random random = new Random(20261125);

    @ParameterizedTest
    @EnumSource(JointKind.class)
    void jacobianIsTheDerivativeOfTheRows(JointKind kind) {
        Mechanism mechanism = new Mechanism();
        Body a = body(mechanism, "a");
        Body b = body(mechanism, "b");
        PairJoint joint = mechanism.joint("j", kind, a, b, vector(), vector());
        State state = mechanism.start();
        for (Body each : new Body[] {a, b}) {
            state.place(each, new Pose(vector(), Rotation.about(vector(), 1.3)));
        }
        double[] phi = new double[mechanism.rowCount()];
        double[] g = new double[12 * joint.size()];
        joint.evaluate(state, phi, g, 0);
        double[] unused = g.clone();
        for (int k = 0; k < 2; k++) {
            for (int c = 0; c < 6; c++) {
                double[] up = new double[phi.length];
                double[] down = new double[phi.length];
                joint.evaluate(moved(state, joint.body(k), c, STEP), up, unused, 0);
                joint.evaluate(moved(state, joint.body(k), c, -STEP), down, unused, 0);
                for (int row = 0; row < joint.size(); row++) {
                    int at = 6 * (k * joint.size() + row) + c;
                    double slope =
                            (up[joint.rowAt() + row] - down[joint.rowAt() + row]) / (2 * STEP);
                    // rounding 1e-16 / 1e-6, truncation 1e-12
                    assertThat(g[at]).isCloseTo(slope, within(2e-9));
                }
            }
        }
    }

    private static State moved(State state, int body, int coordinate, double by) {
        State out = state.copy();
        if (coordinate < 3) {
            out.x[3 * body + coordinate] += by;
        } else {
            double[] turn = new double[3];
            turn[coordinate - 3] = by;
            out.turn(body, state.q, 4 * body, turn[0], turn[1], turn[2]);
        }
        return out;
    }

    private Body body(Mechanism mechanism, String name) {
        return mechanism.body(
                name,
                new Pose(vector(), Rotation.about(vector(), 0.7)),
                MassProperties.rod(1, vector(), vector()));
    }

    private Vec3 vector() {
        return new Vec3(random.nextGaussian(), random.nextGaussian(), random.nextGaussian());
    }
}
