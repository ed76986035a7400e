// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import foldwright.gantry.model.EnergyLedger;
import foldwright.gantry.model.GantryModel;
import foldwright.motion.Course;
import foldwright.motion.CourseSample;
import foldwright.motion.MotionLimits;
import foldwright.motion.ToolpathException;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Accuracy of the replay against finer steps, mirror images, events, refusals. */
class ReplayTest {
    private static final byte[] PATH = Plotters.sheet(6);

    private static final MotionLimits LIMITS = Plotters.limits(MotionLimits.Ramps.JERK_LIMITED);

    private static Course course(MotionLimits.Ramps ramps) throws ToolpathException {
        return Plotters.course(PATH, Plotters.limits(ramps));
    }

    private static ReplaySettings settings(GantryModel model, double step) {
        return ReplaySettings.usual(model.layout().travel()).withStep(step);
    }

    private static ReplayResult run(GantryModel model, double step) throws ToolpathException {
        return new Replay(model, settings(model, step))
                .run(course(MotionLimits.Ramps.JERK_LIMITED));
    }

    /** Every tenth of a second of a smooth replay, step 0.1 ms against 5 us. */
    @Test
    void smoothReplayIsWithinAMicrometreOfAFineOne() throws ToolpathException {
        for (GantryModel model :
                List.of(
                        Plotters.smooth(Plotters.bad()),
                        Plotters.smooth(Plotters.cured()),
                        Plotters.smooth(Plotters.crossed()))) {
            List<double[]> coarse = track(model, 1e-4, 10);
            List<double[]> fine = track(model, 5e-6, 200);
            double worst = 0;
            for (int i = 0; i < Math.min(coarse.size(), fine.size()); i++) {
                for (int k = 0; k < 3; k++) {
                    worst = Math.max(worst, Math.abs(coarse.get(i)[k] - fine.get(i)[k]));
                }
            }
            assertThat(worst).isLessThan(1e-6);
        }
    }

    /** Skew end to end and tool error, every so many steps. */
    private static List<double[]> track(GantryModel model, double step, int every)
            throws ToolpathException {
        List<double[]> rows = new ArrayList<>();
        long[] n = {0};
        ReplayListener look =
                (time, line, x, y, k) -> {
                    if (n[0]++ % every == 0) {
                        rows.add(
                                new double[] {
                                    k.skew() * k.model().span(),
                                    k.toolX() - x,
                                    k.toolY() - y - k.model().tool().y()
                                });
                    }
                };
        new Replay(model, settings(model, step))
                .run(Plotters.course(Plotters.sheet(2), LIMITS), List.of(look));
        return rows;
    }

    /** With play and friction: peaks and 99th percentiles, 0.1 ms against 10 us. */
    @Test
    void statisticsWithPlayAndFrictionHoldToSevenParts() throws ToolpathException {
        for (GantryModel model : List.of(Plotters.bad(), Plotters.cured())) {
            ReplayResult coarse = run(model, 1e-4);
            ReplayResult fine = run(model, 1e-5);
            same(coarse.skew().peak(), fine.skew().peak());
            same(coarse.skew().p99(), fine.skew().p99());
            same(coarse.errorX().peak(), fine.errorX().peak());
            same(coarse.errorX().p99(), fine.errorX().p99());
            same(coarse.errorY().p99(), fine.errorY().p99());
        }
    }

    private static void same(double coarse, double fine) {
        assertThat(coarse).isCloseTo(fine, within(7e-3 * fine));
    }

    /**
     * x to -x, both motors changing places: skew and x error change their sign, y error stays, to
     * the last bit, with play and friction on, also where belt rows change over the travel. Two
     * seconds of rattling would make any difference grow until it shows.
     */
    @Test
    void mirrorImageIsExact() throws ToolpathException {
        for (GantryModel model :
                List.of(
                        Plotters.bad(),
                        Plotters.cured(),
                        Plotters.crossed(),
                        Plotters.states(Plotters.bad()),
                        Plotters.oblique(),
                        Plotters.states(Plotters.oblique()))) {
            List<double[]> right = mirrored(model, 1);
            List<double[]> left = mirrored(model, -1);
            for (int i = 0; i < right.size(); i++) {
                double[] a = right.get(i);
                double[] b = left.get(i);
                // Adding zero takes the sign off a zero.
                assertThat(a[0] + 0.0).as("skew, step %d", i).isEqualTo(-b[0] + 0.0);
                assertThat(a[1] + 0.0).as("x, step %d", i).isEqualTo(-b[1] + 0.0);
                assertThat(a[2]).as("y, step %d", i).isEqualTo(b[2]);
            }
        }
    }

    private static List<double[]> mirrored(GantryModel model, int side) throws ToolpathException {
        Course course = course(MotionLimits.Ramps.JERK_LIMITED);
        Course turned =
                (time, out) -> {
                    boolean running = course.at(Math.min(time, 2), out) && time < 2;
                    // Turned about the middle of the travel; the origin below lies there.
                    out.x = side * (out.x - 0.15);
                    out.vx *= side;
                    out.ax *= side;
                    return running;
                };
        List<double[]> rows = new ArrayList<>();
        ReplayListener look =
                (time, line, x, y, k) ->
                        rows.add(
                                new double[] {
                                    k.skew(), k.toolX() - x, k.toolY() - y - k.model().tool().y()
                                });
        ReplaySettings usual = settings(model, 1e-4);
        ReplaySettings centred = new ReplaySettings(usual.step(), 0, usual.originY(), usual.tail());
        new Replay(model, centred).run(turned, List.of(look));
        return rows;
    }

