// SPDX-License-Identifier: Apache-2.0
package foldwright.bench;

import java.util.Arrays;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;

/**
 * Runs the arithmetic ceiling between the invocations of a benchmark, half a millisecond each, so
 * that a slow moment of a shared machine slows both. A benchmark takes part by having this as a
 * parameter; it should take some milliseconds an invocation (shorter ones are mostly clock, longer
 * ones outlast a moment). {@link WindowProfiler} prints what it found; JMH leaves the ceiling out
 * of its own times.
 *
 * <p>Each invocation is a window with the mean of the ceilings before and after it. For benchmarks
 * of one thread.
 */
@State(Scope.Thread)
public class Windows {
    /** Ceiling of the class of core that the bars of speed were set on [operations a second]. */
    static final double USUAL_CEILING = 13.1e9;

    private static final int ROUNDS = 250_000;
    private static final int MOST = 1 << 15;
    private static final double[] TIMES = new double[MOST];
    private static final double[] CEILINGS = new double[MOST];
    private static int count;

    private double x = 1.000000001;
    private double y = 1e-9;
    private double ceilingBefore;
    private long begin;

    /** Keeps the results of the arithmetic from being optimised away. */
    public double sum;

    /** Forgets the windows of the iteration before. */
    @Setup(Level.Iteration)
    public void forget() {
        count = 0;
        ceilingBefore = ceiling();
    }

    /** A window begins. */
    @Setup(Level.Invocation)
    public void begin() {
        begin = System.nanoTime();
    }

    /** A window ends. */
    @TearDown(Level.Invocation)
    public void end() {
        double time = System.nanoTime() - begin;
        double ceilingAfter = ceiling();
        if (count < MOST) {
            TIMES[count] = time;
            CEILINGS[count] = (ceilingBefore + ceilingAfter) / 2;
            count++;
        }
        ceilingBefore = ceilingAfter;
    }

    private double ceiling() {
        long start = System.nanoTime();
        sum += CeilingBenchmark.chains(x, y, ROUNDS);
        double seconds = (System.nanoTime() - start) * 1e-9;
        return (double) CeilingBenchmark.OPERATIONS_A_ROUND * ROUNDS / seconds;
    }

    /** Times of the windows since the iteration began [ns an invocation]. */
    static double[] times() {
        return Arrays.copyOf(TIMES, count);
    }

    /** Ceilings beside {@link #times} [operations a second]. */
    static double[] ceilings() {
        return Arrays.copyOf(CEILINGS, count);
    }
}
