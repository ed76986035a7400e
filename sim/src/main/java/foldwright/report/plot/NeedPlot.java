// SPDX-License-Identifier: Apache-2.0
package foldwright.report.plot;

import foldwright.report.draw.Align;
import foldwright.report.draw.Box;
import foldwright.report.draw.Colour;
import foldwright.report.draw.Dash;
import foldwright.report.draw.Fill;
import foldwright.report.draw.Ground;
import foldwright.report.draw.Marks;
import foldwright.report.draw.Path;
import foldwright.report.draw.Pen;
import foldwright.report.draw.Surface;
import foldwright.report.draw.TextStyle;
import foldwright.study.HeightPlot;
import foldwright.study.Numerals;
import foldwright.study.Series;
import foldwright.study.Shown;
import foldwright.study.Verdict;

/**
 * What is needed over the height, upright, with its limit: the area to zero as recessed ground, the
 * shortfall striped and framed, the worst point named. A need beyond eight times the limit is cut
 * and said so.
 */
public final class NeedPlot {
    private static final double CUT = 8;

    private final Surface on;
    private final Type type;
    private final Scale height;
    private final Box box;
    private final HeightPlot plot;
    private final Shown unit;
    private final Scale x;
    private final boolean cut;

    /**
     * A plot.
     *
     * @param height heights [m] to y
     * @param box where the curve lies, without lettering
     */
    public NeedPlot(Surface on, Scale height, Box box, HeightPlot plot) {
        this.on = on;
        this.type = new Type(on.palette());
        this.height = height;
        this.box = box;
        this.plot = plot;
        unit = plot.caption().unit();
        double limit = plot.available().map(a -> finiteMax(a.values())).orElse(0.0);
        double most = Math.max(finiteMax(plot.needed()), limit);
        for (HeightPlot.Beside b : plot.beside()) {
            most = Math.max(most, finiteMax(b.values()));
        }
        cut = limit > 0 && (most > CUT * limit || plot.needed().max() == Double.POSITIVE_INFINITY);
        double high = unit.fromSi(cut ? CUT * limit : most);
        double least = unit.fromSi(Math.min(0, finiteMin(plot.needed())));
        double end = high > 0 ? Scale.roundUp(1.04 * high) : 1;
        x = new Scale(least < 0 ? -Scale.roundUp(-least) : 0, end, box.x(), box.right());
    }

    private static double finiteMax(Series s) {
        double most = 0;
        for (int i = 0; i < s.size(); i++) {
            if (Double.isFinite(s.at(i))) {
                most = Math.max(most, s.at(i));
            }
        }
        return most;
    }

    private static double finiteMin(Series s) {
        double least = 0;
        for (int i = 0; i < s.size(); i++) {
            if (Double.isFinite(s.at(i))) {
                least = Math.min(least, s.at(i));
            }
        }
        return least;
    }

    /** Draws the plot with its ticks below. */
    public void draw() {
        grid();
        on.fill(area(plot.needed()), Fill.of(ink(Ground.RECESS)));
        plot.available().ifPresent(this::shortfall);
        on.stroke(Path.line(x.at(0), box.y(), x.at(0), box.bottom()), Pen.of(ink(Ground.INK), 1));
        plot.available().ifPresent(this::limit);
        for (HeightPlot.Beside other : plot.beside()) {
            on.stroke(curve(other.values()), Pen.of(ink(Ground.INK), 1.4).dashed(Dash.DASHED));
        }
        on.stroke(curve(plot.needed()), Pen.of(ink(Ground.INK), 2.6));
        bottom();
        worst();
    }

    private void grid() {
        for (double tick : x.ticks(5)) {
            double at = x.at(tick);
            on.stroke(Path.line(at, box.y(), at, box.bottom()), Pen.of(ink(Ground.RULE), 1));
        }
    }

    private double x(double si) {
        double value = unit.fromSi(si);
        return x.at(Double.isNaN(value) ? 0 : x.held(value));
    }

    private Path curve(Series values) {
        Path path = new Path();
        boolean pen = false;
        for (int i = 0; i < plot.height().size(); i++) {
            double v = values.at(i);
            if (Double.isNaN(v)) {
                pen = false;
                continue;
            }
            double y = height.at(plot.height().at(i));
            path = pen ? path.point(x(v), y) : path.start(x(v), y);
            pen = true;
        }
        return path;
    }

    private Path area(Series values) {
        Path path = new Path();
        path.point(x.at(0), height.at(plot.height().first()));
        for (int i = 0; i < plot.height().size(); i++) {
            path.point(x(values.at(i)), height.at(plot.height().at(i)));
        }
        return path.point(x.at(0), height.at(plot.height().last())).close();
    }

    private void shortfall(HeightPlot.Limit limit) {
        for (Band band : Band.of(plot.height(), plot.margin(), limit.holdsFrom())) {
            if (band.verdict() == Verdict.FAILS) {
                Path between = between(limit.values(), plot.needed(), band);
                on.fill(between, new Fill.Texture(Verdict.FAILS));
                on.stroke(between, Pen.of(on.palette().fill(Verdict.FAILS), 1.4));
            }
        }
    }

