// SPDX-License-Identifier: Apache-2.0
package foldwright.bench;

import foldwright.mechanics.solve.Stepper;
import foldwright.proof.multibody.Andrews;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;

/** Andrews' mechanism to 0.03 s at a step of 1e-5 s: time a step, and the error at the end. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class AndrewsBenchmark {
    private static final int STEPS = 3000;

    /** Mazzia and Magherini's test set, recomputed to 2e-11 rad. */
    private static final double BETA = 15.810771195155;

    private double error;
    private double solvesAStep;

    @Benchmark
    @OperationsPerInvocation(STEPS)
    public double step() {
        Andrews andrews = new Andrews();
        Stepper stepper = andrews.stepper(1e-5);
        for (int i = 0; i < STEPS; i++) {
            if (stepper.step() == Stepper.Outcome.FAILED) {
                throw new IllegalStateException(stepper.failure().toString());
            }
        }
        solvesAStep = (double) stepper.solves() / stepper.steps();
        error = andrews.angles(stepper.state())[0] - BETA;
        return error;
    }

    @TearDown(Level.Trial)
    public void report() {
        System.out.printf(
                Locale.ROOT, "error of beta %.2e rad; %.3f solves a step%n", error, solvesAStep);
    }
}
