// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

import foldwright.report.draw.Face;
import foldwright.study.Numerals;
import foldwright.viewer.paint.Align;
import foldwright.viewer.paint.Lettering;
import java.util.Locale;

/** Title, what is drawn, the legend of the ink, and the factor by which errors are drawn larger. */
final class HeadPainter {
    private final Pen pen;
    private final Layout at;
    private final Hits hits;

    HeadPainter(Pen pen, Hits hits) {
        this.pen = pen;
        this.hits = hits;
        at = pen.at;
    }

    void draw(SheetModel model) {
        SheetModel.Head head = model.head();
        double x = at.left(40, 27);
        double room = at.scaleX() - at.of(40, 27) - x - largerRoom(head);
        Lettering title = pen.title(38, at.little ? 20 : 26);
        pen.canvas.text(title, x, at.of(66, 44), pen.fit(title, head.title(), room));
        Lettering drawn = pen.medium(17, 13, pen.palette.ink);
        double w = pen.canvas.text(drawn, x, at.of(96, 64), shown(drawn, head.drawn(), room));
        if (head.dashed().isPresent()) {
            Lettering dashed = new Lettering(Face.SANS, drawn.em(), pen.palette.ink2);
            double gap = at.of(45, 27);
            if (w + gap + pen.canvas.width(dashed, head.dashed().get()) <= room) {
                pen.canvas.text(dashed, x + w + gap, at.of(96, 64), head.dashed().get());
            } else {
                pen.canvas.text(
                        dashed, x, at.of(120, 82), shown(dashed, head.dashed().get(), room));
            }
        }
        if (head.larger() != 1) {
            boolean path = model.playing().flatMap(Playing::way).isPresent();
            larger(head.larger(), path ? "skew and stray" : "skew and lean");
        }
        if (model.ink().isPresent()) {
            now(model.ink().get());
        }
    }

    private double largerRoom(SheetModel.Head head) {
        return head.larger() == 1 ? 0 : at.little ? 64 : at.of(190, 150);
    }

    /** Where much is left out, rather nothing than words that are cut. */
    private String shown(Lettering look, String words, double room) {
        return at.little ? pen.whole(look, words, room) : pen.fit(look, words, room);
    }

    /** The box that {@link #legend} keeps to. */
    Kept.Box legendBox() {
        return Kept.Box.between(
                at.scaleX() - at.of(4, 3), 0, at.cardsLeft() - at.of(24, 17), at.of(119, 84));
    }

    /** Whether both legends look alike but for what is darkest now. */
    static boolean alike(SheetModel.InkLegend a, SheetModel.InkLegend b) {
        return a.title().equals(b.title()) && a.end() == b.end() && a.ends().equals(b.ends());
    }

    /** The factor, large, and its rule from 1 to 1000 in even ratios. */
    private void larger(double factor, String what) {
        double right = at.scaleX() - (at.little ? 20 : at.of(78, 52));
        String words =
                factor < 10
                        ? String.format(Locale.ROOT, "%.3g×", factor)
                        : Numerals.fixed(factor, 0) + "×";
        pen.canvas.text(
                pen.strong(38, at.little ? 20 : 26, pen.palette.ink),
                right,
                at.of(66, 44),
                words,
                Align.RIGHT);
        if (at.little) {
            pen.canvas.text(
                    pen.text(pen.palette.ink2), right, at.of(92, 62), "larger", Align.RIGHT);
            return;
        }
        pen.canvas.text(
                pen.text(pen.palette.ink2),
                right,
                at.of(92, 62),
                what + " drawn larger",
                Align.RIGHT);
        double w = at.of(240, 176);
        double x = right - w;
        double y = at.of(111, 74);
        pen.canvas.level(x, right, y, pen.palette.ink3, pen.line(1.5));
        Lettering look = pen.tick(pen.palette.ink2);
        for (int power = 0; power <= 3; power++) {
            double px = x + w * power / 3;
            pen.canvas.upright(px, y - at.of(4, 3), y + at.of(4, 3), pen.palette.ink3, pen.line(1));
            Align align = power == 0 ? Align.LEFT : power == 3 ? Align.RIGHT : Align.CENTRE;
            pen.canvas.text(
                    look, px, y + at.of(22, 17), Math.round(Math.pow(10, power)) + "×", align);
        }
        double px = x + w * Math.log10(factor) / 3;
        double half = at.of(10, 7);
        pen.canvas
                .path()
                .roundRect(px - at.of(3.5, 2.7), y - half, at.of(7, 5.4), 2 * half, at.of(3, 2.4))
                .fill(pen.palette.pine);
        hits.add(Hits.Kind.LARGER, 0, x, y - at.of(16, 11), w, at.of(32, 22));
    }

