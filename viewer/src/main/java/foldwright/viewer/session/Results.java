// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.session;

import foldwright.lift.ForceCurve;
import foldwright.study.Answer;
import foldwright.study.Check;
import foldwright.study.HeightPlot;
import foldwright.study.Question;
import foldwright.study.Series;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What has been computed of a machine so far.
 *
 * @param curve force curve, once known
 * @param plot motor torque over height, once known
 * @param checks the checks known so far
 * @param waiting what is said where nothing is known
 */
public record Results(
        Optional<ForceCurve> curve, Optional<HeightPlot> plot, List<Check> checks, String waiting) {
    /** Nothing yet. */
    public static final Results NONE =
            new Results(Optional.empty(), Optional.empty(), List.of(), "not computed yet");

    public Results {
        checks = List.copyOf(checks);
    }

    /** The same with a second curve drawn dashed beside the plot. */
    public Results beside(HeightPlot other, String words) {
        Optional<HeightPlot> both = plot.map(p -> both(p, other, words));
        return new Results(curve, both, checks, waiting);
    }

    private static HeightPlot both(HeightPlot plot, HeightPlot other, String words) {
        int n = plot.height().size();
        double[] needed = new double[n];
        double[] margin = new double[n];
        for (int i = 0; i < n; i++) {
            needed[i] = other.needed().over(other.height(), plot.height().at(i));
            margin[i] = other.margin().over(other.height(), plot.height().at(i));
        }
        return new HeightPlot(
                plot.caption(),
                plot.height(),
                plot.needed(),
                plot.available(),
                plot.margin(),
                plot.layers(),
                List.of(new HeightPlot.Beside(words, Series.of(needed), Series.of(margin))));
    }

    /** Where the check that speaks for a question is worst [m]. */
    public OptionalDouble worst(Question question) {
        return new Answer(question, of(question))
                .speaker()
                .map(c -> c.outcome().worst().height())
                .orElse(OptionalDouble.empty());
    }

    /** The checks of a question. */
    public List<Check> of(Question question) {
        return checks.stream().filter(c -> c.question() == question).toList();
    }
}
