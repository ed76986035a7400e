// SPDX-License-Identifier: Apache-2.0
package foldwright.bench;

import foldwright.lift.Direction;
import foldwright.lift.FoldResult;
import foldwright.lift.FoldRun;
import foldwright.machine.Machine;
import foldwright.machine.file.BadMachineFile;
import foldwright.machine.file.MachineFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;

/**
 * The van bench unfolded as the command {@code fold} does it: 60 s of its own time with stepping
 * motor, belt, turning screws, springs, friction everywhere and the log; model and statics
 * included.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class UnfoldBenchmark {
    @Param({"0.001", "0.005"})
    double step;

    private Machine machine;
    private FoldResult done;

    @Setup
    public void read() throws BadMachineFile {
        Path here = Path.of("scenes");
        Path scenes = Files.isDirectory(here) ? here : Path.of("..", "scenes");
        machine = MachineFile.read(scenes.resolve("van-bench.json")).machine();
    }

    @Benchmark
    public FoldResult unfold() {
        done = FoldRun.run(machine, Direction.RAISING, step);
        return done;
    }

    @TearDown(Level.Trial)
    public void report() {
        FoldResult.Convergence c = done.convergence();
        System.out.printf(
                Locale.ROOT,
                "%s, %d steps, %.3f solves a step, %d steps halved, worst margin %.4f%n",
                done.outcome(),
                c.steps(),
                c.solves(),
                c.halvedSteps(),
                c.worstMargin());
    }
}
