// SPDX-License-Identifier: Apache-2.0
package foldwright.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.machine.file.BadMachineFile;
import foldwright.machine.file.MachineFile;
import foldwright.machine.linkage.ArmAngle;
import foldwright.machine.linkage.FoldGeometry;
import foldwright.machine.linkage.PinHeight;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Plane geometry of the fold, also with the centre pin out of the middle. */
class FoldGeometryTest {
    private static final double ROUNDING = 1e-12;

    private static FoldGeometry with(double centrePin) throws BadMachineFile {
        Machine machine = MachineFile.read(Path.of("../scenes/van-bench.json")).machine();
        return new FoldGeometry(
                MachineNumbers.with(machine, "lift.arm.centrePin", centrePin).lift());
    }

    @Test
    void middlePinsGiveTheUsualStack() throws BadMachineFile {
        FoldGeometry fold = with(0.5);
        double t = Math.toRadians(30);
        assertThat(fold.height(t)).isCloseTo(2 * 0.19 * 0.5, within(ROUNDING));
        assertThat(fold.spread(t, 0)).isCloseTo(0.19 * Math.cos(t), within(ROUNDING));
        assertThat(fold.spread(t, 2)).isCloseTo(fold.spread(t, 0), within(ROUNDING));
        assertThat(fold.levelStart(t, 2)).isZero();
        assertThat(fold.angle(new PinHeight(0.19))).isCloseTo(t, within(ROUNDING));
    }

    /**
     * Independent path: the pins are laid out by vectors. Both arms of a stage have their full
     * length between their pins, and meet at their centre pin.
     */
    @Test
    void offCentrePinsStillCloseEveryStage() throws BadMachineFile {
        for (double share : new double[] {0.45, 0.55, 0.6}) {
            FoldGeometry fold = with(share);
            double t = Math.toRadians(50);
            for (int stage = 1; stage <= 2; stage++) {
                double left = fold.levelStart(t, stage - 1);
                double right = left + fold.spread(t, stage - 1);
                double topLeft = fold.levelStart(t, stage);
                double topRight = topLeft + fold.spread(t, stage);
                double rise = fold.levelHeight(t, stage) - fold.levelHeight(t, stage - 1);
                assertThat(Math.hypot(topRight - left, rise)).isCloseTo(0.19, within(ROUNDING));
                assertThat(Math.hypot(right - topLeft, rise)).isCloseTo(0.19, within(ROUNDING));
                double crossing = left + share * (topRight - left);
                assertThat(right + share * (topLeft - right)).isCloseTo(crossing, within(ROUNDING));
            }
            // the height search halves its bracket 80 times
            assertThat(fold.angle(new PinHeight(fold.height(t)))).isCloseTo(t, within(1e-10));
        }
    }

    @Test
    void openingsOutOfReachAreNoNumbers() throws BadMachineFile {
        FoldGeometry fold = with(0.4);
        assertThat(fold.closes(Math.toRadians(20))).isFalse();
        assertThat(fold.angle(new ArmAngle(Math.toRadians(20)))).isNaN();
        assertThat(fold.angle(new PinHeight(0.1))).isNaN();
        assertThat(fold.height(new PinHeight(0.4))).isNaN();
    }
}
