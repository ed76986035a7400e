// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

import foldwright.report.draw.Face;
import foldwright.study.Amount;
import foldwright.study.Check;
import foldwright.study.Numerals;
import foldwright.study.Outcome;
import foldwright.study.Question;
import foldwright.study.Remedy;
import foldwright.study.Verdict;
import foldwright.viewer.paint.Align;
import foldwright.viewer.paint.Lettering;
import java.util.Comparator;
import java.util.List;

/** The six questions: one opened on a sheet with a folded corner, the others closed. */
final class CardPainter {
    private static final double BAR_END = 4;

    /** Lines below "What would change it", and those of a finding in its place. */
    private static final int REMEDY_LINES = 4;

    private static final int FINDING_LINES = 6;

    /** Lines of what was found at another moment. */
    private static final int BESIDE_LINES = 3;

    private final Pen pen;
    private final Layout at;
    private final SheetModel.Cards cards;
    private final Hits hits;

    CardPainter(Pen pen, SheetModel.Cards cards, Hits hits) {
        this.pen = pen;
        at = pen.at;
        this.cards = cards;
        this.hits = hits;
    }

    void draw(String keys) {
        pen.canvas.text(pen.title(22, 17), at.cardsLeft(), at.of(66, 38), "Six questions");
        double y = at.of(88, 50);
        for (Question question : Question.values()) {
            SheetModel.Answer answer = cards.of(question);
            if (question == cards.open()) {
                double h = at.of(306, 222);
                opened(answer, y, h);
                hits.add(
                        Hits.Kind.CARD,
                        question.ordinal(),
                        at.cardsLeft() - at.of(20, 14),
                        y,
                        at.of(420, 280),
                        h);
                y += h + at.of(6, 0);
            } else {
                double pitch = at.of(112, 81);
                boolean last = question.ordinal() == last();
                closed(answer, y, last);
                hits.add(
                        Hits.Kind.CARD,
                        question.ordinal(),
                        at.cardsLeft(),
                        y + at.of(8, 4),
                        at.of(380, 253),
                        pitch - 4);
                y += pitch;
            }
        }
        if (!at.small) {
            pen.canvas.text(pen.text(pen.palette.ink2), at.cardsLeft(), at.bottom(1050, 711), keys);
        }
    }

    private int last() {
        int n = Question.values().length;
        return cards.open().ordinal() == n - 1 ? n - 2 : n - 1;
    }

    private double textLeft() {
        return at.cardsLeft() + at.of(30, 20);
    }

    // ---- the opened card

    private void opened(SheetModel.Answer answer, double top, double height) {
        double left = at.cardsLeft() - at.of(20, 14);
        double right = at.cardsRight() + at.of(20, 13);
        sheet(left, top, right, top + height);
        double x = textLeft();
        Verdict verdict = answer.verdict();
        pen.mark(verdict, at.cardsLeft() + at.of(9, 6), top + at.of(37, 20), at.of(19, 13));
        Lettering question = new Lettering(Face.SERIF_SEMIBOLD, at.type(22, 16), pen.palette.ink);
        pen.canvas.text(
                question,
                x,
                top + at.of(44, 25),
                pen.fit(question, answer.question().words(), right - at.of(30, 22) - x));
        if (answer.worst().isEmpty()) {
            waiting(answer, x, top + at.of(76, 52));
            return;
        }
        Check check = answer.worst().get();
        Outcome outcome = check.outcome();
        Lettering big = pen.strong(40, 27, pen.palette.ink);
        String number = number(answer.question(), outcome);
        double w = pen.canvas.text(big, x, top + at.of(94, 57), number);
        Lettering word = pen.strong(17, 15, pen.palette.text(verdict));
        pen.canvas.text(word, x + w + at.of(9, 7), top + at.of(76, 57), verdict.word());
        Lettering caption = new Lettering(Face.SANS, at.type(14, 13), pen.palette.ink2);
        String where = where(answer.question(), answer.worst().get());
        if (at.small) {
            pen.canvas.text(
                    caption,
                    x,
                    top + at.of(0, 75),
                    pen.clauses(caption, where, at.cardsRight() - x));
        } else {
            double cx = x + w + at.of(9, 7);
            pen.canvas.text(
                    caption,
                    cx,
                    top + at.of(95, 0),
                    pen.clauses(caption, where, at.cardsRight() - cx));
        }
        bar(outcome, x, at.cardsRight(), top + at.of(117, 86), at.of(5, 3.5));
        barLabels(outcome, x, top + at.of(137, 107));
        int used = beside(answer.beside(), x, top);
        remedies(check, x, top + used * at.of(25, 18), used);
    }

