// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

import foldwright.study.Check;
import foldwright.viewer.paint.Lettering;

/**
 * The answer to the open question in two lines at the foot, where there is no room for six: mark,
 * number, word and question; below them where, or the caption of a film or the clock of a run.
 */
final class AnswerPainter {
    private final Pen pen;
    private final Layout at;

    AnswerPainter(Pen pen) {
        this.pen = pen;
        at = pen.at;
    }

    void draw(SheetModel model) {
        double left = at.tableLeft();
        double right = at.plotRight();
        double top = at.rulesTop();
        pen.canvas.level(left, right, top, pen.palette.rule, pen.line(1));
        SheetModel.Answer answer = model.cards().of(model.cards().open());
        pen.mark(answer.verdict(), left + 6, top + 18, 12.5);
        double x = left + 20;
        String where = answer.waiting();
        if (answer.worst().isPresent()) {
            Check check = answer.worst().get();
            Lettering number = pen.strong(23, 17, pen.palette.ink);
            x +=
                    10
                            + pen.canvas.text(
                                    number,
                                    x,
                                    top + 23,
                                    CardPainter.number(answer.question(), check.outcome()));
            Lettering word = pen.strong(15, 13, pen.palette.text(answer.verdict()));
            x += 14 + pen.canvas.text(word, x, top + 23, answer.verdict().word());
            where = CardPainter.where(answer.question(), check);
        }
        Lettering question = pen.question(pen.palette.ink);
        String words = answer.question().words();
        if (pen.canvas.width(question, words) <= right - x) {
            pen.canvas.text(question, x, top + 23, words);
        }
        Lettering second = pen.text(pen.palette.ink2);
        pen.canvas.text(
                second, left, top + 45, pen.whole(second, below(model, where), right - left));
    }

    /** Where the answer was found, then what is drawn now. */
    private static String below(SheetModel model, String where) {
        StringBuilder all = new StringBuilder(where);
        model.notes().caption().ifPresent(c -> all.append(", now: ").append(c));
        if (model.playing().isPresent()) {
            Playing.Clock clock = model.playing().get().clock();
            if (model.notes().caption().isEmpty()) {
                all.append(", now: ").append(clock.shown());
            }
            all.append(", ").append(clock.time());
        }
        return all.toString();
    }
}
