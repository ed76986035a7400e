// SPDX-License-Identifier: Apache-2.0
package foldwright.bench;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/**
 * The arithmetic ceiling of the core that the other benchmarks run on: independent chains of scalar
 * multiply-adds held in registers. Printed beside every other figure, because times on shared
 * machines scatter and ratios do not.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
public class CeilingBenchmark {
    /** Floating-point operations of a round of {@link #chains}. */
    static final int OPERATIONS_A_ROUND = 24;

    private static final int ROUNDS = 100_000;

    private double a = 1.000000001;
    private double b = 1e-9;

    /** One operation is one useful floating-point operation. */
    @Benchmark
    @OperationsPerInvocation(OPERATIONS_A_ROUND * ROUNDS)
    public double scalarMultiplyAdd() {
        return chains(a, b, ROUNDS);
    }

    /**
     * 12 chains, a multiply and an add each round. Twelve, because a multiply and an add take six
     * cycles and a core starts two of each a cycle: with eight the chains wait for themselves.
     */
    static double chains(double x, double y, int rounds) {
        double c0 = 0;
        double c1 = 1;
        double c2 = 2;
        double c3 = 3;
        double c4 = 4;
        double c5 = 5;
        double c6 = 6;
        double c7 = 7;
        double c8 = 8;
        double c9 = 9;
        double c10 = 10;
        double c11 = 11;
        for (int i = 0; i < rounds; i++) {
            c0 = c0 * x + y;
            c1 = c1 * x + y;
            c2 = c2 * x + y;
            c3 = c3 * x + y;
            c4 = c4 * x + y;
            c5 = c5 * x + y;
            c6 = c6 * x + y;
            c7 = c7 * x + y;
            c8 = c8 * x + y;
            c9 = c9 * x + y;
            c10 = c10 * x + y;
            c11 = c11 * x + y;
        }
        return c0 + c1 + c2 + c3 + c4 + c5 + c6 + c7 + c8 + c9 + c10 + c11;
    }
}