    /** What was found at another moment than the number above, in so many lines. */
    private int beside(String words, double x, double top) {
        if (words.isEmpty()) {
            return 0;
        }
        Lettering text = pen.text(pen.palette.ink);
        List<String> lines = lines(text, words, at.cardsRight() - x);
        int shown = Math.min(BESIDE_LINES, lines.size());
        for (int i = 0; i < shown; i++) {
            pen.canvas.text(text, x, top + at.of(172, 127) + i * at.of(25, 18), lines.get(i));
        }
        return shown;
    }

    private void sheet(double left, double top, double right, double bottom) {
        double fold = at.of(30, 19);
        pen.canvas.path().moveTo(left, top).lineTo(right - fold, top).lineTo(right, top + fold);
        pen.canvas.lineTo(right, bottom).lineTo(left, bottom).closePath().fill(pen.palette.sheet);
        pen.canvas.path().moveTo(left, top).lineTo(right - fold, top).lineTo(right, top + fold);
        pen.canvas.lineTo(right, bottom).lineTo(left, bottom).closePath();
        pen.canvas.stroke(pen.palette.rule, pen.line(1));
        pen.canvas
                .path()
                .moveTo(right - fold, top)
                .lineTo(right - fold, top + fold)
                .lineTo(right, top + fold)
                .closePath();
        pen.canvas.fill(pen.palette.recess);
        pen.canvas
                .path()
                .moveTo(right - fold, top)
                .lineTo(right - fold, top + fold)
                .lineTo(right, top + fold)
                .closePath();
        pen.canvas.stroke(pen.palette.rule, pen.line(1));
    }

    private void waiting(SheetModel.Answer answer, double x, double first) {
        Lettering look = pen.text(pen.palette.ink2);
        double y = first;
        for (String line : lines(look, answer.waiting(), at.cardsRight() - x)) {
            pen.canvas.text(look, x, y, line);
            y += 1.4 * look.em();
        }
    }

    /** Below what took so many lines already. */
    private void remedies(Check check, double x, double top, int used) {
        double y = top + at.of(172, 127);
        Lettering strong = pen.strong(15, 13, pen.palette.ink);
        Lettering text = pen.text(pen.palette.ink);
        double pitch = at.of(25, 18);
        if (check.remedies().isEmpty()) {
            // Nothing to change: the finding says what there is to know.
            List<String> lines = lines(text, check.finding(), at.cardsRight() - x);
            int room = FINDING_LINES - used;
            for (int i = 0; i < Math.min(room, lines.size()); i++) {
                boolean cut = i == room - 1 && lines.size() > room;
                String line = cut ? lines.get(i) + " …" : lines.get(i);
                pen.canvas.text(text.in(pen.palette.ink2), x, y + i * pitch, line);
            }
            return;
        }
        String title = "What would change it" + (used > 0 ? ", without ringing" : "");
        pen.canvas.text(strong, x, y, title);
        y += at.of(27, 18);
        int left = REMEDY_LINES - used;
        for (Remedy remedy : best(check.remedies())) {
            int took = remedy(remedy, x, y, left);
            if (took == 0) {
                // A worse one in the place of this would pass for the better.
                return;
            }
            left -= took;
            y += took * pitch;
        }
    }

    /**
     * Draws one in as many lines as its words need; none, and 0, where these are more than left.
     */
    private int remedy(Remedy remedy, double x, double y, int left) {
        Lettering strong = pen.strong(15, 13, pen.palette.ink);
        Lettering text = pen.text(pen.palette.ink);
        String margin = Numerals.margin(remedy.outcome());
        double from = x + at.of(20, 14);
        double room = at.cardsRight() - pen.canvas.width(strong, margin) - at.of(12, 8) - from;
        List<String> lines = lines(text, remedy.words(), room);
        if (lines.size() > left) {
            return 0;
        }
        pen.mark(remedy.outcome().verdict(), x + at.of(6, 4), y - 0.33 * text.em(), at.of(12, 8.5));
        pen.canvas.text(strong, at.cardsRight(), y, margin, Align.RIGHT);
        for (int i = 0; i < lines.size(); i++) {
            pen.canvas.text(text, from, y + i * at.of(25, 18), lines.get(i));
        }
        return lines.size();
    }

    private List<String> lines(Lettering look, String words, double room) {
        return pen.canvas.fonts().lines(look.typeface(), look.em(), words, (float) room);
    }

    /** The four that help most, best first. */
    private static List<Remedy> best(List<Remedy> all) {
        return all.stream()
                .sorted(Comparator.comparingDouble((Remedy r) -> -r.outcome().margin()))
                .limit(4)
                .toList();
    }

    // ---- closed cards

