// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.gantry.replay.Replay;
import foldwright.gantry.replay.ReplayResult;
import foldwright.gantry.replay.ReplaySettings;
import foldwright.gantry.route.MotionRelation;
import foldwright.gantry.route.RouteCheck;
import foldwright.machine.file.MachineFile;
import foldwright.motion.MotionLimits;
import foldwright.motion.PlannedCourse;
import foldwright.motion.Planner;
import foldwright.motion.Probes;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Layouts are files: four known ones and one invented run from their files alone. */
class LayoutFilesTest {
    private static final String RESOURCES = "../scenes/gantry-";

    private static GantryModel read(String file) throws Exception {
        return GantryAssembly.of(MachineFile.read(Path.of(file)).machine().gantry().orElseThrow());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../scenes/class-plotter.json",
                "../scenes/van-bench.json",
                "../scenes/field-printer.json",
                RESOURCES + "one-end.json",
                RESOURCES + "riding-motors.json"
            })
    void aSquareIsReplayed(String file) throws Exception {
        GantryModel model = read(file);
        assertThat(RouteCheck.check(model.layout())).isEmpty();
        MotionLimits limits =
                MotionLimits.alongPath(
                        new MotionLimits.AxisLimits(0.1, 2, 60),
                        MotionLimits.Ramps.JERK_LIMITED,
                        new MotionLimits.Rounded(2e-5));
        var source = Probes.square(0.06, 0.06, 0.04, 0.1);
        ReplayResult r =
                new Replay(model, ReplaySettings.usual(model.layout().travel()))
                        .run(new PlannedCourse(new Planner(source, limits)));
        assertThat(r.events().lostSteps()).isZero();
        assertThat(r.error().peak()).isBetween(1e-6, 0.5e-3);
        assertThat(r.leastTension()).isPositive();
    }

    /** A pinion that climbs a belt at rest, and a loop pulled at one side: a radius a radian. */
    @Test
    void drivesOfOneAxisMoveByTheirPitchRadius() throws Exception {
        double r = 20 * 0.002 / (2 * Math.PI);
        for (String file : new String[] {"one-end.json", "riding-motors.json"}) {
            GantryKernel k = new GantryKernel(read(RESOURCES + file));
            MotionRelation relation = k.relation();
            assertThat(Math.abs(relation.yPerAngle(0))).isCloseTo(r, within(1e-6 * r));
            assertThat(Math.abs(relation.xPerAngle(1))).isCloseTo(r, within(1e-6 * r));
        }
    }

    /** One drive pulls off centre: racking by w F; the shaft to the far side takes most of it. */
    @Test
    void aDriveAtOneEndSkewsMoreThanAtBoth() throws Exception {
        GantryModel one = read(RESOURCES + "one-end.json");
        GantryModel both = read("../scenes/field-printer.json");
        Load push = Load.accelerating(0, 3);
        double y = one.layout().travel().yMid();
        double single = Math.abs(new Statics(one, Statics.Hold.FIELDS).settle(0, y, push).skew());
        double coupled = Math.abs(new Statics(both, Statics.Hold.FIELDS).settle(0, y, push).skew());
        assertThat(single).isGreaterThan(3 * coupled);
    }
}
