// SPDX-License-Identifier: Apache-2.0
package foldwright.bench;

import foldwright.elements.motor.ElectricalPullOut;
import foldwright.elements.motor.HybridStepper;
import foldwright.elements.motor.StepperDrive;
import foldwright.elements.motor.TypicalStepper;
import foldwright.elements.screw.ScrewThread;
import foldwright.elements.screw.TrapezoidalThread;
import foldwright.elements.spring.Attachment;
import foldwright.elements.spring.ConicalSpring;
import foldwright.elements.spring.GasSpring;
import foldwright.elements.spring.LinearLaw;
import foldwright.elements.spring.SpringLaw;
import foldwright.elements.spring.SpringPoint;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** Laws of parts that the solver calls in its inner loop; one operation is one evaluation. */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
public class ElementsBenchmark {
    private static final int POINTS = 1024;

    private final SpringLaw linear =
            new LinearLaw(155, 0.115, 0.028, Attachment.TOUCHING, SpringLaw.Measure.LENGTH);
    private final SpringLaw cone =
            new ConicalSpring(1.2e-3, 0.010, 0.022, 6, 0.040, 2.4e-3, 81.5e9)
                    .law(Attachment.TOUCHING);
    private final SpringLaw gas =
            new GasSpring(0.205, 0.06, 60, 1.33, 1.4, 5).law(Attachment.TOUCHING);
    private final ScrewThread thread = TrapezoidalThread.get("Tr10x2").thread();
    private final HybridStepper motor = TypicalStepper.get("17 x 40").motor();
    private final ElectricalPullOut pullOut =
            new ElectricalPullOut(motor, StepperDrive.rated(motor, 24));
    private final SpringPoint point = new SpringPoint();
    private final double[] shares = new double[POINTS];

    /** Shares of the travel, spread evenly by the golden section so no branch is predictable. */
    public ElementsBenchmark() {
        for (int i = 0; i < POINTS; i++) {
            shares[i] = (i * 0.6180339887498949) % 1.0;
        }
    }

    private double sweep(SpringLaw law) {
        double low = law.limitCoordinate();
        double range = law.freeCoordinate() - low;
        double sum = 0;
        for (double share : shares) {
            law.evaluate(low + share * range, point);
            sum += point.force + point.stiffness + point.energy;
        }
        return sum;
    }

    @Benchmark
    @OperationsPerInvocation(POINTS)
    public double linearSpring() {
        return sweep(linear);
    }

    @Benchmark
    @OperationsPerInvocation(POINTS)
    public double conicalSpring() {
        return sweep(cone);
    }

    @Benchmark
    @OperationsPerInvocation(POINTS)
    public double gasSpring() {
        return sweep(gas);
    }

    @Benchmark
    @OperationsPerInvocation(POINTS)
    public double threadTorque() {
        double sum = 0;
        for (double share : shares) {
            sum += thread.raiseTorque(100 * share, 0.2 * share);
        }
        return sum;
    }

    @Benchmark
    @OperationsPerInvocation(POINTS)
    public double pullOutTorque() {
        double sum = 0;
        for (double share : shares) {
            sum += pullOut.torque(100 * share);
        }
        return sum;
    }
}
