// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

import foldwright.report.plot.Band;
import foldwright.report.plot.Scale;
import foldwright.study.HeightPlot;
import foldwright.study.Numerals;
import foldwright.study.Series;
import foldwright.study.Verdict;
import foldwright.viewer.paint.Align;
import foldwright.viewer.paint.Lettering;

/**
 * The height scale: axis with ticks, the ribbon of margins, where something must not be, and the
 * tab.
 */
final class ScalePainter {
    private static final double CUT = 5;
    private static final String[] WHOLE = new String[1000];
    private static final String[] TOP = new String[WHOLE.length];
    private static final String[] FLAT = new String[WHOLE.length];

    private final Pen pen;
    private final Layout at;
    private final Scale scale;
    private final SheetModel.Travel travel;
    private final HeightPlot plot;
    private final TabPainter tab;

    /**
     * A scale.
     *
     * @param scale heights of the deck pins [m] to y [px]
     * @param plot whose margins the ribbon shows; null: none
     */
    ScalePainter(Pen pen, Scale scale, SheetModel.Travel travel, HeightPlot plot) {
        this.plot = plot;
        this.pen = pen;
        at = pen.at;
        this.scale = scale;
        this.travel = travel;
        tab = new TabPainter(pen, scale.at(travel.height()), scale.from());
    }

    void draw() {
        axis();
        for (int i = 0; i < travel.noGo().size(); i++) {
            noGo(travel.noGo().get(i));
        }
    }

    /** The box that {@link #ribbon} keeps to, with its titles. */
    Kept.Box ribbonBox() {
        return Kept.Box.between(
                at.scaleX() - at.of(4, 3),
                scale.at(travel.top()) - at.of(84, 72),
                at.plots() ? at.plotLeft() - at.of(9, 7) : at.width,
                scale.at(travel.flat()) + at.of(4, 3));
    }

    /** Whether {@link #ribbon} would give the same picture. */
    boolean shows(ScalePainter other) {
        return plot == other.plot && scale.equals(other.scale);
    }

    /** The tab and its caption: after the plot and the level line. */
    void tab() {
        tab.draw(Numerals.fixed(travel.height() * 1000, 1) + "\u00a0mm", travel.caption());
    }

    private boolean covered(double y) {
        return tab.covers(y);
    }

    private void axis() {
        double x = at.scaleX();
        pen.canvas.path().moveTo(x, scale.at(travel.top())).lineTo(x, scale.at(travel.flat()));
        pen.canvas.stroke(pen.palette.ink, pen.line(2.2));
        double perMillimetre = Math.abs(scale.at(0.001) - scale.at(0));
        double big = perMillimetre * 50 >= 46 ? 50 : 100;
        if (perMillimetre * 10 >= 46) {
            big = 10;
        } else if (perMillimetre * 20 >= 46) {
            big = 20;
        }
        double little = big == 20 ? 5 : big / 5;
        double low = travel.flat() * 1000;
        double high = travel.top() * 1000;
        Lettering look = pen.tick(pen.palette.ink2);
        for (double mm = Math.ceil(low / little) * little; mm <= high; mm += little) {
            boolean main = Math.abs(mm / big - Math.round(mm / big)) < 1e-6;
            double y = scale.at(mm / 1000);
            double len = main ? at.of(10, 7) : at.of(5, 4);
            pen.canvas.level(x - len, x, y, pen.palette.ink2, pen.line(main ? 1.1 : 0.9));
            boolean nearEnd =
                    Math.abs(y - scale.at(travel.top())) < 1.3 * look.em()
                            || Math.abs(y - scale.at(travel.flat())) < 1.3 * look.em();
            if (main && !nearEnd && !covered(y)) {
                pen.canvas.text(
                        look,
                        x - at.of(14, 10),
                        y + 0.35 * look.em(),
                        whole(mm, WHOLE, ""),
                        Align.RIGHT);
            }
        }
        end(travel.top(), TOP, " top");
        end(travel.flat(), FLAT, " flat");
    }

