// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A question of the maker with its checks.
 *
 * @param question the question
 * @param checks every check that answers to it, the worst first; empty when none exists yet
 */
public record Answer(Question question, List<Check> checks) {
    public Answer {
        Objects.requireNonNull(question, "question");
        checks =
                checks.stream()
                        .sorted(Comparator.comparing(Check::outcome, Outcome.WORST_FIRST))
                        .toList();
    }

    /** The worst check, which speaks for the question. */
    public Optional<Check> speaker() {
        return checks.stream().findFirst();
    }

    public Verdict verdict() {
        return speaker().map(Check::verdict).orElse(Verdict.UNKNOWN);
    }
}
