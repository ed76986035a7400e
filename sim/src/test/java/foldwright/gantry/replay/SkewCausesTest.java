// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.gantry.model.GantryModel;
import foldwright.motion.MotionLimits;
import foldwright.motion.MotionLimits.AxisLimits;
import org.junit.jupiter.api.Test;

/** Causes that a steady figure misses, each with its share. */
class SkewCausesTest {
    private static SkewCauses of(GantryModel model, byte[] path) throws Exception {
        MotionLimits moving = Plotters.limits(MotionLimits.Ramps.JERK_LIMITED);
        MotionLimits stopping =
                MotionLimits.alongPath(
                        new AxisLimits(0.2, 4, 80),
                        MotionLimits.Ramps.JERK_LIMITED,
                        new MotionLimits.FullStops());
        return SkewCauses.of(
                model,
                ReplaySettings.usual(model.layout().travel()),
                () -> Plotters.course(path, moving),
                () -> Plotters.course(path, stopping));
    }

    /** One move along the bridge: no corner, and in the bad build the rails hide most of it. */
    @Test
    void railFrictionHidesSkewOfAPureMove() throws Exception {
        byte[] path = "G21 G90\nG0 X50 Y200\nG1 X250 F12000\n".getBytes();
        SkewCauses c = of(Plotters.bad(), path);
        assertThat(c.friction()).isLessThan(0);
        assertThat(c.ringing()).isPositive();
        assertThat(c.quasiStatic() + c.ringing() + c.cornerSteps() + c.friction())
                .isCloseTo(c.total(), within(1e-15));
    }

    @Test
    void cornersAtSpeedRingInAStiffMachine() throws Exception {
        SkewCauses c = of(Plotters.cured(), Plotters.sheet(3));
        assertThat(c.cornerSteps()).isPositive();
        assertThat(c.total()).isGreaterThan(c.quasiStatic());
        assertThat(c.line()).isPositive();
    }
}
