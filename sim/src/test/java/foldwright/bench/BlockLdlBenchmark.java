// SPDX-License-Identifier: Apache-2.0
package foldwright.bench;

import foldwright.mechanics.sparse.BlockLdl;
import foldwright.mechanics.sparse.BlockPattern;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Locale;
import java.util.Random;
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
 * Factorisation and solution for the graphs of the mechanics benchmarks: a row of N four-bar loops
 * (2 N + 1 bodies, 3 N + 1 revolutes) and a two-stage, two-sided scissor lift with its screws,
 * rotors and friction rows. Entries are random; only the graph matters for the time.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class BlockLdlBenchmark {
    @Param({"40", "200", "1000", "lift"})
    String graph;

    private final Random random = new Random(1);
    private final BitSet joints = new BitSet();
    private final List<int[]> couplings = new ArrayList<>();
    private BlockPattern pattern;
    private BlockLdl ldl;
    private double[] rhs;
    private double[] x;

    @Setup
    public void build() {
        pattern = new BlockPattern();
        if (graph.equals("lift")) {
            lift();
        } else {
            fourBars(Integer.parseInt(graph));
        }
        ldl = BlockLdl.analyse(pattern);
        fill();
        ldl.factor();
        rhs = random.doubles(ldl.dimension()).toArray();
        x = rhs.clone();
    }

    @Benchmark
    public double factor() {
        ldl.factor();
        return ldl.values()[0];
    }

    @Benchmark
    public double solve() {
        System.arraycopy(rhs, 0, x, 0, x.length);
        ldl.solve(x);
        return x[0];
    }

    @TearDown(Level.Trial)
    public void report() {
        System.out.printf(
                Locale.ROOT,
                "%d unknowns, %d useful floating-point operations a factorisation%n",
                ldl.dimension(),
                ldl.operations());
    }

    private void fourBars(int loops) {
        int rod = pattern.addBody(6);
        joint(5, rod);
        for (int i = 0; i < loops; i++) {
            int coupler = pattern.addBody(6);
            int next = pattern.addBody(6);
            joint(5, coupler, rod);
            joint(5, next);
            joint(5, coupler, next);
            rod = next;
        }
    }

    /** 15 bodies of six coordinates and 3 rotors. */
    private void lift() {
        int base = pattern.addBody(6);
        joint(6, base);
        int deck = pattern.addBody(6);
        int motor = pattern.addBody(1);
        joint(1, motor, base);
        for (int side = 0; side < 2; side++) {
            int rotor = pattern.addBody(1);
            joint(1, rotor, motor);
            int slider = pattern.addBody(6);
            joint(5, slider, base);
            joint(1, slider, rotor, base);
            int low = base;
            int high = slider;
            for (int stage = 0; stage < 2; stage++) {
                int a = pattern.addBody(6);
                int b = pattern.addBody(6);
                pin(a, b);
                pin(a, low);
                pin(b, high);
                low = b;
                high = a;
            }
            pin(low, deck);
            int top = pattern.addBody(6);
            pin(high, top);
            joint(5, top, deck);
        }
    }

    private void pin(int a, int b) {
        int pin = joint(5, a, b);
        joint(1, a, b, pin);
    }

    private int joint(int rows, int... with) {
        int joint = pattern.addJoint(rows);
        joints.set(joint);
        for (int b : with) {
            pattern.couple(joint, b);
            couplings.add(new int[] {joint, b});
        }
        return joint;
    }

    private void fill() {
        double[] v = ldl.values();
        for (int[] c : couplings) {
            int at = ldl.coupling(c[0], c[1]);
            int n = pattern.size(c[0]) * pattern.size(c[1]);
            for (int i = 0; i < n; i++) {
                // joint-joint blocks are part of C and stay zero
                v[at + i] = joints.get(c[1]) ? 0 : random.nextGaussian();
            }
        }
        for (int b = 0; b < pattern.blocks(); b++) {
            int n = pattern.size(b);
            for (int i = 0; i < n; i++) {
                v[ldl.diagonal(b) + i * (n + 1)] = joints.get(b) ? -1e-6 : 1;
            }
        }
    }
}
