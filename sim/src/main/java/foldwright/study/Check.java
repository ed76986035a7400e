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
 * @param finding one sentence that states the result
 * @param outcome the numbers and the verdict
 * @param grounds shares, formula, assumptions, cautions
 * @param remedies changes, best first, each recomputed
 * @param plot needed and available over the height, where the check has one
 */
public record Check(
        String id,
        Question question,
        String finding,
        Outcome outcome,
        Grounds grounds,
        List<Remedy> remedies,
        Optional<HeightPlot> plot) {
    public Check {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(question, "question");
        Objects.requireNonNull(finding, "finding");
        Objects.requireNonNull(outcome, "outcome");
        Objects.requireNonNull(grounds, "grounds");
        remedies = List.copyOf(remedies);
        Objects.requireNonNull(plot, "plot");
    }

    /** The same check with the changes that would better it. */
    public Check with(List<Remedy> better) {
        return new Check(id, question, finding, outcome, grounds, better, plot);
    }

    public Verdict verdict() {
        return outcome.verdict();
    }
}