    /** Ticks are drawn anew in every picture; their texts are not. */
    private static String whole(double number, String[] made, String word) {
        int n = (int) Math.round(number);
        if (n < 0 || n >= made.length) {
            return Numerals.fixed(number, 0) + word;
        }
        if (made[n] == null) {
            made[n] = Numerals.fixed(n, 0) + word;
        }
        return made[n];
    }

    private void end(double height, String[] made, String word) {
        double y = scale.at(height);
        pen.canvas.level(
                at.scaleX() - at.of(10, 7), at.scaleX(), y, pen.palette.ink, pen.line(2.2));
        if (!covered(y)) {
            Lettering look = pen.over(pen.strong(15, 13, pen.palette.ink));
            pen.canvas.text(
                    look,
                    at.scaleX() - at.of(14, 10),
                    y + 0.35 * look.em(),
                    whole(height * 1000, made, word),
                    Align.RIGHT);
        }
    }

    /** Margins over the height. */
    void ribbon() {
        double x = at.scaleX();
        double step = at.ribbonStep();
        double holdsFrom = plot.available().map(HeightPlot.Limit::holdsFrom).orElse(Verdict.RULE);
        for (Band band : Band.of(plot.height(), plot.margin(), holdsFrom)) {
            bandPath(band, step);
            pen.area(band.verdict());
        }
        edge(plot.height(), plot.margin(), step);
        double top = scale.at(travel.top());
        double bottom = scale.at(travel.flat());
        pen.canvas.upright(x + step, top, bottom, pen.palette.ink, pen.line(1.5));
        float[] xs = {
            (float) Math.floor(x + holdsFrom * step) + 0.5f,
            (float) Math.floor(x + holdsFrom * step) + 0.5f
        };
        pen.canvas.path().dashes(xs, new float[] {(float) top, (float) bottom}, 2, 2, 3);
        pen.canvas.stroke(pen.palette.ink2, pen.line(1.1));
        titles(top, step);
        for (HeightPlot.Beside beside : plot.beside()) {
            if (beside.margin().size() == plot.height().size()) {
                dashedEdge(plot.height(), beside.margin(), step);
            }
        }
    }

    /** In the place of the ribbon while no margins are known: its title, and why there are none. */
    void unshaded(String why) {
        double top = scale.at(travel.top());
        titles(top, at.ribbonStep());
        Lettering look = pen.over(pen.italic(pen.palette.ink2));
        double x = at.scaleX() + at.of(12, 8);
        double room = at.plotRight() - x;
        pen.canvas.text(look, x, top + at.of(34, 24), pen.fit(look, why, room));
    }

    private void titles(double top, double step) {
        double x = at.scaleX();
        Lettering title = pen.strong(15, 13, pen.palette.ink);
        if (at.plots()) {
            pen.canvas.text(title, x, top - at.of(64, 57), "margin at");
            pen.canvas.text(title, x, top - at.of(46, 42), "every height");
        } else {
            pen.canvas.text(title, x + CUT * step + 22, top - 12, "margin");
        }
        Lettering look = pen.tick(pen.palette.ink2);
        double y = top - at.of(18, 12);
        for (int m = 1; m <= CUT; m += 2) {
            pen.canvas.upright(
                    x + m * step,
                    top - at.of(8, 5),
                    top - at.of(3, 2),
                    pen.palette.ink2,
                    pen.line(1));
            pen.canvas.text(
                    look, x + m * step, y, m == CUT ? "5×" : Integer.toString(m), Align.CENTRE);
        }
    }

    private double place(double margin, double step) {
        double m = Double.isNaN(margin) ? 0 : Math.max(0, Math.min(CUT, margin));
        return at.scaleX() + m * step;
    }

