// SPDX-License-Identifier: Apache-2.0
package foldwright.bench;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import org.openjdk.jmh.infra.BenchmarkParams;
import org.openjdk.jmh.infra.IterationParams;
import org.openjdk.jmh.profile.InternalProfiler;
import org.openjdk.jmh.results.AggregationPolicy;
import org.openjdk.jmh.results.IterationResult;
import org.openjdk.jmh.results.Result;
import org.openjdk.jmh.results.ScalarResult;

/**
 * What {@link Windows} found in an iteration, as median and lower decile over its windows: time an
 * operation, ceiling, and the time that the operation would take on a core of the {@linkplain
 * Windows#USUAL_CEILING usual ceiling}. JMH averages over iterations and forks. Silent for
 * benchmarks without windows.
 */
public class WindowProfiler implements InternalProfiler {
    private static final double MEDIAN = 0.5;
    private static final double LOWER_DECILE = 0.1;

    @Override
    public String getDescription() {
        return "short windows beside the ceiling of the same moment";
    }

    @Override
    public void beforeIteration(BenchmarkParams benchmark, IterationParams iteration) {
        // Windows forgets by itself, after JMH has set its states up.
    }

    @Override
    public Collection<? extends Result<?>> afterIteration(
            BenchmarkParams benchmark, IterationParams iteration, IterationResult result) {
        double[] times = Windows.times();
        double[] ceilings = Windows.ceilings();
        if (times.length == 0) {
            return List.of();
        }
        double[] even = new double[times.length];
        for (int i = 0; i < times.length; i++) {
            times[i] /= benchmark.getOpsPerInvocation();
            even[i] = times[i] * ceilings[i] / Windows.USUAL_CEILING;
            ceilings[i] *= 1e-9;
        }
        List<Result<?>> results = new ArrayList<>();
        add(results, "window.time", times, "ns/op");
        add(results, "window.ceiling", ceilings, "1e9 op/s");
        add(results, "window.normalised", even, "ns/op");
        return results;
    }

    private static void add(List<Result<?>> results, String what, double[] values, String unit) {
        Arrays.sort(values);
        results.add(value(what + ".median", at(values, MEDIAN), unit));
        results.add(value(what + ".decile", at(values, LOWER_DECILE), unit));
    }

    private static double at(double[] sorted, double share) {
        return sorted[(int) Math.round(share * (sorted.length - 1))];
    }

    private static ScalarResult value(String name, double value, String unit) {
        return new ScalarResult(name, value, unit, AggregationPolicy.AVG);
    }
}
