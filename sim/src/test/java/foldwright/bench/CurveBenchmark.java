// SPDX-License-Identifier: Apache-2.0
package foldwright.bench;

import foldwright.lift.ForceCurve;
import foldwright.lift.LiftSolver;
import foldwright.machine.Machine;
import foldwright.machine.file.BadMachineFile;
import foldwright.machine.file.MachineFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * Force curve of a demo machine, raising and lowering, from building the solver to all findings:
 * what sizing and tolerance studies call thousands of times, and what a dragged slider waits for.
 * Cold: {@code -bm ss -wi 0 -i 1 -f 5}.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class CurveBenchmark {
    @Param({"van-bench", "van-bench-binds"})
    String scene;

    @Param({"200", "50"})
    int heights;

    private Machine machine;

    @Setup
    public void read() throws BadMachineFile {
        Path here = Path.of("scenes");
        Path scenes = Files.isDirectory(here) ? here : Path.of("..", "scenes");
        machine = MachineFile.read(scenes.resolve(scene + ".json")).machine();
    }

    @Benchmark
    public ForceCurve curve(Windows windows) {
        return new LiftSolver(machine).curve(heights);
    }
}
