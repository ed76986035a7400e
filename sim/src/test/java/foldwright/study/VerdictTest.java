// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class VerdictTest {
    @Test
    void limitsBelongToTheBetterSide() {
        assertThat(Verdict.of(1.5)).isEqualTo(Verdict.HOLDS);
        assertThat(Verdict.of(Math.nextDown(1.5))).isEqualTo(Verdict.TIGHT);
        assertThat(Verdict.of(1)).isEqualTo(Verdict.TIGHT);
        assertThat(Verdict.of(Math.nextDown(1.0))).isEqualTo(Verdict.FAILS);
        assertThat(Verdict.of(Double.NaN)).isEqualTo(Verdict.UNKNOWN);
        assertThat(Verdict.of(Double.POSITIVE_INFINITY)).isEqualTo(Verdict.HOLDS);
        assertThat(Verdict.of(1.2, 1.11)).isEqualTo(Verdict.HOLDS);
    }

    @Test
    void failureSpeaksFirstThenTightThenUnknown() {
        Place here = Place.anywhere("");
        Outcome holds = outcome(1, 3, here);
        Outcome tight = outcome(1, 1.2, here);
        Outcome fails = outcome(1, 0.5, here);
        Outcome worse = outcome(1, 0.2, here);
        Outcome unknown = outcome(Double.NaN, 1, here);
        assertThat(
                        List.of(holds, tight, unknown, fails, worse).stream()
                                .sorted(Outcome.WORST_FIRST)
                                .toList())
                .containsExactly(worse, fails, tight, unknown, holds);
    }

    @Test
    void aValueWithoutALimitIsAFactAndOverridesNothing() {
        Place here = Place.anywhere("");
        Check fact = check(outcome(1, Double.NaN, here));
        Check good = check(outcome(1, 3, here));
        Check bad = check(outcome(1, 0.5, here));
        assertThat(fact.verdict()).isEqualTo(Verdict.UNJUDGED);
        assertThat(new Answer(Question.STAY, List.of(fact, good)).verdict())
                .isEqualTo(Verdict.HOLDS);
        assertThat(new Answer(Question.STAY, List.of(fact, good)).checks())
                .containsExactly(good, fact);
        assertThat(new Answer(Question.STAY, List.of(fact, bad)).verdict())
                .isEqualTo(Verdict.FAILS);
        assertThat(new Answer(Question.STAY, List.of(fact)).verdict()).isEqualTo(Verdict.UNJUDGED);
        assertThat(new Answer(Question.STAY, List.of()).verdict()).isEqualTo(Verdict.UNKNOWN);
        Outcome unknown = outcome(Double.NaN, Double.NaN, here);
        assertThat(unknown.verdict()).isEqualTo(Verdict.UNKNOWN);
    }

    private static Check check(Outcome outcome) {
        return new Check(
                "x.y",
                Question.STAY,
                new Check.Text("title", "Finding."),
                outcome,
                Grounds.of(Hand.card("what", "a = b", "1 = 1", "source")),
                List.of(),
                Optional.empty());
    }

    @Test
    void nothingRequiredIsNoLoad() {
        assertThat(outcome(-1, 2, Place.anywhere("")).margin()).isInfinite();
    }

    private static Outcome outcome(double required, double available, Place where) {
        return Outcome.of(
                Amount.of(required, Shown.NEWTON), Amount.of(available, Shown.NEWTON), where);
    }
}
