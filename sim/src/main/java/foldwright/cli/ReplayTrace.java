// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import foldwright.gantry.model.GantryKernel;
import foldwright.gantry.replay.ReplayListener;
import foldwright.study.HeightPlot;
import foldwright.study.Series;
import foldwright.study.Shown;
import foldwright.study.TimePlot;
import java.util.List;
import java.util.Optional;

/**
 * Watches a replay: rows at a chosen rate into a file, and the largest tool error and skew in each
 * of a bounded number of spans for a plot. Spans double in length when they run out.
 */
final class ReplayTrace implements ReplayListener {
    private static final int SPANS = 1200;

    private final Optional<ReplayRows> rows;
    private final double interval;
    private final double[] error = new double[SPANS];
    private final double[] skew = new double[SPANS];
    private final double span0;
    private double span;
    private int used;
    private double next;

    /**
     * A trace.
     *
     * @param rate rows a second
     */
    ReplayTrace(Optional<StreamedFile> file, double rate) {
        rows = file.map(ReplayRows::new);
        interval = 1 / rate;
        span0 = 1e-3;
        span = span0;
    }

    @Override
    public void at(double time, long line, double x, double y, GantryKernel kernel) {
        double ex = kernel.toolX() - x - kernel.model().tool().x();
        double ey = kernel.toolY() - y - kernel.model().tool().y();
        double endToEnd = kernel.skew() * kernel.model().span();
        note(time, Math.hypot(ex, ey), Math.abs(endToEnd));
        if (rows.isPresent() && time >= next - 1e-12) {
            next += interval;
            rows.get().row(time, line, x, y, kernel);
        }
    }

    private void note(double time, double errorNow, double skewNow) {
        int index = (int) (time / span);
        while (index >= SPANS) {
            for (int i = 0; i < SPANS / 2; i++) {
                error[i] = Math.max(error[2 * i], error[2 * i + 1]);
                skew[i] = Math.max(skew[2 * i], skew[2 * i + 1]);
            }
            java.util.Arrays.fill(error, SPANS / 2, SPANS, 0);
            java.util.Arrays.fill(skew, SPANS / 2, SPANS, 0);
            span *= 2;
            used = SPANS / 2;
            index = (int) (time / span);
        }
        used = Math.max(used, index + 1);
        error[index] = Math.max(error[index], errorNow);
        skew[index] = Math.max(skew[index], skewNow);
    }

    /** Largest tool error and skew over time, each with its limit. */
    List<TimePlot> plots(double errorLimit, double skewLimit) {
        return List.of(
                plot("Tool beside its command", error, errorLimit),
                plot("Skew of the bridge, end to end", skew, skewLimit));
    }

    private TimePlot plot(String title, double[] values, double limit) {
        int n = Math.max(2, used);
        double[] time = new double[n];
        double[] bound = new double[n];
        for (int i = 0; i < n; i++) {
            time[i] = (i + 0.5) * span;
            bound[i] = limit;
        }
        TimePlot.Curve found =
                new TimePlot.Curve(
                        "largest",
                        TimePlot.Kind.FOUND,
                        Series.of(java.util.Arrays.copyOf(values, n)));
        TimePlot.Curve allowed =
                new TimePlot.Curve("allowed", TimePlot.Kind.LIMIT, Series.of(bound));
        return new TimePlot(
                new HeightPlot.Caption(title, "largest in each span of time", Shown.MILLIMETRE),
                Series.of(time),
                Double.isNaN(limit) ? List.of(found) : List.of(found, allowed),
                List.of());
    }
}