    @Test
    void samePathSameBits() throws ToolpathException {
        ReplayResult a = run(Plotters.bad(), 1e-4);
        ReplayResult b = run(Plotters.bad(), 1e-4);
        assertThat(a.skew()).isEqualTo(b.skew());
        assertThat(a.error()).isEqualTo(b.error());
        assertThat(a.worstError()).isEqualTo(b.worstError());
    }

    @Test
    void aWeakMotorLosesStepsAndSaysWhere() throws ToolpathException {
        GantryModel strong = Plotters.cured();
        assertThat(run(strong, 1e-4).events().lostSteps()).isZero();
        GantryModel weak =
                strong.withMotors(
                        strong.motors().stream()
                                .map(
                                        m ->
                                                foldwright.gantry.model.AxisMotor.plain(
                                                        m.axle(), 0.02, m.rotorInertia()))
                                .toList());
        ReplayEvents events = run(weak, 1e-4).events();
        assertThat(events.lostSteps()).isPositive();
        assertThat(events.firstLossLine()).isPositive();
    }

    @Test
    void aSlackBeltIsCountedAndTheRunGoesOn() throws ToolpathException {
        GantryModel model = Plotters.cured();
        GantryModel slack =
                model.with(
                        model.layout()
                                .withBelt(0, model.layout().belts().get(0).withPretension(1)));
        ReplayResult r = run(slack, 1e-4);
        assertThat(r.events().slackSpells()).isPositive();
        assertThat(r.leastTension()).isZero();
        assertThat(r.events().toothJumps()).isPositive();
        assertThat(run(model, 1e-4).events().slackSpells()).isZero();
    }

    @Test
    void aPathBeyondTheTravelIsRefusedWithItsLine() {
        byte[] path = "G21 G90\nG0 X10 Y10\nG1 X310 Y10 F6000\n".getBytes();
        GantryModel model = Plotters.cured();
        assertThatThrownBy(
                        () ->
                                new Replay(model, settings(model, 1e-4))
                                        .run(
                                                Plotters.course(
                                                        path,
                                                        Plotters.limits(
                                                                MotionLimits.Ramps.TRAPEZOID))))
                .isInstanceOf(ToolpathException.class)
                .hasMessageContaining("line 3")
                .hasMessageContaining("travel of the carriage");
    }

    /** Input, heat and what is stored, with play, friction, slack limits and damping on. */
    @Test
    void energyLedgerCloses() throws ToolpathException {
        for (GantryModel model : List.of(Plotters.bad(), Plotters.cured(), Plotters.crossed())) {
            EnergyLedger[] ledger = new EnergyLedger[1];
            ReplayListener look =
                    (time, line, x, y, k) -> {
                        if (ledger[0] == null) {
                            ledger[0] = new EnergyLedger(k);
                        }
                        ledger[0].add(1e-4);
                    };
            new Replay(model, settings(model, 1e-4))
                    .run(course(MotionLimits.Ramps.JERK_LIMITED), List.of(look));
            EnergyLedger e = ledger[0];
            assertThat(e.fieldWork()).isGreaterThan(1);
            assertThat(Math.abs(e.closingError())).isLessThan(1.5e-4 * e.fieldWork());
        }
    }

    /** No allocation in a step: a hundred thousand of them with all statistics. */
    @Test
    void aStepAllocatesNothing() throws ToolpathException {
        var threads = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        GantryModel model = Plotters.states(Plotters.bad());
        var kernel = new foldwright.gantry.model.GantryKernel(model);
        ReplayStatistics statistics = new ReplayStatistics(kernel);
        Course course = course(MotionLimits.Ramps.JERK_LIMITED);
        CourseSample told = new CourseSample();
        course.at(0, told);
        kernel.stand(told.x - 0.15, told.y + 0.08);
        long before = 0;
        for (int n = 0; n < 120_000; n++) {
            if (n == 20_000) {
                before = threads.getCurrentThreadAllocatedBytes();
            }
            course.at(n * 1e-4, told);
            kernel.command(told.x - 0.15, told.y + 0.08, told.vx, told.vy);
            kernel.evaluate(1e-4);
            statistics.add(n * 1e-4, told.line, told.x - 0.15, told.y + 0.08);
            kernel.advance(1e-4);
        }
        // The reader may allocate a little for itself: well under a byte a step.
        assertThat(threads.getCurrentThreadAllocatedBytes() - before).isLessThan(100_000);
    }

    /** A machine stuck under a push stays where it is. */
    @Test
    void frictionSticksWithoutCreep() {
        GantryModel model = Plotters.cured();
        var kernel = new foldwright.gantry.model.GantryKernel(model);
        double h = 1e-4;
        for (int i = 0; i < 20_000; i++) {
            kernel.evaluate(h);
            kernel.advance(h);
        }
        double at = kernel.toolX();
        for (int i = 0; i < 100_000; i++) {
            kernel.evaluate(h);
            kernel.advance(h);
        }
        assertThat(kernel.toolX()).isCloseTo(at, within(1e-13));
    }

    @Test
    void histogramsAreExactToAHundredth() {
        LogHistogram histogram = new LogHistogram();
        for (int i = 1; i <= 100_000; i++) {
            histogram.add(i * 1e-9);
        }
        assertThat(histogram.percentile(0.5)).isCloseTo(5e-5, within(1e-7));
        assertThat(histogram.percentile(0.99)).isCloseTo(9.9e-5, within(1e-7));
    }

    @Test
    void samplesBeforeAnyStepAreAtRest() throws ToolpathException {
        CourseSample told = new CourseSample();
        course(MotionLimits.Ramps.TRAPEZOID).at(0, told);
        assertThat(told.vx).isZero();
    }
}
