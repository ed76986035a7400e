// SPDX-License-Identifier: Apache-2.0
package foldwright.report;

import foldwright.report.draw.Box;
import foldwright.report.draw.Palette;
import foldwright.report.draw.SvgSurface;
import foldwright.report.plot.AreaMap;
import foldwright.report.plot.BudgetStack;
import foldwright.report.plot.DirectionRose;
import foldwright.report.plot.HeightFigure;
import foldwright.report.plot.Scales;
import foldwright.report.plot.SignedChart;
import foldwright.study.Amount;
import foldwright.study.Answer;
import foldwright.study.AreaPlot;
import foldwright.study.Check;
import foldwright.study.DirectionPlot;
import foldwright.study.HeightPlot;
import foldwright.study.Numerals;
import foldwright.study.Outcome;
import foldwright.study.Plot;
import foldwright.study.Share;
import foldwright.study.Shown;
import foldwright.study.SignedCurve;
import foldwright.study.Split;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** One question: all its checks in a table, then each with its plot, shares and hand sum. */
final class QuestionPage {
    private static final double FIGURE = 330;
    private static final double HEIGHT = 380;

    /** Height of a curve that changes little along its way. */
    private static final double LOW = 270;

    private static final double ROUND = 340;

    /** Share of the largest that is told as about nothing. */
    private static final double SLIGHT = 0.002;

    /** Least share of the largest that stands beside the stack, where each cause has its area. */
    private static final double FINE = 1e-4;

    private final Html out;
    private final Palette palette;
    private final Answer answer;
    private final Optional<Check> onFrontPage;
    private int drawings;

    QuestionPage(Html out, Palette palette, Answer answer, Optional<Check> onFrontPage) {
        this.onFrontPage = onFrontPage;
        this.out = out;
        this.palette = palette;
        this.answer = answer;
    }

    /** The question with nothing between its checks and their grounds. */
    void write() {
        write(() -> {});
    }

    /** The question, with something of its own between its checks and their grounds. */
    void write(Runnable between) {
        String name = answer.question().name().toLowerCase(Locale.ROOT);
        out.raw("<section class=\"page\" id=\"" + name + "\">");
        out.open("h1").mark(answer.verdict()).text(answer.question().words()).close("h1");
        answer.speaker().ifPresent(c -> out.leaf("p.lead", c.finding()));
        table();
        between.run();
        answer.checks().stream().filter(c -> !brief(c)).forEach(this::check);
        List<Check> brief = answer.checks().stream().filter(QuestionPage::brief).toList();
        if (!brief.isEmpty()) {
            out.open("div.brief");
            brief.forEach(this::check);
            out.close("div");
        }
        out.close("section");
    }

    /** A check without a plot or changes: two of these stand beside one another. */
    private static boolean brief(Check c) {
        return c.plot().isEmpty() && c.remedies().isEmpty();
    }

    private void table() {
        if (answer.checks().isEmpty()) {
            return;
        }
        out.open("table.checks").open("thead").open("tr");
        out.leaf("th.q", "Check").leaf("th", "").leaf("th.n", "is").leaf("th.n", "allowed");
        out.leaf("th.n", "margin").leaf("th", "worst at").close("tr", "thead").open("tbody");
        for (Check c : answer.checks()) {
            Outcome o = c.outcome();
            out.open("tr").open("td.q").mark(c.verdict()).text(c.title()).close("td");
            out.leaf("td.v." + c.verdict().word(), c.verdict().word());
            out.leaf("td.n.is", o.required().text()).leaf("td.n.allowed", o.available().text());
            out.leaf("td.n.margin", Numerals.margin(o.margin())).leaf("td.w", o.worst().text());
            out.close("tr");
        }
        out.close("tbody", "table");
    }

    private void check(Check c) {
        boolean split = c.heightPlot().map(p -> !p.layers().isEmpty()).orElse(false);
        out.open(split ? "article.long" : "article")
                .open("h2")
                .mark(c.verdict())
                .text(c.title())
                .close("h2");
        out.leaf("p", c.finding());
        if (split) {
            budget(c, c.heightPlot().get());
            grounds(c);
            if (onFrontPage.filter(c::equals).isEmpty()) {
                HandCards.wide(out, c);
            }
            out.close("article");
            return;
        }
        out.open("section.two").open("div");
        c.plot().ifPresent(this::figure);
        c.grounds().split().ifPresent(s -> ShareTable.write(out, palette, s));
        grounds(c);
        out.close("div");
        if (onFrontPage.filter(c::equals).isEmpty()) {
            HandCards.card(out, c);
        }
        out.close("section", "article");
    }

