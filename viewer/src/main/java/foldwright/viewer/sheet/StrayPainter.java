// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

import foldwright.report.plot.Scale;
import foldwright.study.Numerals;
import foldwright.study.Shown;
import foldwright.viewer.paint.Align;
import foldwright.viewer.paint.Lettering;
import foldwright.viewer.paint.Texture;

/** What strays along the way, side by side on one scale: skew, and the tool both ways; signed. */
final class StrayPainter {
    private static final int INKS = 8;

    private final Pen pen;
    private final Layout at;
    private final Playing.StrayCurve stray;
    private final Scale scale;
    private final Scale[] across;

    StrayPainter(Pen pen, Playing.StrayCurve stray, Scale scale) {
        this.pen = pen;
        at = pen.at;
        this.stray = stray;
        this.scale = scale;
        int n = stray.lanes().size();
        double gap = at.of(12, 8);
        double w = (at.plotRight() - at.plotLeft() - (n - 1) * gap) / n;
        across = new Scale[n];
        for (int i = 0; i < n; i++) {
            double left = at.plotLeft() + i * (w + gap);
            across[i] = new Scale(-stray.end(), stray.end(), left, left + w);
        }
    }

    /** Where the line of the moment ends [px]. */
    double end() {
        int last = across.length - 1;
        return across[last].at(across[last].held(stray.lanes().get(last).now()));
    }

    void draw() {
        double top = scale.to();
        Lettering title = pen.strong(15, 13, pen.palette.ink);
        double room = at.cardsLeft() - at.of(34, 24) - at.plotLeft();
        pen.canvas.text(
                title,
                at.plotLeft(),
                top - at.of(64, 43),
                pen.fit(
                        title,
                        at.small ? "Skew, stray, mm" : "Skew and stray of the tool, mm",
                        room));
        for (int i = 0; i < across.length; i++) {
            lane(across[i], stray.lanes().get(i));
        }
    }

    private void lane(Scale x, Playing.Lane lane) {
        double top = scale.to();
        double bottom = scale.from();
        boolean limited = !Double.isNaN(lane.allowed());
        double middle = (x.from() + x.to()) / 2;
        Lettering look = pen.text(pen.palette.ink2);
        pen.canvas.text(look, middle, top - at.of(40, 27), lane.words(), Align.CENTRE);
        if (limited) {
            String words = "±" + Numerals.given(Shown.MILLIMETRE.fromSi(lane.allowed()));
            pen.canvas.text(
                    pen.strong(14, 13, pen.palette.ink),
                    middle,
                    top - at.of(18, 10),
                    words,
                    Align.CENTRE);
            forbidden(x, x.from(), x.at(-lane.allowed()));
            forbidden(x, x.at(lane.allowed()), x.to());
        }
        for (double tick : x.ticks(4)) {
            pen.canvas.upright(x.at(tick), top, bottom, pen.palette.rule, pen.line(1));
        }
        area(x, lane.low(), -1);
        area(x, lane.high(), 1);
        edge(x, lane.low());
        edge(x, lane.high());
        pen.canvas.upright(x.at(0), top, bottom, pen.palette.ink, pen.line(1.1));
        if (limited) {
            for (int sign = -1; sign <= 1; sign += 2) {
                pen.canvas.upright(
                        x.at(sign * lane.allowed()), top, bottom, pen.palette.ink, pen.line(1.8));
            }
        }
        ticks(x, bottom);
    }

    private void forbidden(Scale x, double from, double to) {
        if (to > from) {
            pen.canvas.path().rect(from, scale.to(), to - from, scale.from() - scale.to());
            pen.canvas.fill(Texture.HATCH, pen.palette.ink3);
        }
    }

    private double value(double[] pieces, double y) {
        double share = (scale.from() - y) / (scale.from() - scale.to());
        return pieces[(int) Math.max(0, Math.min(pieces.length - 1, share * pieces.length))];
    }

    /** From zero to the value of one sign, row by row, in the signed ink of its size. */
    private void area(Scale x, double[] pieces, int sign) {
        double y0 = Math.floor(scale.to());
        double y1 = Math.floor(scale.from());
        for (int ink = 0; ink < INKS; ink++) {
            pen.canvas.path();
            int rows = 0;
            for (double y = y0; y < y1; y++) {
                double v = value(pieces, y + 0.5) * sign;
                int own = (int) Math.min(INKS - 1, v / stray.end() * INKS);
                if (v > 0 && own == ink) {
                    pen.canvas.moveTo(x.at(0), y + 0.5).lineTo(x.at(sign * v), y + 0.5);
                    rows++;
                }
            }
            if (rows > 0) {
                pen.canvas.stroke(pen.palette.signed(sign * (ink + 0.8) / INKS), 1.3);
            }
        }
    }

    private void edge(Scale x, double[] pieces) {
        pen.canvas.path();
        boolean first = true;
        for (double y = scale.from(); y >= scale.to(); y -= 1) {
            double px = x.at(x.held(value(pieces, y)));
            if (first) {
                pen.canvas.moveTo(px, y);
            } else {
                pen.canvas.lineTo(px, y);
            }
            first = false;
        }
        pen.canvas.strokeRound(pen.palette.ink, pen.line(1));
    }

    private void ticks(Scale x, double bottom) {
        Lettering look = pen.tick(pen.palette.ink2);
        Scale mm =
                new Scale(
                        Shown.MILLIMETRE.fromSi(x.low()),
                        Shown.MILLIMETRE.fromSi(x.high()),
                        x.from(),
                        x.to());
        int most = 4;
        double end = Double.NEGATIVE_INFINITY;
        for (double tick : mm.ticks(most)) {
            double px = mm.at(tick);
            pen.canvas.upright(px, bottom, bottom + at.of(6, 4), pen.palette.ink2, pen.line(1));
            String words = tick == 0 ? "0" : Numerals.fixed(tick, mm.decimals(most));
            double w = pen.canvas.width(look, words);
            boolean narrow = x.to() - x.from() < 4.5 * w;
            if (px - w / 2 > end + 4 && !(narrow && tick < 0)) {
                pen.canvas.text(look, px, bottom + at.of(22, 18), words, Align.CENTRE);
                end = px + w / 2;
            }
        }
    }

    /** Rings on the curves at the moment. */
    void now(double y) {
        for (int i = 0; i < across.length; i++) {
            ring(across[i].at(across[i].held(stray.lanes().get(i).now())), y);
        }
    }

    private void ring(double x, double y) {
        pen.canvas.path().disc(x, y, at.of(5, 3.8)).fill(pen.palette.paper);
        pen.canvas.path().disc(x, y, at.of(5, 3.8)).stroke(pen.palette.pine, pen.line(2));
    }
}
