// SPDX-License-Identifier: Apache-2.0
package foldwright.bench;

import foldwright.gantry.model.GantryKernel;
import foldwright.gantry.model.GantryModel;
import foldwright.gantry.model.Stability;
import foldwright.gantry.replay.Plotters;
import foldwright.gantry.replay.ReplayStatistics;
import foldwright.motion.Course;
import foldwright.motion.CourseSample;
import foldwright.motion.MotionLimits;
import foldwright.motion.ToolpathException;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * A step of the gantry replay: course sample, forces, statistics, advance, at 0.1 ms. Real time
 * over run time is 1e5 ns over the printed time. Play, friction, slack, torque curve and beam are
 * on. The loops hold kernel and sample in local variables, as {@code Replay} does. {@link Windows}
 * sets each second of it beside the ceiling of the same moment.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
public class GantryBenchmark {
    private static final int STEPS = 10_000;
    private static final double H = 1e-4;

    /** Which machine. */
    @Param({"bad", "crossed", "bad with idler states"})
    public String machine;

    private byte[] path;
    private GantryKernel kernel;
    private ReplayStatistics statistics;
    private CourseSample told;
    private Course course;
    private long n;

    /** Reads the path; a new course starts when one ends. */
    @Setup
    public void build() throws ToolpathException {
        path = Plotters.sheet(200);
        GantryModel model =
                switch (machine) {
                    case "bad" -> Plotters.bad();
                    case "crossed" -> Plotters.crossed();
                    default -> Plotters.states(Plotters.bad());
                };
        if (Stability.of(model, H).halvings() > 0) {
            throw new IllegalStateException("needs half steps: " + Stability.of(model, H));
        }
        kernel = new GantryKernel(model);
        statistics = new ReplayStatistics(kernel);
        told = new CourseSample();
        start();
    }

    private void start() throws ToolpathException {
        course = Plotters.course(path, Plotters.limits(MotionLimits.Ramps.JERK_LIMITED));
        course.at(0, told);
        kernel.stand(told.x - 0.15, told.y + 0.08);
        n = 0;
    }

    /** One step of a replay with its statistics. */
    @Benchmark
    @OperationsPerInvocation(STEPS)
    public double replayStep(Windows windows) throws ToolpathException {
        CourseSample told = this.told;
        GantryKernel kernel = this.kernel;
        ReplayStatistics statistics = this.statistics;
        for (int i = 0; i < STEPS; i++) {
            if (!course.at(n * H, told)) {
                start();
            }
            double x = told.x - 0.15;
            double y = told.y + 0.08;
            kernel.command(x, y, told.vx, told.vy);
            kernel.evaluate(H);
            statistics.add(n * H, told.line, x, y);
            kernel.advance(H);
            n++;
        }
        return kernel.skew();
    }

    /** The course alone. */
    @Benchmark
    @OperationsPerInvocation(STEPS)
    public double courseStep(Windows windows) throws ToolpathException {
        double sum = 0;
        for (int i = 0; i < STEPS; i++) {
            if (!course.at(n * H, told)) {
                start();
            }
            sum += told.x + told.vy;
            n++;
        }
        return sum;
    }

    /** Course and kernel, without statistics. */
    @Benchmark
    @OperationsPerInvocation(STEPS)
    public double movingStep(Windows windows) throws ToolpathException {
        CourseSample told = this.told;
        GantryKernel kernel = this.kernel;
        for (int i = 0; i < STEPS; i++) {
            if (!course.at(n * H, told)) {
                start();
            }
            kernel.command(told.x - 0.15, told.y + 0.08, told.vx, told.vy);
            kernel.evaluate(H);
            kernel.advance(H);
            n++;
        }
        return kernel.skew();
    }

    /** The kernel alone, standing still with everything stuck or in play. */
    @Benchmark
    @OperationsPerInvocation(STEPS)
    public double kernelStep(Windows windows) {
        for (int i = 0; i < STEPS; i++) {
            kernel.evaluate(H);
            kernel.advance(H);
        }
        return kernel.skew();
    }
}
