// SPDX-License-Identifier: Apache-2.0
package foldwright.bench;

import foldwright.mechanics.body.Vec3;
import foldwright.mechanics.solve.Settings;
import foldwright.mechanics.solve.Stepper;
import foldwright.proof.multibody.FourBarChain;
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
 * Ten seconds of the chain of 40 four-bar windows at a step of 1 ms, from building the solver to
 * the last step, through every singular position.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class ChainBenchmark {
    @Param("40")
    int loops;

    @Param("0.001")
    double step;

    private final double[] angles = new double[101];
    private double energyError;
    private double positionError;
    private double solvesAStep;

    @Setup
    public void solvePendulum() {
        for (int tenth = 1; tenth <= 100; tenth++) {
            angles[tenth] = ChainReference.angle(loops, 0.1 * tenth);
        }
    }

    @Benchmark
    public double tenSeconds() {
        FourBarChain chain = new FourBarChain(loops);
        Stepper stepper = chain.stepper(Settings.ofStep(step));
        double start = chain.energy(stepper.state());
        energyError = 0;
        positionError = 0;
        for (int tenth = 1; tenth <= 100; tenth++) {
            if (stepper.runTo(0.1 * tenth) == Stepper.Outcome.FAILED) {
                throw new IllegalStateException(stepper.failure().toString());
            }
            double energy = Math.abs(chain.energy(stepper.state()) - start);
            energyError = Math.max(energyError, energy);
            positionError = Math.max(positionError, positionError(chain, stepper, tenth));
        }
        solvesAStep = (double) stepper.solves() / stepper.steps();
        return energyError;
    }

    /** What the runs achieved beside their time, every 0.1 s looked at; the same for each run. */
    @TearDown(Level.Trial)
    public void report() {
        System.out.printf(
                Locale.ROOT,
                "largest errors %.2e J (swing converts about 1190 J) and %.2e m; %.3f solves a step%n",
                energyError,
                positionError,
                solvesAStep);
    }

    private double positionError(FourBarChain chain, Stepper stepper, int tenth) {
        double phi = angles[tenth];
        Vec3 tip = chain.tip(stepper.state());
        return tip.minus(new Vec3(Math.cos(phi), Math.sin(phi), 0)).length();
    }
}
