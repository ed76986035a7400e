// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

import foldwright.study.Numerals;
import foldwright.study.Shown;
import foldwright.viewer.paint.Align;
import foldwright.viewer.paint.Lettering;
import foldwright.viewer.render.View;
import foldwright.viewer.sheet.SheetPainter.Force;
import foldwright.viewer.sheet.SheetPainter.Label;
import java.util.List;

/** What is marked on the machine: forces as needles with their scale, values beside parts. */
final class LoadPainter {
    /** Where words may stand below a point, in the order they are tried. */
    private static final double[] AWAY = {-1, 1, -2.4};

    /** Lines down from beside a needle, in the order they are tried. */
    private static final double[] LINES = {0, 1, -1, -2};

    private final Pen pen;
    private final Layout at;
    private final Lettering look;
    private View view;
    private double keyNewtons = Double.NaN;
    private String keyWords;

    /** Where the needle that is being drawn points. */
    private double dirX;

    private double dirY;

    LoadPainter(Pen pen) {
        this.pen = pen;
        at = pen.at;
        look = pen.over(pen.strong(15, 13, pen.palette.ink));
    }

    /** Seen so from now on; returns this. */
    LoadPainter on(View next) {
        view = next;
        return this;
    }

    /**
     * Needles of forces as long as the forces are large, and what their length means.
     *
     * @param strongest force of the longest needle [N]
     * @param keyY where the scale of the needles stands [px]
     */
    void needles(List<Force> forces, double strongest, double keyY) {
        double perNewton = at.of(140, 92) / strongest;
        if (!forces.isEmpty()) {
            key(perNewton, strongest, keyY);
        }
        for (int i = 0; i < forces.size(); i++) {
            Force f = forces.get(i);
            double hx = view.x(f.at().x(), f.at().y(), f.at().z());
            double hy = view.y(f.at().x(), f.at().y(), f.at().z());
            double tx = f.at().x() + f.along().x();
            double ty = f.at().y() + f.along().y();
            double tz = f.at().z() + f.along().z();
            double dx = view.x(tx, ty, tz) - hx;
            double dy = view.y(tx, ty, tz) - hy;
            double d = Math.max(1e-9, Math.hypot(dx, dy));
            // Shorter than its own head a needle cannot be drawn; its value tells.
            double sense = f.newtons() < 0 ? -1 : 1;
            double length = Math.max(at.of(16, 12), Math.abs(f.newtons()) * perNewton);
            dirX = sense * dx / d;
            dirY = sense * dy / d;
            needle(hx, hy, length, f.words());
        }
    }

    /** A bar as long as a needle of a round force. */
    private void key(double perNewton, double strongest, double y) {
        double round = Math.pow(10, Math.floor(Math.log10(0.7 * strongest)));
        double steps = 0.7 * strongest / round;
        round *= steps >= 5 ? 5 : steps >= 2 ? 2 : 1;
        double x = at.left(40, 27);
        double length = round * perNewton;
        pen.canvas.level(x, x + length, y, pen.palette.ink2, pen.line(1.5));
        for (int end = 0; end <= 1; end++) {
            double tick = x + end * length;
            pen.canvas.upright(
                    tick, y - at.of(4, 3), y + at.of(4, 3), pen.palette.ink2, pen.line(1.1));
        }
        pen.canvas.text(
                pen.text(pen.palette.ink2),
                x + length + at.of(9, 7),
                y + at.of(5, 4),
                keyWords(round));
    }

    private String keyWords(double newtons) {
        if (newtons != keyNewtons) {
            keyNewtons = newtons;
            keyWords = "arrows " + Numerals.with(newtons, Shown.NEWTON);
        }
        return keyWords;
    }

