// SPDX-License-Identifier: Apache-2.0
package foldwright.bench;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
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
 * Processor time of the measuring process for each operation [us], beside JMH's wall time. On a
 * machine that others share the wall also counts the time in which the benchmark did not run; the
 * processor time does not (but still suffers from shared caches and clocks).
 */
public class CpuProfiler implements InternalProfiler {
    private final OperatingSystemMXBean system =
            ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class);
    private long start;

    @Override
    public String getDescription() {
        return "processor time an operation";
    }

    @Override
    public void beforeIteration(BenchmarkParams benchmark, IterationParams iteration) {
        start = system.getProcessCpuTime();
    }

    @Override
    public Collection<? extends Result<?>> afterIteration(
            BenchmarkParams benchmark, IterationParams iteration, IterationResult result) {
        double spent = (system.getProcessCpuTime() - start) * 1e-3;
        double operations = result.getMetadata().getAllOps();
        return List.of(new ScalarResult("cpu", spent / operations, "us/op", AggregationPolicy.AVG));
    }
}
