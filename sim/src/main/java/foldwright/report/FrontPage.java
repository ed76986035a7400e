// SPDX-License-Identifier: Apache-2.0
package foldwright.report;

import foldwright.report.draw.Box;
import foldwright.report.draw.Palette;
import foldwright.report.draw.SvgSurface;
import foldwright.report.plot.ChangeBars;
import foldwright.report.plot.HeightFigure;
import foldwright.study.Answer;
import foldwright.study.Assess;
import foldwright.study.Assessment;
import foldwright.study.Check;
import foldwright.study.HeightPlot;
import foldwright.study.Numerals;
import foldwright.study.Outcome;
import foldwright.study.Question;
import foldwright.study.Remedy;
import foldwright.study.Verdict;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Page one: the finding, the plate, the six questions, what would change it, the hand sum. */
final class FrontPage {
    /** Natural width of one half of the plate. */
    static final double HALF = 330;

    private static final double LEAST_PLOT = 210;

    private final Html out;
    private final Palette palette;
    private final Assessment assessment;

    FrontPage(Html out, Palette palette, Assessment assessment) {
        this.out = out;
        this.palette = palette;
        this.assessment = assessment;
    }

    void write(LocalDate date) {
        out.open("header").leaf("span.maker", "Foldwright");
        out.leaf("span.running", assessment.machine().name() + " · " + date).close("header");
        Answer headline = assessment.headline();
        out.open("h1").mark(headline.verdict()).text(finding(assessment)).close("h1");
        out.leaf("p.lead", summary(headline));
        plate();
        questions();
        headline.speaker().ifPresent(this::cures);
    }

    /** The finding in one sentence. */
    static String finding(Assessment assessment) {
        Answer headline = assessment.headline();
        return headline.verdict() == Verdict.HOLDS
                ? "Everything checked holds."
                : headline.question().finding(headline.verdict()) + ".";
    }

    private String summary(Answer headline) {
        List<String> parts = new ArrayList<>();
        headline.speaker().ifPresent(c -> parts.add(c.finding()));
        headline.speaker().flatMap(FrontPage::best).ifPresent(parts::add);
        List<String> others =
                assessment.answers().stream()
                        .filter(a -> a.question() != headline.question())
                        .filter(a -> a.verdict() == Verdict.FAILS || a.verdict() == Verdict.TIGHT)
                        .map(a -> lower(a.question().finding(a.verdict())))
                        .toList();
        if (!others.isEmpty()) {
            parts.add("Also: " + String.join("; ", others) + ".");
        }
        return String.join(" ", parts);
    }

    private static String lower(String sentence) {
        return sentence.substring(0, 1).toLowerCase(Locale.ROOT) + sentence.substring(1);
    }

    private static Optional<String> best(Check check) {
        return check.remedies().stream()
                .max(
                        java.util.Comparator.comparingDouble(
                                r -> r.outcome().margin() / r.outcome().holdsFrom()))
                .filter(r -> r.outcome().margin() > check.outcome().margin())
                .map(
                        r ->
                                "With "
                                        + r.words()
                                        + " the worst margin goes from "
                                        + Numerals.margin(check.outcome().margin())
                                        + " to "
                                        + Numerals.margin(r.outcome().margin())
                                        + ".");
    }

    /** The check whose curve stands in the plate: the drive's, or the first that has one. */
    private Optional<Check> plotted() {
        Answer fold = assessment.answers().get(Question.FOLD.ordinal());
        return fold.checks().stream()
                .filter(c -> c.heightPlot().isPresent() && c.id().equals(Assess.MOTOR))
                .findFirst()
                .or(
                        () ->
                                assessment.checks().stream()
                                        .filter(c -> c.heightPlot().isPresent())
                                        .findFirst());
    }

