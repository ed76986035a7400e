// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import foldwright.viewer.Headless;
import org.junit.jupiter.api.Test;

/**
 * Heights and foot travel of the demo machines against the closed forms H = n L sin(theta), x = L
 * cos(theta).
 */
class LiftShapeTest {
    @Test
    void heightsOfTheDemoMachines() {
        assertHeights("van-bench", 2 * 0.190, 5.13, 46.0);
        assertHeights("class-plotter", 0.255, 4.20, 20.0);
        assertHeights("field-printer", 3 * 0.095, 7.86, 52.0);
    }

    private static void assertHeights(String name, double lengths, double flat, double top) {
        LiftShape shape = new LiftShape(Headless.machine(name));
        assertThat(shape.flat()).isCloseTo(lengths * Math.sin(Math.toRadians(flat)), offset(1e-9));
        assertThat(shape.top()).isCloseTo(lengths * Math.sin(Math.toRadians(top)), offset(1e-9));
    }

    @Test
    void armsKeepTheirLengthAndPinsTheirPlaceAtEveryHeight() {
        LiftShape shape = new LiftShape(Headless.machine("field-printer"));
        LiftShape.Joints j = shape.joints();
        for (int k = 0; k <= 20; k++) {
            double h = shape.flat() + (shape.top() - shape.flat()) * k / 20;
            shape.solve(h, j);
            assertThat(j.z[3]).isCloseTo(h, offset(1e-12));
            for (int i = 0; i < 3; i++) {
                double rising = Math.hypot(j.slidingX[i + 1] - j.fixedX[i], j.z[i + 1] - j.z[i]);
                assertThat(rising).isCloseTo(0.095, offset(1e-12));
                assertThat(j.fixedX[i + 1]).isCloseTo(0, offset(1e-12));
            }
        }
    }

    @Test
    void footTravelOfTheVanBench() {
        LiftShape shape = new LiftShape(Headless.machine("van-bench"));
        LiftShape.Joints flat = shape.joints();
        LiftShape.Joints top = shape.joints();
        shape.solve(shape.flat(), flat);
        shape.solve(shape.top(), top);
        double travel = 0.190 * (Math.cos(Math.toRadians(5.13)) - Math.cos(Math.toRadians(46)));
        assertThat(flat.slidingX[0] - top.slidingX[0]).isCloseTo(travel, offset(1e-9));
    }

    @Test
    void pulleysTurnWithTheScrews() {
        MachineScene scene = new MachineScene(Headless.machine("van-bench"));
        scene.place(scene.shape().top());
        // 57.25 mm of foot travel on a lead of 2 mm: 28.6 turns.
        assertThat(scene.lift().footTravel() / 0.002).isCloseTo(28.6, offset(0.05));
    }
}
