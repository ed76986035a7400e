// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.window;

import foldwright.study.Question;
import foldwright.viewer.session.Dial;
import foldwright.viewer.sheet.Hits;
import foldwright.viewer.sheet.Studio;
import java.util.Optional;

/** What the keyboard holds: the tab, a card or a rule. */
final class Focus {
    private final Desk desk;
    private final Studio studio;
    private Hits.Kind kind;
    private int index;

    Focus(Desk desk, Studio studio) {
        this.desk = desk;
        this.studio = studio;
    }

    void clear() {
        kind = null;
    }

    /** Walks tab, cards, rules; a card it comes to is opened by the caller. */
    Optional<Question> next(int step) {
        int cards = Question.values().length;
        int all = 1 + cards + desk.dials().size();
        int now = place(cards, step > 0 ? -1 : all);
        for (int i = 0; i < all; i++) {
            now = Math.floorMod(now + step, all);
            kind = now == 0 ? Hits.Kind.TAB : now <= cards ? Hits.Kind.CARD : Hits.Kind.RULE;
            index = now == 0 ? 0 : now <= cards ? now - 1 : now - 1 - cards;
            if (studio.hits().of(kind, index).isPresent()) {
                break;
            }
        }
        return kind == Hits.Kind.CARD ? Optional.of(Question.values()[index]) : Optional.empty();
    }

    private int place(int cards, int none) {
        if (kind == null) {
            return none;
        }
        return switch (kind) {
            case TAB -> 0;
            case CARD -> 1 + index;
            default -> 1 + cards + index;
        };
    }

    /** Turns the rule that is held by shares of its range. */
    void turn(double share) {
        if (kind != Hits.Kind.RULE || index >= desk.dials().size()) {
            return;
        }
        Dial dial = desk.dials().get(index);
        desk.mark();
        desk.tryValue(dial, dial.at(dial.share(desk.value(dial)) + share));
        desk.settle();
    }

    /** A ring round what is held. */
    Studio.Overlay overlay() {
        return kind == null
                ? Studio.Overlay.NONE
                : studio.hits()
                        .of(kind, index)
                        .map(h -> Sheets.ring(h.x(), h.y(), h.width(), h.height()))
                        .orElse(Studio.Overlay.NONE);
    }
}
