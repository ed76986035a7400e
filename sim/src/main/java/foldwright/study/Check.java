// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One answer: what is needed, what there is, where it is worst, why, and what would change it.
 *
 * @param id short and stable, e.g. "fold.motor"
 * @param question the question of the maker it answers to
 * @param text its title and its finding
 * @param outcome the numbers and the verdict
 * @param grounds shares, formula, assumptions, cautions
 * @param remedies changes, best first, each recomputed
 * @param plot what it is drawn as, where it has a plot
 */
public record Check(
        String id,
        Question question,
        Text text,
        Outcome outcome,
        Grounds grounds,
        List<Remedy> remedies,
        Optional<? extends Plot> plot) {
    /**
     * What a check says.
     *
     * @param title a few words, e.g. "Motor torque"
     * @param finding one or two sentences that state the result with numbers
     */
    public record Text(String title, String finding) {
        public Text {
            Objects.requireNonNull(title, "title");
            Objects.requireNonNull(finding, "finding");
        }
    }

    public Check {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(question, "question");
        Objects.requireNonNull(text, "text");
        Objects.requireNonNull(outcome, "outcome");
        Objects.requireNonNull(grounds, "grounds");
        remedies = List.copyOf(remedies);
        Objects.requireNonNull(plot, "plot");
    }

    /** The same check with the changes that would better it. */
    public Check with(List<Remedy> better) {
        return new Check(id, question, text, outcome, grounds, better, plot);
    }

    /** The plot over height, if that is what the check is drawn as. */
    public Optional<HeightPlot> heightPlot() {
        return plot.filter(HeightPlot.class::isInstance).map(HeightPlot.class::cast);
    }

    public String title() {
        return text.title();
    }

    public String finding() {
        return text.finding();
    }

    public Verdict verdict() {
        return outcome.verdict();
    }
}
