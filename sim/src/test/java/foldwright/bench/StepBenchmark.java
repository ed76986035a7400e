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
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/**
 * One step of the chain of four-bar windows: mean over the first second of its swing, so that every
 * size passes the same positions; and, for {@code -prof gc}, what a single step allocates.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class StepBenchmark {
    private static final int STEPS = 1000;

    /** A chain about to start. */
    @State(Scope.Thread)
    public static class Start {
        @Param({"1", "2", "10", "40", "200", "1000"})
        int loops;

        private FourBarChain chain;
        private Stepper stepper;

        @Setup(Level.Trial)
        public void build() {
            chain = new FourBarChain(loops);
        }

        @Setup(Level.Invocation)
        public void start() {
            stepper = chain.stepper(Settings.ofStep(1e-3));
        }
    }

    /** A chain that swings on and on. */
    @State(Scope.Thread)
    public static class Swing {
        private final Stepper stepper = new FourBarChain(40).stepper(Settings.ofStep(1e-3));
    }

    @Benchmark
    @OperationsPerInvocation(STEPS)
    public Stepper.Outcome step(Start start) {
        return checked(start.stepper, start.stepper.runTo(1e-3 * STEPS));
    }

    @Benchmark
    public Stepper.Outcome allocation(Swing swing) {
        return checked(swing.stepper, swing.stepper.step());
    }

    private static Stepper.Outcome checked(Stepper stepper, Stepper.Outcome outcome) {
        if (outcome == Stepper.Outcome.FAILED) {
            throw new IllegalStateException(stepper.failure().toString());
        }
        return outcome;
    }
}
