// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

import foldwright.report.draw.Face;
import foldwright.report.plot.Band;
import foldwright.report.plot.Scale;
import foldwright.study.HeightPlot;
import foldwright.study.Numerals;
import foldwright.study.Series;
import foldwright.study.Shown;
import foldwright.study.Verdict;
import foldwright.viewer.paint.Align;
import foldwright.viewer.paint.Lettering;
import foldwright.viewer.paint.Texture;
import java.util.List;

/** The opened question's quantity over height, on the machine's own height axis. */
final class PlotPainter {
    /** A need beyond so many times the limit is cut, and said so. */
    private static final double CUT = 5;

    private final Pen pen;
    private final Layout at;
    private final Scale scale;
    private final HeightPlot plot;
    private final Shown unit;
    private final Scale x;
    private final boolean cut;
    private final double top;
    private final double bottom;
    private final Second second;
    private double height;
    private String worstWords;
    private String shortWords;
    private String ruleWords;

    /** How the second curve is drawn. */
    enum Second {
        DASHED,
        /** Rings on the way, for a run that mostly lies on the curve. */
        RINGS
    }

    PlotPainter(Pen pen, Scale scale, HeightPlot plot, Second second) {
        this.pen = pen;
        this.second = second;
        at = pen.at;
        this.scale = scale;
        this.plot = plot;
        unit = plot.caption().unit();
        top = scale.at(scale.high());
        bottom = scale.at(scale.low());
        double limit = plot.available().map(a -> finiteMax(a.values())).orElse(0.0);
        double most = Math.max(finiteMax(plot.needed()), limit);
        cut = limit > 0 && most > CUT * limit;
        double high = unit.fromSi(cut ? CUT * limit : most);
        double low = unit.fromSi(Math.min(0, finiteMin(plot.needed())));
        double end = high > 0 ? 1.12 * high : 1;
        x = new Scale(low, end, at.plotLeft(), at.plotRight());
    }

    /** Whether it draws this curve there. */
    boolean fits(HeightPlot curve, Second how, Scale heights) {
        return plot == curve && second == how && scale.equals(heights);
    }

    private static double finiteMax(Series s) {
        double most = 0;
        for (int i = 0; i < s.size(); i++) {
            most = Double.isFinite(s.at(i)) ? Math.max(most, s.at(i)) : most;
        }
        return most;
    }

    private static double finiteMin(Series s) {
        double least = 0;
        for (int i = 0; i < s.size(); i++) {
            least = Double.isFinite(s.at(i)) ? Math.min(least, s.at(i)) : least;
        }
        return least;
    }

    private double px(double si) {
        double value = unit.fromSi(si);
        return x.at(x.held(Double.isNaN(value) ? x.high() : value));
    }

    /** Place of the curve at the height of the tab [px]. */
    double curveAt(double height) {
        return px(plot.needed().over(plot.height(), height));
    }

    void draw() {
        for (double tick : x.ticks(4)) {
            pen.canvas.upright(x.at(tick), top, bottom, pen.palette.rule, pen.line(1));
        }
        area();
        plot.available().ifPresent(this::shortfall);
        pen.canvas.upright(x.at(0), top, bottom, pen.palette.ink, pen.line(1.1));
        plot.available().ifPresent(this::limit);
        if (second == Second.DASHED) {
            plot.beside().forEach(this::beside);
        }
        curve(plot.needed());
        pen.canvas.strokeRound(pen.palette.ink, pen.line(2.6));
        if (second == Second.RINGS) {
            plot.beside().forEach(this::rings);
        }
        titles();
        below();
    }

    private void curve(Series values) {
        pen.canvas.path();
        boolean down = false;
        for (int i = 0; i < plot.height().size(); i++) {
            if (Double.isNaN(values.at(i))) {
                down = false;
                continue;
            }
            double py = scale.at(plot.height().at(i));
            if (down) {
                pen.canvas.lineTo(px(values.at(i)), py);
            } else {
                pen.canvas.moveTo(px(values.at(i)), py);
            }
            down = true;
        }
    }

