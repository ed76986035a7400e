// SPDX-License-Identifier: Apache-2.0
package foldwright.bench;

import foldwright.mechanics.body.Vec3;
import foldwright.mechanics.solve.ExplicitBaseline;
import foldwright.mechanics.solve.Settings;
import foldwright.mechanics.solve.Stepper;
import foldwright.proof.multibody.FourBarChain;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;

/**
 * One second of the chain of ten four-bar windows by the program's integrator at 1 ms and by the
 * plain baseline (explicit 8(5,3) integration, dense accelerations), side by side, with the error
 * of both.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class BaselineBenchmark {
    private static final double SECONDS = 1;

    /** Of the explicit integrator: the loosest, already more accurate than a step of 1 ms here. */
    private static final double TOLERANCE = 1e-3;

    @Param("10")
    int loops;

    private double positionError;

    @Benchmark
    public double ours() {
        FourBarChain chain = new FourBarChain(loops);
        Stepper stepper = chain.stepper(Settings.ofStep(1e-3));
        if (stepper.runTo(SECONDS) == Stepper.Outcome.FAILED) {
            throw new IllegalStateException(stepper.failure().toString());
        }
        positionError = error(chain.tip(stepper.state()));
        return positionError;
    }

    @Benchmark
    public double plain() {
        FourBarChain chain = new FourBarChain(loops);
        ExplicitBaseline baseline = new ExplicitBaseline(chain.mechanism());
        double[] y = baseline.pack(chain.start());
        new DormandPrince853Integrator(1e-9, 0.1, TOLERANCE, TOLERANCE)
                .integrate(baseline, 0, y, SECONDS, y);
        positionError = error(chain.tip(baseline.unpack(y)));
        return positionError;
    }

    @TearDown(Level.Trial)
    public void report() {
        System.out.printf(Locale.ROOT, "error of the first tip %.2e m%n", positionError);
    }

    private double error(Vec3 tip) {
        double phi = ChainReference.angle(loops, SECONDS);
        return tip.minus(new Vec3(Math.cos(phi), Math.sin(phi), 0)).length();
    }
}
