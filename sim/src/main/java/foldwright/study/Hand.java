// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.lift.HandSum;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Cards made of hand sums. */
final class Hand {
    private Hand() {}

    /** One step a sum, in order; the source line joins theirs. */
    static HandCard card(HandSum... sums) {
        List<HandCard.Step> steps = new ArrayList<>();
        Set<String> sources = new LinkedHashSet<>();
        for (HandSum s : sums) {
            steps.add(new HandCard.Step(s.title(), s.formula(), s.worked()));
            if (!s.source().isEmpty()) {
                sources.add(s.source());
            }
        }
        return new HandCard(steps, String.join("; ", sources));
    }

    /** A card of one formula. */
    static HandCard card(String words, String formula, String numbers, String source) {
        return new HandCard(List.of(new HandCard.Step(words, formula, numbers)), source);
    }
}
