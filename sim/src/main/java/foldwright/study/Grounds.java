// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import java.util.List;
import java.util.Objects;

/**
 * What a check stands on.
 *
 * @param shares the required amount at the worst place, split by cause; may be empty
 * @param byHand the formula with numbers
 * @param assumptions inputs to be measured
 * @param cautions what can hurt
 * @param limits where the answer stops being valid, one sentence each
 */
public record Grounds(
        List<Share> shares,
        HandCard byHand,
        List<Assumption> assumptions,
        List<Caution> cautions,
        List<String> limits) {
    public Grounds {
        shares = List.copyOf(shares);
        Objects.requireNonNull(byHand, "byHand");
        assumptions = List.copyOf(assumptions);
        cautions = List.copyOf(cautions);
        limits = List.copyOf(limits);
    }

    /** Grounds that are a formula only. */
    public static Grounds of(HandCard byHand) {
        return new Grounds(List.of(), byHand, List.of(), List.of(), List.of());
    }
}
