// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.session;

import foldwright.lift.ForceCurve;
import foldwright.lift.HoldResult;
import foldwright.study.Answer;
import foldwright.study.Check;
import foldwright.study.HeightPlot;
import foldwright.study.Question;
import foldwright.study.Series;
import java.util.ArrayList;
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
 * @param hold what it does without power, once known
 * @param gantry what the gantry carries, once known
 */
public record Results(
        Optional<ForceCurve> curve,
        Optional<HeightPlot> plot,
        List<Check> checks,
        String waiting,
        Optional<HoldResult> hold,
        Optional<GantryLoads> gantry) {
    /** Said where an answer will stand once it is there. */
    static final String WORKING = "being worked out";

    /** Nothing yet. */
    public static final Results NONE =
            new Results(Optional.empty(), Optional.empty(), List.of(), WORKING);

    public Results {
        checks = List.copyOf(checks);
    }

    /** Without what is known of holding and of the gantry. */
    public Results(
            Optional<ForceCurve> curve,
            Optional<HeightPlot> plot,
            List<Check> checks,
            String waiting) {
        this(curve, plot, checks, waiting, Optional.empty(), Optional.empty());
    }

    /**
     * These results where they are whole; where they are quick ones, which know few checks, the
     * others of before stay until new ones come.
     */
    public Results after(Results earlier) {
        if (hold.isPresent() || curve.isEmpty()) {
            return this;
        }
        List<Check> all = new ArrayList<>(checks);
        for (Check old : earlier.checks) {
            if (checks.stream().noneMatch(c -> c.id().equals(old.id()))) {
                all.add(old);
            }
        }
        return new Results(curve, plot, all, waiting, earlier.hold, gantry.or(earlier::gantry));
    }

    /** What is said of a question without an answer: what it needs, or that one will come. */
    public String waiting(Question question) {
        return whole() && !question.needs().isEmpty() ? question.needs() : waiting;
    }

    /** Whether everything has been computed. */
    public boolean whole() {
        return hold.isPresent();
    }

    /** The same with a second curve drawn dashed beside the plot. */
    public Results beside(HeightPlot other, String words) {
        Optional<HeightPlot> both = plot.map(p -> both(p, other, words));
        return new Results(curve, both, checks, waiting, hold, gantry);
    }

    private static HeightPlot both(HeightPlot plot, HeightPlot other, String words) {
        int n = plot.height().size();
        double[] needed = new double[n];
        double[] margin = new double[n];
        for (int i = 0; i < n; i++) {
            needed[i] = other.needed().over(other.height(), plot.height().at(i));
            margin[i] = other.margin().over(other.height(), plot.height().at(i));
        }
        return plot.with(new HeightPlot.Beside(words, Series.of(needed), Series.of(margin)));
    }

    /**
     * Where the check that speaks for a question is worst [m]; empty where it has no height.
     *
     * @param flat where what is asked of the folded machine is to be seen [m]
     */
    public OptionalDouble worst(Question question, double flat) {
        OptionalDouble found = worst(question);
        return found.isEmpty() && question == Question.FIT ? OptionalDouble.of(flat) : found;
    }

    /** Where the check that speaks for a question is worst [m]; empty where it has no height. */
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
