// SPDX-License-Identifier: Apache-2.0
package foldwright.bench;

import foldwright.lift.SmoothUnfold;
import foldwright.machine.Machine;
import foldwright.machine.file.BadMachineFile;
import foldwright.machine.file.MachineFile;
import foldwright.mechanics.solve.Stepper;
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
 * The van bench unfolded in 60 s of its own time: model, statics and every step, with friction at
 * all pins and guides.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class UnfoldBenchmark {
    private static final double SECONDS = 60;

    @Param({"0.001", "0.005"})
    double step;

    private Machine machine;
    private Stepper done;

    @Setup
    public void read() throws BadMachineFile {
        Path here = Path.of("scenes");
        Path scenes = Files.isDirectory(here) ? here : Path.of("..", "scenes");
        machine = MachineFile.read(scenes.resolve("van-bench.json")).machine();
    }

    @Benchmark
    public Stepper unfold() {
        done = new SmoothUnfold(machine, SECONDS, step).run();
        return done;
    }

    @TearDown(Level.Trial)
    public void report() {
        double steps = done.steps();
        System.out.printf(
                Locale.ROOT,
                "%.3f solves and %.3f factorisations a step, %d steps halved%n",
                done.solves() / steps,
                done.factorisations() / steps,
                done.halvings());
    }
}