    private Path between(Series low, Series high, Band band) {
        Path path = new Path();
        int n = plot.height().size();
        path.point(x(high.over(plot.height(), band.from())), height.at(band.from()));
        for (int i = 0; i < n; i++) {
            double h = plot.height().at(i);
            if (h > band.from() && h < band.to()) {
                path.point(x(high.at(i)), height.at(h));
            }
        }
        path.point(x(high.over(plot.height(), band.to())), height.at(band.to()));
        path.point(x(low.over(plot.height(), band.to())), height.at(band.to()));
        for (int i = n - 1; i >= 0; i--) {
            double h = plot.height().at(i);
            if (h > band.from() && h < band.to()) {
                path.point(x(low.at(i)), height.at(h));
            }
        }
        return path.point(x(low.over(plot.height(), band.from())), height.at(band.from())).close();
    }

    private void limit(HeightPlot.Limit limit) {
        Series v = limit.values();
        Path ticks = new Path();
        for (double y = box.y() + 4; y < box.bottom() - 2; y += 7) {
            double h = height.value(y);
            double at = x(v.over(plot.height(), h));
            boolean covered = plot.needed().over(plot.height(), h) > v.over(plot.height(), h);
            if (!covered) {
                ticks.start(at, y + 5).point(at + 6, y - 1);
            }
        }
        on.stroke(ticks, Pen.of(ink(Ground.INK2), 1));
        on.stroke(curve(v), Pen.of(ink(Ground.INK), 2.2));
        boolean same = v.max() - v.min() < 0.02 * Math.abs(v.max());
        String words = limit.words() + (same ? " " + Numerals.with(v.last(), unit) : "");
        labelBeside(words, x(v.last()), box.y() - 9);
    }

    private void labelBeside(String words, double at, double y) {
        TextStyle style = type.strong().haloed(ink(Ground.PAPER));
        double width = style.width(words);
        double left = Math.max(box.x(), Math.min(at - 0.5 * width, box.right() - width));
        on.text(left, y, words, style);
    }

    private void bottom() {
        on.stroke(
                Path.line(box.x(), box.bottom(), box.right(), box.bottom()),
                Pen.of(ink(Ground.INK), 1));
        int most = box.width() < 170 ? 4 : 5;
        for (double tick : x.ticks(most)) {
            double at = x.at(tick);
            on.stroke(
                    Path.line(at, box.bottom(), at, box.bottom() + 5), Pen.of(ink(Ground.INK), 1));
            on.text(
                    at,
                    box.bottom() + 19,
                    Ticks.text(tick, x.decimals(most)),
                    type.tick().aligned(Align.MIDDLE));
        }
        double left = box.x();
        for (HeightPlot.Beside other : plot.beside()) {
            on.stroke(
                    Path.line(left, box.bottom() + 31, left + 22, box.bottom() + 31),
                    Pen.of(ink(Ground.INK), 1.4).dashed(Dash.DASHED));
            on.text(left + 27, box.bottom() + 35, other.words(), type.tick());
            left += 37 + type.tick().width(other.words());
        }
        if (cut) {
            on.text(
                    box.right(),
                    box.bottom() + 35,
                    "cut at " + Numerals.with(unit.toSi(x.high()), unit),
                    type.hint().aligned(Align.END));
        }
    }

    private void worst() {
        int worst = plot.worst();
        if (worst < 0 || plot.available().isEmpty()) {
            return;
        }
        HeightPlot.Limit limit = plot.available().get();
        Verdict verdict = Verdict.of(plot.margin().at(worst), limit.holdsFrom());
        double at = x(plot.needed().at(worst));
        double y = height.at(plot.height().at(worst));
        if (verdict == Verdict.FAILS) {
            crossings(limit);
        }
        String words = "needs " + Numerals.with(plot.needed().at(worst), unit);
        TextStyle style = type.strong().haloed(ink(Ground.PAPER));
        double width = style.width(words);
        boolean low = box.bottom() - y < 24;
        double left = low ? at - 0.6 * width : at - width - 12;
        if (!low && left < x.at(0) + 4) {
            left = at - x.at(0) > 0.4 * width ? x.at(0) + 4 : at + 12;
        }
        left = Math.max(box.x() + 2, Math.min(left, box.right() - width));
        double base = low ? y - 36 : y - 12;
        if (low) {
            on.stroke(Path.line(at, y - 10, at, base + 6), Pen.of(ink(Ground.INK2), 1));
        }
        Marks.draw(on, verdict, at, y, 14);
        on.text(left, base, words, style);
    }

    /** Marks where the need crosses the limit, and names the heights. */
    private void crossings(HeightPlot.Limit limit) {
        for (Band band : Band.of(plot.height(), plot.margin(), limit.holdsFrom())) {
            if (band.verdict() != Verdict.FAILS || band.to() >= plot.height().last()) {
                continue;
            }
            double y = height.at(band.to());
            double at = x(limit.values().over(plot.height(), band.to()));
            Marks.draw(on, Verdict.FAILS, at, y, 11);
            String words =
                    "fails below\u00a0"
                            + Numerals.fixed(Shown.MILLIMETRE.fromSi(band.to()), 0)
                            + "\u00a0mm";
            TextStyle style =
                    type.strong()
                            .coloured(on.palette().text(Verdict.FAILS))
                            .haloed(ink(Ground.PAPER));
            double room = box.right() - at - 12;
            double left = style.width(words) < room ? at + 12 : box.right() - style.width(words);
            on.text(left, y - 10, words, style);
        }
    }

    private Colour ink(Ground role) {
        return on.palette().ground(role);
    }
}