    private void area() {
        pen.canvas.path().moveTo(x.at(0), scale.at(plot.height().first()));
        for (int i = 0; i < plot.height().size(); i++) {
            pen.canvas.lineTo(px(plot.needed().at(i)), scale.at(plot.height().at(i)));
        }
        pen.canvas
                .lineTo(x.at(0), scale.at(plot.height().last()))
                .closePath()
                .fill(pen.palette.recess);
    }

    /** Where the margin is short: between the limit (over its rule) and the need. */
    private void shortfall(HeightPlot.Limit limit) {
        for (Band band : Band.of(plot.height(), plot.margin(), limit.holdsFrom())) {
            if (band.verdict() == Verdict.FAILS) {
                between(limit.values(), band, 1);
                pen.area(Verdict.FAILS);
                between(limit.values(), band, 1);
                pen.canvas.stroke(pen.palette.fill(Verdict.FAILS), pen.line(1.4));
            } else if (band.verdict() == Verdict.TIGHT) {
                between(limit.values(), band, limit.holdsFrom());
                pen.area(Verdict.TIGHT);
            }
        }
    }

    private void between(Series limit, Band band, double over) {
        Series h = plot.height();
        pen.canvas.path().moveTo(px(plot.needed().over(h, band.from())), scale.at(band.from()));
        for (int i = 0; i < h.size(); i++) {
            if (h.at(i) > band.from() && h.at(i) < band.to()) {
                pen.canvas.lineTo(px(plot.needed().at(i)), scale.at(h.at(i)));
            }
        }
        pen.canvas.lineTo(px(plot.needed().over(h, band.to())), scale.at(band.to()));
        pen.canvas.lineTo(px(limit.over(h, band.to()) / over), scale.at(band.to()));
        for (int i = h.size() - 1; i >= 0; i--) {
            if (h.at(i) > band.from() && h.at(i) < band.to()) {
                pen.canvas.lineTo(px(limit.at(i) / over), scale.at(h.at(i)));
            }
        }
        pen.canvas.lineTo(px(limit.over(h, band.from()) / over), scale.at(band.from())).closePath();
    }

    private void limit(HeightPlot.Limit limit) {
        double band = at.of(14, 9);
        pen.canvas.path();
        Series h = plot.height();
        for (int i = 0; i < h.size(); i++) {
            double px = px(limit.values().at(i));
            if (i == 0) {
                pen.canvas.moveTo(px, scale.at(h.at(i)));
            } else {
                pen.canvas.lineTo(px, scale.at(h.at(i)));
            }
        }
        for (int i = h.size() - 1; i >= 0; i--) {
            pen.canvas.lineTo(px(limit.values().at(i)) + band, scale.at(h.at(i)));
        }
        pen.canvas.closePath();
        pen.canvas.fill(Texture.HATCH, pen.palette.ink3);
        curve(limit.values());
        pen.canvas.strokeRound(pen.palette.ink, pen.line(2.2));
        rule(limit);
        Lettering look = pen.over(pen.strong(14, 13, pen.palette.ink));
        String words = limit.words() + " " + range(limit.values());
        double w = pen.canvas.width(look, words);
        double centre = px(limit.values().last());
        double left = Math.min(centre - w / 2, at.plotRight() + at.of(12, 8) - w);
        pen.canvas.text(look, Math.max(at.plotLeft(), left), top - at.of(14, 12), words);
    }

    /** The value, or where it changes along the heights the least and the largest. */
    private String range(Series values) {
        double most = finiteMax(values);
        double least = most;
        for (int i = 0; i < values.size(); i++) {
            least = Double.isFinite(values.at(i)) ? Math.min(least, values.at(i)) : least;
        }
        String high = Numerals.number(unit.fromSi(most));
        return least > 0.98 * most ? high : Numerals.number(unit.fromSi(least)) + " to " + high;
    }

