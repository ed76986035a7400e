// SPDX-License-Identifier: Apache-2.0
package foldwright.bench;

import foldwright.mechanics.solve.Settings;
import foldwright.mechanics.solve.Stepper;
import foldwright.proof.multibody.FourBarChain;
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

/**
 * One step of the chain of four-bar windows in swing: how cost grows with size, and with {@code
 * -prof gc} what a step allocates.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class StepBenchmark {
    @Param({"1", "2", "10", "40", "200", "1000"})
    int loops;

    private Stepper stepper;

    /** Once, so that nothing but steps is measured; the chain swings on from one to the next. */
    @Setup(Level.Trial)
    public void start() {
        stepper = new FourBarChain(loops).stepper(Settings.ofStep(1e-3));
        stepper.step();
    }

    @Benchmark
    public Stepper.Outcome step() {
        Stepper.Outcome outcome = stepper.step();
        if (outcome == Stepper.Outcome.FAILED) {
            throw new IllegalStateException(stepper.failure().toString());
        }
        return outcome;
    }
}