    /** One needle: a ring at its tail, a stem that swells, a blunt head at the point of attack. */
    private void needle(double hx, double hy, double length, String words) {
        double dx = dirX;
        double dy = dirY;
        double tx = hx - dx * length;
        double ty = hy - dy * length;
        double head = Math.min(at.of(13, 9.5), 0.8 * length);
        double half = at.of(5.2, 4);
        double stem = at.of(1.5, 1.1);
        double bx = hx - dx * head;
        double by = hy - dy * head;
        for (int pass = 0; pass < 2; pass++) {
            double grow = pass == 0 ? at.of(2, 1.6) : 0;
            double s0 = 0.6 * stem + grow;
            double s1 = 1.4 * stem + grow;
            double px = hx + dx * grow;
            double py = hy + dy * grow;
            pen.canvas.path().moveTo(tx - dy * s0, ty + dx * s0);
            pen.canvas.lineTo(bx - dy * s1, by + dx * s1);
            pen.canvas.lineTo(bx - dy * (half + grow), by + dx * (half + grow));
            pen.canvas.lineTo(px - dy * (0.6 + grow), py + dx * (0.6 + grow));
            pen.canvas.lineTo(px + dy * (0.6 + grow), py - dx * (0.6 + grow));
            pen.canvas.lineTo(bx + dy * (half + grow), by - dx * (half + grow));
            pen.canvas.lineTo(bx + dy * s1, by - dx * s1);
            pen.canvas.lineTo(tx + dy * s0, ty - dx * s0).closePath();
            pen.canvas.fill(pass == 0 ? pen.palette.paper : pen.palette.ink, pass == 0 ? 0.85 : 1);
        }
        ring(tx, ty);
        boolean upright = Math.abs(dy) > Math.abs(dx);
        double lx = upright ? Math.max(tx, hx) + at.of(12, 9) : (tx + hx) / 2;
        double ly = upright ? ty + at.of(20, 16) : Math.max(ty, hy) + at.of(24, 19);
        beside(lx, ly, words, upright ? Align.LEFT : Align.CENTRE);
    }

    /** Words of a needle, a line or two away where others stand; else its length alone tells. */
    private void beside(double x, double y, String words, Align align) {
        double w = pen.canvas.width(look, words);
        for (double lines : LINES) {
            double there = y + lines * 1.25 * look.em();
            double left = x - align.share * w;
            if (pen.canvas.free(left, there - look.em(), w, 1.25 * look.em())) {
                pen.canvas.text(look, x, there, words, align);
                return;
            }
        }
    }

    private void ring(double x, double y) {
        double r = at.of(3.2, 2.6);
        pen.canvas.path().disc(x, y, r).fill(pen.palette.paper);
        pen.canvas.path().disc(x, y, r).stroke(pen.palette.ink, pen.line(1.5));
    }

    /**
     * Values beside parts: a ring on the part, a leader, the words where no other text stands; left
     * out where there is no such place.
     */
    void labels(List<Label> labels) {
        for (int i = 0; i < labels.size(); i++) {
            Label label = labels.get(i);
            double x = view.x(label.at().x(), label.at().y(), label.at().z());
            double y = view.y(label.at().x(), label.at().y(), label.at().z());
            double w = pen.canvas.width(look, label.words());
            double reach = at.of(34, 24);
            for (int place = 0; place < 6; place++) {
                double left = place % 2 == 0 ? x + reach : x - reach - w;
                double baseline = y + AWAY[place / 2] * reach;
                if (free(left, baseline, w)) {
                    leader(x, y, left > x ? left - 4 : left + w + 4, baseline - 0.25 * look.em());
                    ring(x, y);
                    pen.canvas.text(look, left, baseline, label.words());
                    break;
                }
            }
        }
    }

    private boolean free(double x, double baseline, double w) {
        return x > at.tableLeft()
                && x + w < at.tableRight() - at.of(60, 46)
                && baseline > at.tableTop() + at.of(60, 40)
                && baseline < at.tableBottom()
                && pen.canvas.free(x - 4, baseline - look.em(), w + 8, 1.3 * look.em());
    }

    private void leader(double x, double y, double toX, double toY) {
        pen.canvas.path().moveTo(x, y).lineTo(toX, toY);
        pen.canvas.stroke(pen.palette.paper, pen.line(3.2), 0.8);
        pen.canvas.path().moveTo(x, y).lineTo(toX, toY);
        pen.canvas.stroke(pen.palette.ink, pen.line(1.1));
    }
}