    /** What would change it, and what the check leaves out. */
    private void grounds(Check c) {
        if (onFrontPage.filter(c::equals).isPresent()) {
            out.leaf("p.limit", "What would change it, and the sum by hand: first page.");
        } else if (!c.remedies().isEmpty()) {
            out.leaf("h3", "What would change it");
            FrontPage.bars(out, palette, c.outcome(), c.remedies(), prefix());
        }
        c.grounds().limits().forEach(l -> out.leaf("p.limit", l));
    }

    private String prefix() {
        return answer.question().name().toLowerCase(Locale.ROOT) + drawings++;
    }

    private void figure(Plot plot) {
        if (plot instanceof HeightPlot height) {
            figure(height);
        } else if (plot instanceof SignedCurve curve) {
            SvgSurface on = new SvgSurface(palette, FIGURE, LOW, prefix());
            SignedChart.draw(on, new Box(0, 0, FIGURE, LOW), curve, Shown.MILLIMETRE);
            out.raw(on.inline(curve.caption().title() + ", " + curve.caption().subtitle()));
        } else if (plot instanceof DirectionPlot rose) {
            SvgSurface on = new SvgSurface(palette, FIGURE, ROUND, prefix());
            DirectionRose.draw(on, new Box(0, 0, FIGURE, ROUND), rose);
            out.raw(on.inline(rose.caption().title() + ", " + rose.caption().subtitle()));
        } else if (plot instanceof AreaPlot area) {
            SvgSurface on = new SvgSurface(palette, FIGURE, HEIGHT, prefix());
            AreaMap.draw(on, new Box(0, 0, FIGURE, HEIGHT), area);
            out.raw(on.inline(area.caption().title() + ", " + area.caption().subtitle()));
        }
    }

    private void figure(HeightPlot plot) {
        SvgSurface curve = new SvgSurface(palette, FIGURE, HEIGHT, prefix());
        HeightFigure.draw(curve, new Box(0, 0, FIGURE, HEIGHT), plot);
        out.raw(curve.inline(Spoken.of(plot)));
    }

    private void budget(Check c, HeightPlot plot) {
        out.open("figure.plate").open("div");
        figure(plot);
        out.close("div").open("div.budget");
        stack(plot);
        shares(c, plot);
        out.close("div", "figure");
    }

    private void stack(HeightPlot plot) {
        double width = 165;
        double height = HEIGHT;
        SvgSurface on = new SvgSurface(palette, width, height, prefix());
        Box box =
                new Box(
                        14,
                        HeightFigure.HEAD,
                        width - 34,
                        height - HeightFigure.HEAD - HeightFigure.FOOT);
        Scales.title(on, 14, "By cause, " + plot.caption().unit().symbol(), "same heights");
        new BudgetStack(on, Scales.height(plot, box), box, plot).draw();
        out.raw(on.inline("the same split by cause"));
    }

    /** Every cause that is drawn, also one that adds nothing at the worst height. */
    private static List<Share> drawn(Check c, HeightPlot plot) {
        List<Share> shares = new ArrayList<>();
        c.grounds().split().ifPresent(s -> shares.addAll(s.above(FINE)));
        for (HeightPlot.Layer layer : plot.layers()) {
            if (shares.stream().noneMatch(s -> s.cause() == layer.cause())) {
                shares.add(Share.of(layer.cause(), Amount.of(0, plot.caption().unit())));
            }
        }
        shares.sort(Comparator.comparing(Share::cause).reversed());
        return shares;
    }

    private void shares(Check c, HeightPlot plot) {
        out.open("table.shares").open("caption");
        out.text(c.outcome().worst().text()).close("caption").open("tbody");
        List<Share> shares = drawn(c, plot);
        for (Share s : shares) {
            String hex = palette.cause(s.cause()).hex();
            out.open("tr").open("td");
            out.raw(
                    "<svg class=\"swatch\" viewBox=\"0 0 10 10\"><path d=\"M0 0H10V10H0Z\" fill=\""
                            + hex
                            + "\"/></svg>");
            out.text(s.cause().label()).close("td");
            out.leaf("td.n", text(s.amount(), c)).close("tr");
        }
        out.open("tr.sum").leaf("td", "needed");
        out.leaf("td.n", c.outcome().required().text()).close("tr");
        out.close("tbody", "table");
    }

    /** A share; one too small to matter without the digits that nobody reads. */
    private static String text(Amount share, Check c) {
        double largest = c.grounds().split().map(Split::largest).orElse(0.0);
        boolean slight = share.si() != 0 && Math.abs(share.si()) < SLIGHT * largest;
        return slight ? "\u2248 0\u00a0" + share.unit().symbol() : share.text();
    }
}