    private void closed(SheetModel.Answer answer, double top, boolean last) {
        Verdict verdict = answer.verdict();
        double x = textLeft();
        boolean known = answer.worst().isPresent();
        pen.mark(verdict, at.cardsLeft() + at.of(9, 6), top + at.of(38, 26), at.of(17, 12.5));
        Lettering question = pen.question(known ? pen.palette.ink : pen.palette.ink2);
        pen.canvas.text(question, x, top + at.of(45, 31), answer.question().words());
        if (!known) {
            waiting(answer, x, top + at.of(75, 50));
        } else {
            Outcome outcome = answer.worst().get().outcome();
            Lettering number = pen.strong(23, 17, pen.palette.ink);
            double w =
                    pen.canvas.text(
                            number, x, top + at.of(74, 52), number(answer.question(), outcome));
            Lettering word = pen.strong(15, 13, pen.palette.text(verdict));
            pen.canvas.text(word, x + w + at.of(14, 10), top + at.of(74, 52), verdict.word());
            Lettering second = pen.text(pen.palette.ink2);
            String line = where(answer.question(), answer.worst().get());
            pen.canvas.text(
                    second, x, top + at.of(98, 69), pen.clauses(second, line, at.cardsRight() - x));
            double from = at.right(1760, 1173);
            if (x + w + at.of(110, 80) < from && Double.isFinite(outcome.margin())) {
                bar(outcome, from, at.cardsRight(), top + at.of(71, 47), at.of(5, 3.5));
            }
        }
        if (!last) {
            pen.canvas.level(
                    at.cardsLeft(),
                    at.cardsRight(),
                    top + at.of(115, 80),
                    pen.palette.rule,
                    pen.line(1));
        }
    }

    /** The large number: the margin, or for an error or a gap the thing itself. */
    static String number(Question question, Outcome outcome) {
        return switch (question) {
            case LEAN, SKEW -> outcome.required().text();
            case FIT -> spare(outcome).text();
            default -> Numerals.margin(outcome);
        };
    }

    private static Amount spare(Outcome outcome) {
        return Amount.of(
                outcome.available().si() - outcome.required().si(), outcome.available().unit());
    }

    static String where(Question question, Check check) {
        Outcome outcome = check.outcome();
        String place = outcome.worst().text();
        return switch (question) {
            case LEAN, SKEW ->
                    "of "
                            + outcome.available().text()
                            + " allowed"
                            + (place.isEmpty() ? "" : ", " + place);
            case FIT -> "to spare: " + lower(check.title());
            default -> place.isEmpty() ? lower(check.title()) : "worst at " + place;
        };
    }

    /** A title inside a sentence: its first letter small, unless the word is an abbreviation. */
    private static String lower(String title) {
        boolean word = title.length() > 1 && Character.isLowerCase(title.charAt(1));
        return word ? Character.toLowerCase(title.charAt(0)) + title.substring(1) : title;
    }

    // ---- the bar: a margin from 0 to 4, needed at 1, rule at its own place

    private double barAt(double margin, double x0, double x1) {
        return x0 + (x1 - x0) * Math.min(1, Math.max(0, margin) / BAR_END);
    }

    private void bar(Outcome outcome, double x0, double x1, double y, double h) {
        pen.canvas.path().rect(x0, y - h / 2, x1 - x0, h).fill(pen.palette.recess);
        double margin = outcome.margin();
        if (Double.isNaN(margin)) {
            return;
        }
        double end = barAt(Double.isInfinite(margin) ? BAR_END : margin, x0, x1);
        pen.canvas
                .path()
                .rect(x0, y - h / 2, end - x0, h)
                .fill(pen.palette.fill(outcome.verdict()));
        double tick = at.of(6, 4.5);
        pen.canvas.upright(barAt(1, x0, x1), y - tick, y + tick, pen.palette.ink, pen.line(1.5));
        if (outcome.holdsFrom() > 1) {
            pen.canvas.upright(
                    barAt(outcome.holdsFrom(), x0, x1),
                    y - 0.7 * tick,
                    y + 0.7 * tick,
                    pen.palette.ink2,
                    pen.line(1.1));
        }
    }

    private void barLabels(Outcome outcome, double x, double y) {
        Lettering look = pen.tick(pen.palette.ink2);
        double needed = barAt(1, x, at.cardsRight());
        if (outcome.holdsFrom() > 1) {
            double rule = barAt(outcome.holdsFrom(), x, at.cardsRight());
            String words =
                    "rule " + Numerals.given(Math.round(100 * outcome.holdsFrom()) / 100.0) + "×";
            pen.canvas.text(look, Math.min(needed, rule - at.of(20, 14)), y, "needed", Align.RIGHT);
            pen.canvas.text(look, rule - at.of(4, 3), y, words);
        } else {
            pen.canvas.text(look, needed, y, "needed", Align.CENTRE);
        }
    }
}