    /** The scale of the ink. */
    void legend(SheetModel.InkLegend ink) {
        double x = at.scaleX();
        double room = at.plotRight() - x;
        Lettering title = pen.strong(15, 13, pen.palette.ink);
        pen.canvas.text(title, x, at.of(64, 40), legendTitle(title, ink, room));
        double w = at.of(240, 190);
        double y = at.of(82, 54);
        double h = at.of(12, 9);
        int steps = 64;
        boolean signed = ink.ends().isPresent();
        for (int i = 0; i < steps; i++) {
            double share = (i + 0.5) / steps;
            int c = signed ? pen.palette.signed(2 * share - 1) : pen.palette.load(share);
            double left = Math.round(x + w * i / steps);
            double right = Math.round(x + w * (i + 1) / steps);
            pen.canvas.path().rect(left, Math.round(y), right - left, Math.round(h)).fill(c);
        }
        pen.canvas
                .path()
                .rect(
                        Math.round(x) - 0.5,
                        Math.round(y) - 0.5,
                        Math.round(w) + 1,
                        Math.round(h) + 1);
        pen.canvas.stroke(pen.palette.ink2, pen.line(1));
        ticks(ink, x, y + h, w);
    }

    private String legendTitle(Lettering look, SheetModel.InkLegend ink, double room) {
        String words = "Ink shows " + ink.title();
        if (pen.canvas.width(look, words) <= room || !at.little) {
            return pen.fit(look, words, room);
        }
        // What and its unit; what lies between them is told by the ends of the scale.
        String[] clauses = ink.title().split(", ");
        boolean many = clauses.length > 2;
        String what = many ? clauses[0] + ", " + clauses[clauses.length - 1] : ink.title();
        return pen.fit(look, "Ink: " + what, room);
    }

    /** What is darkest now. */
    private void now(SheetModel.InkLegend ink) {
        double x = at.scaleX();
        double w = at.of(240, 190);
        double y = at.of(82, 54);
        boolean signed = ink.ends().isPresent();
        if (!Double.isNaN(ink.now())) {
            double share = signed ? (ink.now() / ink.end() + 1) / 2 : ink.now() / ink.end();
            double px = x + w * Math.max(0, Math.min(1, share));
            double s = at.of(6, 4.5);
            pen.canvas
                    .path()
                    .moveTo(px - s, y - 1.5 * s)
                    .lineTo(px + s, y - 1.5 * s)
                    .lineTo(px, y - 1)
                    .closePath();
            pen.canvas.fill(pen.palette.ink);
        }
        Lettering where = pen.text(pen.palette.ink2);
        pen.canvas.text(
                where,
                x,
                at.of(136, 99),
                at.little
                        ? pen.whole(where, ink.darkest(), at.plotRight() - x)
                        : pen.clauses(where, ink.darkest(), at.cardsLeft() - at.of(40, 24) - x));
    }

    private void ticks(SheetModel.InkLegend ink, double x, double y, double w) {
        boolean signed = ink.ends().isPresent();
        double low = signed ? -ink.end() : 0;
        double step = signed ? ink.end() : step(ink.end());
        int decimals = (int) Math.max(0, Math.ceil(-Math.log10(step) - 1e-9));
        Lettering look = pen.tick(pen.palette.ink2);
        for (int i = 0; low + i * step <= ink.end() * (1 + 1e-9); i++) {
            double value = low + i * step;
            double px = x + w * (value - low) / (ink.end() - low);
            pen.canvas.upright(px, y, y + at.of(5, 3), pen.palette.ink2, pen.line(1));
            Align align =
                    i == 0
                            ? Align.LEFT
                            : value > ink.end() * (1 - 1e-9) ? Align.RIGHT : Align.CENTRE;
            String end = "";
            if (ink.ends().isPresent() && i != 1) {
                end = " " + (i == 0 ? ink.ends().get().minus() : ink.ends().get().plus());
            }
            pen.canvas.text(
                    look,
                    px,
                    y + at.of(19, 16),
                    (value == 0 ? "0" : Numerals.fixed(value, decimals)) + end,
                    align);
        }
    }

    /** A step that cuts the scale in two to five even parts. */
    private static double step(double end) {
        double power = Math.pow(10, Math.floor(Math.log10(end)));
        for (double s : new double[] {0.2, 0.25, 0.5, 1, 2, 2.5, 5}) {
            double parts = end / (s * power);
            if (parts <= 5.01 && Math.abs(parts - Math.round(parts)) < 1e-6) {
                return s * power;
            }
        }
        return end / 2;
    }
}
