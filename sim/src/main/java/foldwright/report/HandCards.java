// SPDX-License-Identifier: Apache-2.0
package foldwright.report;

import foldwright.study.Check;
import foldwright.study.HandCard;

/** The opened card with the sums a maker can repeat on paper. */
final class HandCards {
    private HandCards() {}

    /** Writes the card of a check to stand beside something. */
    static void card(Html out, Check check) {
        write(out, check, "div.card");
    }

    /** Writes the card of a check over the whole width. */
    static void wide(Html out, Check check) {
        write(out, check, "div.card.wide");
    }

    private static void write(Html out, Check check, String element) {
        HandCard card = check.grounds().byHand();
        if (card.steps().isEmpty()) {
            return;
        }
        out.open(element);
        out.leaf("h3", "Check it by hand").open("div.steps");
        for (HandCard.Step step : card.steps()) {
            out.open("div");
            if (!step.words().isEmpty()) {
                out.leaf("p.why", step.words());
            }
            out.open("p.sum").formula(step.formula());
            if (!step.numbers().isEmpty()) {
                out.raw(step.formula().isEmpty() ? "" : "<br>").open("span");
                out.formula(equals(step) + step.numbers()).close("span");
            }
            out.close("p", "div");
        }
        out.close("div");
        out.leaf("p.source", Sums.source(card.source()));
        out.close("div");
    }

    /** Numbers go on from a formula, unless they name their own symbol. */
    private static String equals(HandCard.Step step) {
        boolean named = step.numbers().matches("\\p{L}\\S* = .*");
        return step.formula().isEmpty() || named ? "" : "= ";
    }
}
