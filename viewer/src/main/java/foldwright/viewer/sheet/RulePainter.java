// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

import foldwright.report.plot.Band;
import foldwright.study.Series;
import foldwright.viewer.paint.Align;
import foldwright.viewer.paint.Lettering;
import java.util.List;

/** The main numbers as rules: name, value, the hill of margins over the range, the handle. */
final class RulePainter {
    /** Margin from which a hill grows no more [1]. */
    private static final double CUT = 3;

    /** Rise of a hill where the margin is nothing [of its rise at 1], so that a failure is seen. */
    private static final double SILL = 0.3;

    private final Pen pen;
    private final Layout at;
    private final Hits hits;

    RulePainter(Pen pen, Hits hits) {
        this.pen = pen;
        at = pen.at;
        this.hits = hits;
    }

    /** How many rules find room. */
    static int room(Layout at) {
        double left = at.left(40, 27);
        double pitch = at.of(290, 201);
        double end = at.small ? at.right(1280, 831) : at.right(1450, 0);
        return (int) Math.max(1, Math.floor((end - left + at.of(60, 8)) / pitch));
    }

    void draw(List<SheetModel.Rule> rules, SheetModel.Notes notes) {
        double top = at.rulesTop();
        double left = at.left(40, 27);
        double right = at.small ? at.right(1280, 967) : at.right(1450, 0);
        pen.canvas.level(left, right, top, pen.palette.rule, pen.line(1));
        if (notes.caption().isPresent()) {
            Lettering look = pen.question(pen.palette.ink);
            pen.canvas.text(
                    look,
                    left,
                    top + at.of(44, 30),
                    pen.fit(look, notes.caption().get(), right - left));
            return;
        }
        if (rules.isEmpty()) {
            return;
        }
        int shown = Math.min(rules.size(), room(at));
        for (int i = 0; i < shown; i++) {
            rule(rules.get(i), i, left + i * at.of(290, 201), at.of(230, 172), top);
        }
        if (at.small) {
            more(rules, shown, left + shown * at.of(290, 201), top);
        }
        Lettering hint = pen.italic(pen.palette.ink2);
        pen.canvas.text(
                hint, left, top + at.of(141, 97), pen.fit(hint, notes.rulesHint(), right - left));
    }

    private void more(List<SheetModel.Rule> rules, int shown, double x, double top) {
        int rest = rules.size() - shown;
        double room = at.cardsLeft() - at.of(20, 20) - x;
        if (rest <= 0 || room < 60) {
            return;
        }
        pen.canvas.text(
                pen.strong(15, 13, pen.palette.ink),
                x,
                top + at.of(31, 21),
                rest + (rest == 1 ? " more number" : " more numbers"));
        Lettering look = pen.text(pen.palette.ink2);
        double y = top + at.of(60, 41);
        for (int i = shown; i < Math.min(rules.size(), shown + 3); i++) {
            pen.canvas.text(
                    look,
                    x,
                    y,
                    pen.fit(look, rules.get(i).name() + " " + rules.get(i).value(), room));
            y += at.of(22, 17);
        }
    }

    private void rule(SheetModel.Rule rule, int index, double x, double w, double top) {
        boolean changed = rule.before().isPresent();
        Lettering value = pen.strong(18, 13, changed ? pen.palette.pine : pen.palette.ink);
        double vw = pen.canvas.text(value, x + w, top + at.of(36, 21), rule.value(), Align.RIGHT);
        Lettering name = pen.text(pen.palette.ink2);
        pen.canvas.text(
                name, x, top + at.of(36, 21), pen.fit(name, rule.name(), w - vw - at.of(10, 7)));
        double base = top + at.of(87, 59);
        hill(rule.hill(), x, w, base);
        pen.canvas.level(x, x + w, base, pen.palette.ink, pen.line(1.5));
        ends(rule, x, w, base);
        rule.before().ifPresent(b -> handle(x + b * w, base, pen.palette.paper, pen.palette.ink));
        int fill = changed ? pen.palette.pine : pen.palette.ink;
        handle(x + rule.at() * w, base, fill, fill);
        hits.add(
                Hits.Kind.RULE,
                index,
                x - at.of(8, 6),
                base - at.of(40, 28),
                w + at.of(16, 12),
                at.of(70, 52));
    }

    private void ends(SheetModel.Rule rule, double x, double w, double base) {
        Lettering look = pen.tick(pen.palette.ink3);
        double y = base + at.of(23, 22);
        double lw = pen.canvas.text(look, x, y, rule.low());
        double hw = pen.canvas.text(look, x + w, y, rule.high(), Align.RIGHT);
        if (rule.before().isPresent()) {
            Lettering before = pen.tick(pen.palette.ink);
            double bw = pen.canvas.width(before, rule.beforeText());
            double left = x + rule.before().get() * w - bw / 2;
            double from = x + lw + at.of(8, 6);
            double to = x + w - hw - at.of(8, 6) - bw;
            if (from <= to) {
                pen.canvas.text(before, Math.max(from, Math.min(left, to)), y, rule.beforeText());
            }
        }
    }

    private void handle(double x, double base, int fill, int edge) {
        double w = at.of(7, 5.5);
        double h = at.of(21, 14);
        pen.canvas
                .path()
                .roundRect(x - w / 2 - 1.2, base - h / 2 - 1.2, w + 2.4, h + 2.4, w / 2)
                .fill(pen.palette.paper);
        pen.canvas.path().roundRect(x - w / 2, base - h / 2, w, h, w / 2.4).fill(fill);
        pen.canvas
                .path()
                .roundRect(x - w / 2, base - h / 2, w, h, w / 2.4)
                .stroke(edge, pen.line(1.1));
    }

    private void hill(SheetModel.Hill hill, double x, double w, double base) {
        int n = hill.margins().size();
        if (n < 2 || hill.margins().stream().allMatch(m -> m.isNaN())) {
            return;
        }
        double[] along = new double[n];
        double[] margin = new double[n];
        double[] rise = new double[n];
        for (int i = 0; i < n; i++) {
            along[i] = (double) i / (n - 1);
            double m = hill.margins().get(i);
            margin[i] = Double.isNaN(m) ? 0 : m;
            rise[i] = Double.isNaN(m) ? 0 : rise(m);
        }
        Series a = Series.of(along);
        Series m = Series.of(margin);
        Series r = Series.of(rise);
        double step = at.of(11, 8);
        for (Band band : Band.of(a, m, hill.holdsFrom())) {
            pen.canvas.path().moveTo(x + band.from() * w, base);
            pen.canvas.lineTo(x + band.from() * w, base - step * r.over(a, band.from()));
            for (int i = 0; i < n; i++) {
                if (along[i] > band.from() && along[i] < band.to()) {
                    pen.canvas.lineTo(x + along[i] * w, base - step * rise[i]);
                }
            }
            pen.canvas.lineTo(x + band.to() * w, base - step * r.over(a, band.to()));
            pen.canvas.lineTo(x + band.to() * w, base).closePath();
            pen.area(band.verdict());
        }
        pen.canvas.path();
        for (int i = 0; i < n; i++) {
            if (i == 0) {
                pen.canvas.moveTo(x, base - step * rise[0]);
            } else {
                pen.canvas.lineTo(x + along[i] * w, base - step * rise[i]);
            }
        }
        pen.canvas.strokeRound(pen.palette.ink2, pen.line(1.1));
    }

    /** How high a hill stands at a margin [of its rise at 1]; a true scale from 1 on. */
    private static double rise(double margin) {
        double shown = Math.min(CUT, Math.max(0, margin));
        return Math.max(shown, SILL + (1 - SILL) * shown);
    }
}