    private void bandPath(Band band, double step) {
        pen.canvas.path().moveTo(at.scaleX(), scale.at(band.from()));
        pen.canvas.lineTo(
                place(plot.margin().over(plot.height(), band.from()), step), scale.at(band.from()));
        for (int i = 0; i < plot.height().size(); i++) {
            double h = plot.height().at(i);
            if (h > band.from() && h < band.to()) {
                pen.canvas.lineTo(place(plot.margin().at(i), step), scale.at(h));
            }
        }
        pen.canvas.lineTo(
                place(plot.margin().over(plot.height(), band.to()), step), scale.at(band.to()));
        pen.canvas.lineTo(at.scaleX(), scale.at(band.to())).closePath();
    }

    private void edge(Series height, Series margin, double step) {
        pen.canvas.path();
        for (int i = 0; i < height.size(); i++) {
            double px = place(margin.at(i), step);
            double py = scale.at(height.at(i));
            if (i == 0) {
                pen.canvas.moveTo(px, py);
            } else {
                pen.canvas.lineTo(px, py);
            }
        }
        pen.canvas.strokeRound(pen.palette.ink, pen.line(1.6));
    }

    private void dashedEdge(Series height, Series margin, double step) {
        float[] xs = new float[height.size()];
        float[] ys = new float[height.size()];
        pen.canvas.path();
        int known = 0;
        for (int i = 0; i <= xs.length; i++) {
            // A margin may be without bound, but where there is none the edge is broken.
            if (i < xs.length && !Double.isNaN(margin.at(i))) {
                xs[known] = (float) place(margin.at(i), step);
                ys[known++] = (float) scale.at(height.at(i));
            } else if (known > 0) {
                pen.canvas.dashes(xs, ys, known, 5, 4);
                known = 0;
            }
        }
        pen.canvas.stroke(pen.palette.ink2, pen.line(1.4));
    }

    /** The foot of a few lines [em] that the level line does not strike through. */
    private static double clear(double foot, double lines, Lettering look, double level) {
        double em = look.em();
        boolean struck = level > foot - (lines + 0.1) * em && level < foot + 0.4 * em;
        return struck ? level - 0.5 * em : foot;
    }

    /** One word below the other where the ribbon leaves no room for all on one line. */
    private void narrow(SheetModel.NoGo zone, double right, double middle, double level) {
        Lettering look = pen.over(pen.tick(pen.palette.ink2));
        double room = right - at.scaleX() - CUT * at.ribbonStep() - 2;
        boolean one = pen.canvas.width(look, zone.words()) <= room;
        int lines = one ? 1 : zone.apart().size();
        double foot = middle + (0.35 + 0.6 * (lines - 1)) * look.em();
        double y = clear(foot, 1.2 * lines - 0.2, look, level);
        for (int i = lines - 1; i >= 0; i--) {
            String words = one ? zone.words() : zone.apart().get(i);
            pen.canvas.text(look, right, y, words, Align.RIGHT);
            y -= 1.2 * look.em();
        }
    }

    /** A bar right of the ribbon with a few short lines of words. */
    private void noGo(SheetModel.NoGo zone) {
        double x = at.plotLeft() - at.of(7, 5);
        double top = scale.at(Math.min(zone.to(), travel.top()));
        double bottom = scale.at(Math.max(zone.from(), travel.flat()));
        pen.canvas.upright(x, top, bottom, pen.palette.ink2, pen.line(2.6));
        Lettering look = pen.over(pen.tick(pen.palette.ink2));
        double tx = x - at.of(6, 4);
        double foot = Math.max(bottom, top + look.em());
        double level = scale.at(travel.height());
        if (at.small) {
            narrow(zone, tx, (top + bottom) / 2, level);
            return;
        }
        foot = clear(foot, 3.4, look, level);
        pen.canvas.text(look, tx, foot - 2.5 * look.em(), zone.words(), Align.RIGHT);
        pen.canvas.text(look, tx, foot - 1.3 * look.em(), zone.second(), Align.RIGHT);
        pen.canvas.text(look, tx, foot - 0.1 * look.em(), zone.third(), Align.RIGHT);
    }
}
