// SPDX-License-Identifier: Apache-2.0
package foldwright.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.motion.MotionLimits.AxisLimits;
import foldwright.motion.MotionLimits.FullStops;
import foldwright.motion.MotionLimits.Ramps;
import foldwright.motion.MotionLimits.Rounded;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PlannerTest {
    private static final AxisLimits PATH = new AxisLimits(0.2, 4, 80);

    private static MotionLimits limits(Ramps ramps) {
        return MotionLimits.alongPath(PATH, ramps, new Rounded(2e-5));
    }

    @Property(tries = 500, seed = "20261125")
    void theWayBackFromReachIsItsLength(
            @ForAll @Scale(8) @DoubleRange(min = 0, max = 2) double v,
            @ForAll @Scale(8) @DoubleRange(min = 1e-6, max = 1) double length,
            @ForAll @Scale(8) @DoubleRange(min = 0.1, max = 20) double a,
            @ForAll @Scale(8) @DoubleRange(min = 1, max = 1e5) double j) {
        double top = Ramp.reach(v, length, a, j);
        // One rounding of the top speed changes the time 2 sqrt(dv/j) by ulp/sqrt(dv j), and the
        // length with it.
        double rounding = top * 2 * Math.ulp(top) / Math.sqrt((top - v) * j);
        assertThat(Ramp.length(v, top, a, j)).isCloseTo(length, within(1e-9 * length + rounding));
    }

    @Property(tries = 500, seed = "20261125")
    void profilesEndWhereTheyShouldAndKeepTheLimits(
            @ForAll @Scale(8) @DoubleRange(min = 1e-5, max = 0.5) double length,
            @ForAll @Scale(8) @DoubleRange(min = 0, max = 1) double share0,
            @ForAll @Scale(8) @DoubleRange(min = 0, max = 1) double share1,
            @ForAll @Scale(8) @DoubleRange(min = 0.5, max = 10) double a,
            @ForAll @Scale(8) @DoubleRange(min = 10, max = 1e4) double j) {
        double top = 0.3;
        double v0 = share0 * top;
        double v1 = Math.min(share1 * top, Ramp.reach(v0, length, a, j));
        v0 = Math.min(v0, Ramp.reach(v1, length, a, j));
        SpeedProfile p = new SpeedProfile();
        p.plan(length, v0, v1, top, a, j);
        double end = p.duration();
        assertThat(p.way(end)).isCloseTo(length, within(1e-9));
        assertThat(p.speed(end)).isCloseTo(v1, within(1e-9));
        for (int i = 0; i <= 200; i++) {
            double t = end * i / 200;
            assertThat(p.speed(t)).isBetween(-1e-12, top * (1 + 1e-12));
            assertThat(Math.abs(p.acceleration(t))).isLessThanOrEqualTo(a * (1 + 1e-9));
        }
    }

    @ParameterizedTest
    @EnumSource(Ramps.class)
    void aSlidingWindowGivesTheTimeOfTheWholeFile(Ramps ramps) throws ToolpathException {
        String text = scribble(5000);
        double windowed = total(new Planner(Paths.reader(text), limits(ramps)));
        assertThat(windowed)
                .isCloseTo(wholeFile(Paths.read(text), limits(ramps)), within(1e-12 * windowed));
    }

    /** The plain twin: both passes over the whole list at once, as the text of the rule has it. */
    private static double wholeFile(List<Move> moves, MotionLimits limits) {
        double delta = ((Rounded) limits.corners()).deviation();
        double a = limits.path().acceleration();
        double j =
                limits.ramps() == Ramps.TRAPEZOID ? Double.POSITIVE_INFINITY : limits.path().jerk();
        int n = moves.size();
        double[] corner = new double[n + 1];
        double[] before = new double[3];
        double[] after = new double[3];
        for (int i = 1; i < n; i++) {
            moves.get(i - 1).tangent(moves.get(i - 1).length(), before);
            moves.get(i).tangent(0, after);
            double cosine = before[0] * after[0] + before[1] * after[1] + before[2] * after[2];
            double turn =
                    cosine > 1 - 1e-12
                            ? Double.POSITIVE_INFINITY
                            : CornerSpeed.of(cosine, delta, a);
            corner[i] =
                    Math.min(
                            turn,
                            Math.min(top(moves.get(i - 1), limits), top(moves.get(i), limits)));
        }
        for (int i = n - 1; i > 0; i--) {
            corner[i] = Math.min(corner[i], Ramp.reach(corner[i + 1], moves.get(i).length(), a, j));
        }
        double sum = 0;
        SpeedProfile profile = new SpeedProfile();
        for (int i = 0; i < n; i++) {
            corner[i + 1] =
                    Math.min(corner[i + 1], Ramp.reach(corner[i], moves.get(i).length(), a, j));
            profile.plan(
                    moves.get(i).length(),
                    corner[i],
                    corner[i + 1],
                    top(moves.get(i), limits),
                    a,
                    j);
            sum += profile.duration();
        }
        return sum;
    }

    private static double top(Move move, MotionLimits limits) {
        double top = Math.min(move.feed(), limits.path().speed());
        return Math.min(top, Math.sqrt(limits.path().acceleration() * move.radius()));
    }

    private static double total(Planner planner) throws ToolpathException {
        TimedMove move = new TimedMove();
        double sum = 0;
        while (planner.next(move)) {
            sum += move.profile().duration();
        }
        assertThat(planner.shortened()).isZero();
        return sum;
    }

    /**
     * Short strokes, long strokes and arcs in a fixed disorder, with stretches of nearly straight
     * chords.
     */
    private static String scribble(int count) {
        Random random = new Random(7);
        StringBuilder text = new StringBuilder("G91 G1 F12000\n");
        double heading = 0;
        for (int i = 0; i < count; i++) {
            boolean smooth = i / 500 % 2 == 0;
            heading += (smooth ? 0.02 : 2) * (random.nextDouble() - 0.5);
            double size = smooth ? 0.05 : 0.1 + 20 * random.nextDouble() * random.nextDouble();
            text.append(
                    String.format(
                            Locale.ROOT,
                            "G1 X%.5f Y%.5f%n",
                            size * Math.cos(heading),
                            size * Math.sin(heading)));
            if (i % 97 == 0) {
                text.append("G2 X2 Y0 I1 J0\n");
            }
        }
        return text.toString();
    }

    @ParameterizedTest
    @EnumSource(Ramps.class)
    void speedAndPlaceAreContinuousInsideMoves(Ramps ramps) throws ToolpathException {
        PlannedCourse course =
                new PlannedCourse(new Planner(Paths.reader(scribble(300)), limits(ramps)));
        CourseSample sample = new CourseSample();
        double dt = 1e-4;
        course.at(0, sample);
        double x = sample.x;
        double y = sample.y;
        boolean running = true;
        for (int i = 1; running; i++) {
            running = course.at(i * dt, sample);
            // No sample moves further than the highest speed allows, so nothing jumps at a seam.
            assertThat(Math.hypot(sample.x - x, sample.y - y)).isLessThan(0.2 * dt * 1.0001);
            assertThat(Math.hypot(sample.vx, sample.vy)).isLessThan(0.2 * 1.0001);
            x = sample.x;
            y = sample.y;
        }
        assertThat(sample.vx).isZero();
    }

    @Test
    void arcsStayOnTheirRadius() throws ToolpathException {
        PlannedCourse course =
                new PlannedCourse(
                        new Planner(
                                Probes.circle(0.1, 0.05, 0.02, 0.1), limits(Ramps.JERK_LIMITED)));
        CourseSample sample = new CourseSample();
        for (int i = 0; course.at(i * 1e-3, sample); i++) {
            assertThat(Math.hypot(sample.x - 0.1, sample.y - 0.05)).isCloseTo(0.02, within(1e-15));
        }
        assertThat(sample.x).isCloseTo(0.12, within(1e-15));
    }

    @Test
    void fullStopsRestAtEveryCorner() throws ToolpathException {
        MotionLimits limits = MotionLimits.alongPath(PATH, Ramps.TRAPEZOID, new FullStops());
        Planner planner = new Planner(Probes.square(0, 0, 0.02, 0.1), limits);
        TimedMove move = new TimedMove();
        List<Double> ends = new ArrayList<>();
        while (planner.next(move)) {
            ends.add(move.profile().speed(move.profile().duration()));
        }
        assertThat(ends).hasSize(4).allSatisfy(v -> assertThat(v).isCloseTo(0, within(1e-12)));
    }

    @Test
    void probeStrokesGrowInAcceleration() throws ToolpathException {
        Planner planner =
                new Planner(
                        Probes.backAndForth(Probes.Along.X, 0.1, 1, 1, 3, 3),
                        MotionLimits.alongPath(
                                new AxisLimits(1, 10, 1e3), Ramps.TRAPEZOID, new FullStops()));
        TimedMove move = new TimedMove();
        // Rest to rest over 0.1 m without cruising takes 2 sqrt(h/a); the first move is a stroke of
        // no length less.
        for (double a : new double[] {1, 2, 3}) {
            assertThat(planner.next(move)).isTrue();
            assertThat(move.profile().duration()).isCloseTo(2 * Math.sqrt(0.1 / a), within(1e-12));
        }
        assertThat(planner.next(move)).isFalse();
    }

    @Test
    void axisLimitsHoldInEveryDirection() throws ToolpathException {
        MotionLimits limits =
                new MotionLimits(
                        List.of(new AxisLimits(0.1, 1, 1e9), new AxisLimits(0.2, 3, 1e9), PATH),
                        new AxisLimits(9, 99, 1e9),
                        Ramps.TRAPEZOID,
                        new FullStops());
        Planner planner = new Planner(Paths.reader("G0 X300 Y400"), limits);
        TimedMove move = new TimedMove();
        planner.next(move);
        CourseSample sample = new CourseSample();
        move.sample(move.profile().duration() / 2, sample);
        assertThat(sample.vx).isCloseTo(0.1, within(1e-12));
        move.sample(1e-6, sample);
        assertThat(sample.ax).isCloseTo(1, within(1e-12));
    }
}
