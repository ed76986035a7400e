// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

import foldwright.study.Check;
import foldwright.study.HeightPlot;
import foldwright.study.Question;
import foldwright.study.Verdict;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What stands on the sheet.
 *
 * @param head title and what is drawn
 * @param travel heights and where the tab is
 * @param ink what the ink shows, if it shows a load
 * @param plot the opened question's quantity over height
 * @param cards the six questions
 * @param rules the main numbers
 * @param notes short texts the state asks for
 * @param playing a run being looked at
 */
public record SheetModel(
        Head head,
        Travel travel,
        Optional<InkLegend> ink,
        Optional<HeightPlot> plot,
        Cards cards,
        List<Rule> rules,
        Notes notes,
        Optional<Playing> playing) {

    /** A sheet without a run. */
    public SheetModel(
            Head head,
            Travel travel,
            Optional<InkLegend> ink,
            Optional<HeightPlot> plot,
            Cards cards,
            List<Rule> rules,
            Notes notes) {
        this(head, travel, ink, plot, cards, rules, notes, Optional.empty());
    }

    /** The same with another head, tab and plot. */
    public SheetModel with(Head other, Travel at, Optional<HeightPlot> curve) {
        return new SheetModel(other, at, ink, curve, cards, rules, notes, playing);
    }

    /** The same with another ink. */
    public SheetModel ink(InkLegend other) {
        return new SheetModel(head, travel, Optional.of(other), plot, cards, rules, notes, playing);
    }

    /** The same with other answers. */
    public SheetModel cards(Cards other) {
        return new SheetModel(head, travel, ink, plot, other, rules, notes, playing);
    }

    /** The same with a run. */
    public SheetModel playing(Playing run) {
        return new SheetModel(head, travel, ink, plot, cards, rules, notes, Optional.of(run));
    }

    /**
     * Top of the sheet.
     *
     * @param title name of the machine
     * @param drawn what is drawn with full lines
     * @param dashed what is drawn dashed, if anything
     * @param larger factor by which skew and lean are drawn larger; 1 is true
     */
    public record Head(String title, String drawn, Optional<String> dashed, double larger) {}

    /**
     * The way of the deck.
     *
     * @param flat pivot height folded [m]
     * @param top pivot height open [m]
     * @param height now [m]
     * @param caption below the tab: the time, "lying flat"
     * @param noGo heights where something must not be
     */
    public record Travel(double flat, double top, double height, String caption, List<NoGo> noGo) {
        /** 0 flat to 1 top. */
        public double share() {
            return (height - flat) / (top - flat);
        }
    }

    /**
     * Heights where something must not be [m], in three short lines, e.g. "tool off", "below", "58
     * mm".
     */
    public record NoGo(
            double from, double to, String words, List<String> apart, String second, String third) {
        /** The words can also stand below one another. */
        public NoGo(double from, double to, String words, String second, String third) {
            this(from, to, words, List.of(words.split(" ")), second, third);
        }
    }

    /**
     * The scale of the ink.
     *
     * @param title e.g. "arm bending, N·m"
     * @param end end of the scale in the unit; begins at 0, or at -end when signed
     * @param now largest now, in the unit
     * @param darkest where the largest is
     * @param ends words at both ends of a signed scale
     */
    public record InkLegend(
            String title, double end, double now, String darkest, Optional<Ends> ends) {}

    /** Words for minus and plus. */
    public record Ends(String minus, String plus) {}

    /** The questions and which one is open. */
    public record Cards(List<Answer> answers, Question open) {
        /** The answer to a question. */
        public Answer of(Question question) {
            return answers.get(question.ordinal());
        }

        /** The same with another answer to its question. */
        public Cards with(Answer other) {
            List<Answer> out = new ArrayList<>(answers);
            out.set(other.question().ordinal(), other);
            return new Cards(out, open);
        }

        /** Whether the same checks are shown. */
        boolean shows(Cards other) {
            boolean same = open == other.open && answers.size() == other.answers.size();
            for (int i = 0; same && i < answers.size(); i++) {
                same = answers.get(i).shows(other.answers.get(i));
            }
            return same;
        }
    }

    /**
     * The answer to one question.
     *
     * @param question which
     * @param checks what is known, may be empty
     * @param waiting why nothing is known yet
     * @param beside what was found at another moment than the answer, and at which; may be empty
     */
    public record Answer(Question question, List<Check> checks, String waiting, String beside) {
        public Answer {
            checks = List.copyOf(checks);
        }

        /** An answer beside which nothing else is known. */
        public Answer(Question question, List<Check> checks, String waiting) {
            this(question, checks, waiting, "");
        }

        /** Whether these are the very same checks. */
        boolean shows(Answer other) {
            boolean same =
                    checks.size() == other.checks.size()
                            && waiting.equals(other.waiting)
                            && beside.equals(other.beside);
            for (int i = 0; same && i < checks.size(); i++) {
                same = checks.get(i) == other.checks.get(i);
            }
            return same;
        }

        /** The check it speaks with: its worst, or its first where all hold, as in the report. */
        public Optional<Check> worst() {
            return new foldwright.study.Answer(question, checks).speaker();
        }

        public Verdict verdict() {
            return worst().map(Check::verdict).orElse(Verdict.UNKNOWN);
        }
    }

    /**
     * One main number on its rule.
     *
     * @param name what it is
     * @param value with unit
     * @param low value at the left end, with or without unit
     * @param high value at the right end, with unit
     * @param at handle, 0 to 1
     * @param before handle of the file's value, when another is tried
     * @param beforeText e.g. "file 3:1"
     * @param hill worst margin over the travel at even steps along the rule; empty when not
     *     computed
     */
    public record Rule(
            String name,
            String value,
            String low,
            String high,
            double at,
            Optional<Double> before,
            String beforeText,
            Hill hill) {}

    /** Margins at even steps along a rule, and from where they hold. */
    public record Hill(List<Double> margins, double holdsFrom) {
        public static final Hill NONE = new Hill(List.of(), Verdict.RULE);
    }

    /**
     * Texts of the state.
     *
     * @param box words of the outline on the table, e.g. "drawer 450 x 360 x 110 mm"
     * @param keys foot line of the cards
     * @param rulesHint foot line of the rules
     * @param caption of a film; it stands where the rules would be
     */
    public record Notes(String box, String keys, String rulesHint, Optional<String> caption) {}
}
