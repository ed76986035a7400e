// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * A question of the maker with its checks.
 *
 * @param question the question
 * @param checks every check that answers to it, the worst first, those that hold in the order
 *     given, then those without a limit to judge them by; empty when none exists
 */
public record Answer(Question question, List<Check> checks) {
    /** Checks that only restate another one's limit: they never speak before it. */
    private static final Set<String> RESTATING = Set.of("skew.acceleration");

    private static final Comparator<Check> WORST_FIRST =
            Comparator.comparingInt((Check c) -> -c.verdict().urgency())
                    .thenComparing(c -> RESTATING.contains(c.id()))
                    .thenComparing(Check::outcome, Outcome.WORST_FIRST);

    public Answer {
        Objects.requireNonNull(question, "question");
        checks = inOrder(checks);
    }

    private static List<Check> inOrder(List<Check> checks) {
        Set<Verdict> calm = EnumSet.of(Verdict.HOLDS, Verdict.UNJUDGED);
        List<Check> out =
                new ArrayList<>(
                        checks.stream()
                                .filter(c -> !calm.contains(c.verdict()))
                                .sorted(WORST_FIRST)
                                .toList());
        for (Verdict v : calm) {
            checks.stream().filter(c -> c.verdict() == v).forEach(out::add);
        }
        return List.copyOf(out);
    }

    /** The worst check, which speaks for the question. */
    public Optional<Check> speaker() {
        return checks.stream().findFirst();
    }

    public Verdict verdict() {
        return speaker().map(Check::verdict).orElse(Verdict.UNKNOWN);
    }
}
