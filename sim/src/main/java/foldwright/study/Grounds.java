// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What a check stands on.
 *
 * @param split what makes the load at the worst place, where that is known
 * @param byHand the formula with numbers
 * @param assumptions inputs to be measured
 * @param cautions what can hurt
 * @param limits where the answer stops being valid, one sentence each
 */
public record Grounds(
        Optional<Split> split,
        HandCard byHand,
        List<Assumption> assumptions,
        List<Caution> cautions,
        List<String> limits) {
    public Grounds {
        Objects.requireNonNull(split, "split");
        Objects.requireNonNull(byHand, "byHand");
        assumptions = List.copyOf(assumptions);
        cautions = List.copyOf(cautions);
        limits = List.copyOf(limits);
    }

    /** Grounds that are a formula only. */
    public static Grounds of(HandCard byHand) {
        return new Grounds(Optional.empty(), byHand, List.of(), List.of(), List.of());
    }

    /** A formula with what makes the load. */
    public static Grounds of(HandCard byHand, Optional<Split> split) {
        return new Grounds(split, byHand, List.of(), List.of(), List.of());
    }
}