    private void rule(HeightPlot.Limit limit) {
        if (limit.holdsFrom() <= 1) {
            return;
        }
        Series h = plot.height();
        float[] xs = new float[h.size()];
        float[] ys = new float[h.size()];
        for (int i = 0; i < xs.length; i++) {
            xs[i] = (float) (Math.floor(px(limit.values().at(i) / limit.holdsFrom())) + 0.5);
            ys[i] = (float) scale.at(h.at(i));
        }
        pen.canvas.path().dashes(xs, ys, xs.length, 2, 3);
        pen.canvas.stroke(pen.palette.ink2, pen.line(1.2));
    }

    /**
     * The words of the rule, left of its line, where neither the curve nor the tab is in the way.
     */
    private void ruleWords() {
        HeightPlot.Limit limit = plot.available().orElse(null);
        double y = top + at.of(22, 18);
        if (limit == null || limit.holdsFrom() <= 1 || nearTab(y)) {
            return;
        }
        if (ruleWords == null) {
            ruleWords = "rule " + Numerals.given(limit.holdsFrom()) + "×";
        }
        double right = px(limit.values().last() / limit.holdsFrom()) - at.of(6, 4);
        Lettering look = pen.over(pen.tick(pen.palette.ink2));
        double need = px(plot.needed().over(plot.height(), scale.value(y)));
        if (right - pen.canvas.width(look, ruleWords) > need + 4) {
            pen.canvas.text(look, right, y, ruleWords, Align.RIGHT);
        }
    }

    private boolean nearTab(double y) {
        return Math.abs(y - scale.at(height)) < at.of(20, 18);
    }

    private void beside(HeightPlot.Beside other) {
        int n = plot.height().size();
        float[] xs = new float[n];
        float[] ys = new float[n];
        pen.canvas.path();
        int known = 0;
        for (int i = 0; i <= n; i++) {
            if (i < n && Double.isFinite(other.values().at(i))) {
                xs[known] = (float) px(other.values().at(i));
                ys[known++] = (float) scale.at(plot.height().at(i));
            } else if (known > 0) {
                pen.canvas.dashes(xs, ys, known, 5, 4);
                known = 0;
            }
        }
        pen.canvas.stroke(pen.palette.ink, pen.line(1.4));
    }

    private void rings(HeightPlot.Beside other) {
        double r = at.of(3.6, 2.8);
        for (double y = bottom; y >= top; y -= at.of(22, 16)) {
            double px = px(other.values().over(plot.height(), scale.value(y)));
            if (Double.isFinite(other.values().over(plot.height(), scale.value(y)))) {
                pen.canvas.path().disc(px, y, r).fill(pen.palette.paper);
                pen.canvas.path().disc(px, y, r).stroke(pen.palette.ink, pen.line(1.4));
            }
        }
    }

    private void titles() {
        double left = at.plotLeft();
        String symbol = unit.symbol();
        Lettering title = pen.strong(15, 13, pen.palette.ink);
        Lettering second = pen.text(pen.palette.ink2);
        double room = at.cardsLeft() - at.of(34, 24) - left;
        if (at.small) {
            pen.canvas.text(
                    title, left, top - 57 * at.unit, pen.fit(title, plot.caption().title(), room));
            String words = (symbol.isEmpty() ? "" : symbol + ", ") + below("same height");
            pen.canvas.text(second, left, top - 42 * at.unit, pen.fit(second, words, room));
        } else {
            String words = plot.caption().title() + (symbol.isEmpty() ? "" : ", " + symbol);
            pen.canvas.text(title, left, top - 64 * at.unit, pen.fit(title, words, room));
            pen.canvas.text(
                    second,
                    left,
                    top - 46 * at.unit,
                    pen.fit(second, below("same height as the machine"), room));
        }
    }

    /** The second line of the title: what is dashed, or else that heights are shared. */
    private String below(String orElse) {
        String how = second == Second.DASHED ? "dashed: " : "rings: ";
        return plot.beside().isEmpty() ? orElse : how + plot.beside().get(0).words();
    }

