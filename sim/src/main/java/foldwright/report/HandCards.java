// SPDX-License-Identifier: Apache-2.0
package foldwright.report;

import foldwright.study.Check;
import foldwright.study.HandCard;

/** The opened card with the sums a maker can repeat on paper. */
final class HandCards {
    private HandCards() {}

    /** Writes the card of a check. */
    static void card(Html out, Check check) {
        HandCard card = check.grounds().byHand();
        if (card.steps().isEmpty()) {
            return;
        }
        out.open("div.card").leaf("h3", "Check it by hand");
        for (HandCard.Step step : card.steps()) {
            if (!step.words().isEmpty()) {
                out.leaf("p.why", step.words());
            }
            out.open("p.sum").formula(step.formula());
            if (!step.numbers().isEmpty()) {
                out.raw("<br>").open("span").text("= " + Sums.set(step.numbers())).close("span");
            }
            out.close("p");
        }
        out.leaf("p.source", card.source());
        out.close("div");
    }
}