    private void plate() {
        Elevation e = Elevation.of(assessment.machine());
        double length =
                Math.max(
                        e.base().length(), e.base().inset() - e.deck().inset() + e.deck().length());
        double overhang = Math.max(0, e.deck().inset() - e.base().inset());
        double scale = (HALF - 14) / (length + overhang);
        double travel = (e.top() - e.flat()) * scale;
        double over = scale * (e.deck().topAbovePins()) + 10;
        double plot = Math.max(LEAST_PLOT, travel);
        double head = Math.max(HeightFigure.HEAD, over);
        double foot = Math.max(HeightFigure.FOOT, scale * (e.flat() + e.base().pinHeight()) + 30);
        double height = head + plot + foot;
        out.open(large() ? "figure.plate.front.large" : "figure.plate.front");
        SvgSurface machine = new SvgSurface(palette, HALF, height, "e");
        double pins = height - foot + scale * e.flat();
        new ElevationDrawing(machine, e, scale, 7 + scale * overhang, pins).draw();
        out.raw(machine.inline("side view to scale, flat and open"));
        plotted().flatMap(Check::heightPlot).ifPresent(p -> curve(p, height, head, foot));
        out.close("figure");
    }

    /** Few changes below leave room for a larger plate on paper. */
    private boolean large() {
        return assessment.headline().speaker().map(c -> c.remedies().size()).orElse(0) < 5;
    }

    private void curve(HeightPlot plot, double height, double head, double foot) {
        SvgSurface on = new SvgSurface(palette, HALF, height, "t");
        double top = head - HeightFigure.HEAD;
        double bottom = foot - HeightFigure.FOOT;
        HeightFigure.draw(on, new Box(0, top, HALF, height - top - bottom), plot);
        out.raw(on.inline(Spoken.of(plot)));
    }

    private void questions() {
        out.open("table.questions").open("thead").open("tr");
        out.leaf("th.q", "Six questions").leaf("th", "").leaf("th.n", "is");
        out.leaf("th.n", "allowed").leaf("th.n", "margin").leaf("th", "worst at");
        out.close("tr", "thead").open("tbody");
        assessment.answers().forEach(this::row);
        out.close("tbody", "table");
    }

    private void row(Answer answer) {
        String anchor = answer.question().name().toLowerCase(Locale.ROOT);
        out.open("tr").open("td.q").mark(answer.verdict());
        boolean linked = !answer.checks().isEmpty();
        out.raw(linked ? "<a href=\"#" + anchor + "\">" : "");
        out.text(answer.question().words()).raw(linked ? "</a>" : "").close("td");
        out.leaf("td.v." + answer.verdict().word(), answer.verdict().word());
        if (answer.speaker().isPresent()) {
            Outcome o = answer.speaker().get().outcome();
            out.leaf("td.n.is", o.required().text()).leaf("td.n.allowed", o.available().text());
            out.leaf("td.n.margin", Numerals.margin(o.margin())).leaf("td.w", o.worst().text());
        } else {
            out.leaf("td.n.is", "").leaf("td.n.allowed", "").leaf("td.n.margin", "");
            out.leaf("td.w", answer.question().needs());
        }
        out.close("tr");
    }

    private void cures(Check check) {
        if (check.remedies().isEmpty()) {
            out.open("section.front").leaf("h2", "What would change it");
            out.leaf("p", unchanged(check.verdict()));
            HandCards.wide(out, check);
            out.close("section");
            return;
        }
        out.open("section.two.front").open("div");
        out.open("h2").text("What would change it ");
        out.leaf("small", "worst margin after each change, recomputed").close("h2");
        bars(out, palette, check.outcome(), check.remedies(), "c");
        out.close("div");
        HandCards.card(out, check);
        out.close("section");
    }

    private static String unchanged(Verdict verdict) {
        return verdict == Verdict.HOLDS
                ? "Nothing has to change."
                : "No change was tried for this check.";
    }

    /** The bars of changes as a drawing. */
    static void bars(Html out, Palette palette, Outcome now, List<Remedy> remedies, String prefix) {
        double width = 370;
        double height = ChangeBars.height(width, remedies);
        SvgSurface on = new SvgSurface(palette, width, height, prefix);
        ChangeBars.draw(on, new Box(0, 0, width, height), now, remedies);
        out.raw(on.inline("worst margin after each change"));
    }
}