    private void below() {
        Lettering look = pen.tick(pen.palette.ink2);
        int most = 4;
        for (double tick : x.ticks(most)) {
            pen.canvas.upright(
                    x.at(tick), bottom, bottom + at.of(6, 4), pen.palette.ink2, pen.line(1));
            pen.canvas.text(
                    look,
                    x.at(tick),
                    bottom + at.of(22, 18),
                    tick == 0 ? "0" : Numerals.fixed(tick, x.decimals(most)),
                    Align.CENTRE);
        }
        if (cut) {
            Lettering hint = new Lettering(Face.SANS_ITALIC, look.em(), pen.palette.ink2);
            pen.canvas.text(
                    hint,
                    at.plotRight(),
                    bottom + at.of(42, 34),
                    "needs up to " + Numerals.with(finiteMax(plot.needed()), unit),
                    Align.RIGHT);
        }
    }

    /** What depends on the tab's height [m], and the worst point; drawn after the level line. */
    void over(double tab) {
        height = tab;
        ruleWords();
        worst();
    }

    private void worst() {
        int worst = plot.worst();
        if (worst < 0 || plot.available().isEmpty()) {
            return;
        }
        double margin = plot.margin().at(worst);
        Verdict verdict = Verdict.of(margin, plot.available().get().holdsFrom());
        double px = px(plot.needed().at(worst));
        double py = scale.at(plot.height().at(worst));
        pen.mark(verdict, px, py, at.of(19, 14));
        Lettering look = pen.over(pen.strong(14, 13, pen.palette.ink));
        if (worstWords == null) {
            shortWords = Numerals.with(plot.needed().at(worst), unit);
            worstWords = at.small ? shortWords : "needs " + shortWords;
        }
        String words = worstWords;
        double w = pen.canvas.width(look, words);
        // At the upper end the words of the limit stand above the plot.
        boolean above = py - at.of(14, 11) - look.em() > top - at.of(8, 6);
        double y = above ? py - at.of(14, 11) : py + at.of(14, 11) + 0.7 * look.em();
        double right = Math.min(px - at.of(13, 10), at.plotRight() - 2);
        for (double up = 0; up <= look.em(); up += look.em() / 4) {
            double there = scale.held(scale.value(y - up + 0.2 * look.em()));
            right = Math.min(right, px(plot.needed().over(plot.height(), there)) - at.of(8, 6));
        }
        double left = right - w;
        if (above && px - right > at.of(60, 42)) {
            // The curve falls away beside the mark: the words stand above it, with a leader.
            double up = py - 3.0 * look.em();
            left = Math.min(px + at.of(10, 8), at.plotRight() + at.of(12, 8)) - w;
            pen.canvas.upright(
                    px, up + 0.35 * look.em(), py - at.of(12, 9), pen.palette.ink2, pen.line(1));
            y = up;
        } else if (left < at.plotLeft() + at.of(4, 3)) {
            rightOfMark(look, worst, px, y);
            return;
        }
        pen.canvas.text(look, left, y, words);
    }

    /**
     * The words of the worst point where there is no room inside the curve: to the right of the
     * mark, short if need be, above it if even so they would cross the limit.
     */
    private void rightOfMark(Lettering look, int worst, double px, double y) {
        double limit = px(plot.available().orElseThrow().values().at(worst));
        double end = limit > px ? limit - at.of(7, 5) : at.plotRight() + at.of(12, 8);
        double beside = px + at.of(15, 11);
        for (String words : List.of(worstWords, shortWords)) {
            double w = pen.canvas.width(look, words);
            if (beside + w <= end) {
                pen.canvas.text(look, beside, y, words);
                return;
            }
        }
        double w = pen.canvas.width(look, shortWords);
        pen.canvas.text(look, end - w, y - at.of(8, 6), shortWords);
    }
}
