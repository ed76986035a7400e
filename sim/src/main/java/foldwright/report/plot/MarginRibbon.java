// SPDX-License-Identifier: Apache-2.0
package foldwright.report.plot;

import foldwright.report.draw.Align;
import foldwright.report.draw.Box;
import foldwright.report.draw.Colour;
import foldwright.report.draw.Dash;
import foldwright.report.draw.Fill;
import foldwright.report.draw.Ground;
import foldwright.report.draw.Path;
import foldwright.report.draw.Pen;
import foldwright.report.draw.Surface;
import foldwright.study.HeightPlot;
import foldwright.study.Numerals;
import foldwright.study.Series;
import foldwright.study.Shown;
import foldwright.study.Verdict;

/**
 * The margin at every height as a ribbon right of the height axis, textured by verdict and cut at
 * five times, with the heights lettered left of the axis.
 */
public final class MarginRibbon {
    /** Margin at which the ribbon is cut [1]. */
    public static final double CUT = 5;

    private final Surface on;
    private final Type type;
    private final Scale height;
    private final Box box;

    /**
     * A ribbon.
     *
     * @param height heights [m] to y
     * @param box where the ribbon lies, without lettering; its left side is the axis
     */
    public MarginRibbon(Surface on, Scale height, Box box) {
        this.on = on;
        this.type = new Type(on.palette());
        this.height = height;
        this.box = box;
    }

    /** Draws axis, ribbon, the lines for 1 and for the rule, and a dashed second machine. */
    public void draw(HeightPlot plot) {
        double holdsFrom = plot.available().map(HeightPlot.Limit::holdsFrom).orElse(Verdict.RULE);
        for (Band band : Band.of(plot.height(), plot.margin(), holdsFrom)) {
            on.fill(area(plot, band), new Fill.Texture(band.verdict()));
        }
        on.stroke(edge(plot.height(), plot.margin()), Pen.of(ink(Ground.INK), 1.4));
        for (HeightPlot.Beside other : plot.beside()) {
            if (other.margin().size() == plot.height().size()) {
                on.stroke(
                        edge(plot.height(), other.margin()),
                        Pen.of(ink(Ground.INK2), 1.2).dashed(Dash.DASHED));
            }
        }
        reference(1, Pen.of(ink(Ground.INK), 1.3));
        if (holdsFrom > 1) {
            reference(holdsFrom, Pen.of(ink(Ground.INK), 1.1).dashed(Dash.DOTTED));
            String words = "rule " + Numerals.fixed(holdsFrom, 1) + "×";
            on.text(
                    Math.max(box.x(), x(holdsFrom) - 0.5 * type.tick().width(words)),
                    box.bottom() + 19,
                    words,
                    type.tick());
        }
        topTicks();
        heights();
    }

    private double x(double margin) {
        double held = Double.isNaN(margin) ? 0 : Math.min(CUT, Math.max(0, margin));
        return box.x() + held / CUT * box.width();
    }

    private Path area(HeightPlot plot, Band band) {
        Path path = new Path();
        path.point(box.x(), height.at(band.from()));
        path.point(x(plot.margin().over(plot.height(), band.from())), height.at(band.from()));
        for (int i = 0; i < plot.height().size(); i++) {
            double h = plot.height().at(i);
            if (h > band.from() && h < band.to()) {
                path.point(x(plot.margin().at(i)), height.at(h));
            }
        }
        path.point(x(plot.margin().over(plot.height(), band.to())), height.at(band.to()));
        return path.point(box.x(), height.at(band.to())).close();
    }

    private Path edge(Series heights, Series margin) {
        Path path = new Path();
        for (int i = 0; i < heights.size(); i++) {
            path.point(x(margin.at(i)), height.at(heights.at(i)));
        }
        return path;
    }

    private void reference(double margin, Pen pen) {
        on.stroke(Path.line(x(margin), box.y(), x(margin), box.bottom()), pen);
    }

    private void topTicks() {
        double y = box.y() - 10;
        for (int m = 1; m <= CUT; m += 2) {
            on.stroke(Path.line(x(m), box.y() - 6, x(m), box.y() - 2), Pen.of(ink(Ground.INK2), 1));
            String words = m == CUT ? m + "×" : Integer.toString(m);
            on.text(x(m), y, words, type.tick().aligned(Align.MIDDLE));
        }
    }

    private void heights() {
        on.stroke(Path.line(box.x(), box.y(), box.x(), box.bottom()), Pen.of(ink(Ground.INK), 2.2));
        tick(height.high(), millimetres(height.high()) + "\u00a0mm top", true);
        tick(height.low(), millimetres(height.low()) + "\u00a0mm flat", true);
        Scale inMillimetres =
                new Scale(
                        Shown.MILLIMETRE.fromSi(height.low()),
                        Shown.MILLIMETRE.fromSi(height.high()),
                        height.from(),
                        height.to());
        for (double mm : inMillimetres.ticks(6)) {
            double y = inMillimetres.at(mm);
            if (Math.abs(y - height.from()) > 18 && Math.abs(y - height.to()) > 18) {
                tick(
                        Shown.MILLIMETRE.toSi(mm),
                        Numerals.fixed(mm, inMillimetres.decimals(6)),
                        false);
            }
        }
    }

    private void tick(double at, String words, boolean end) {
        double y = height.at(at);
        on.stroke(Path.line(box.x() - 7, y, box.x(), y), Pen.of(ink(Ground.INK), end ? 1.6 : 1.1));
        on.text(
                box.x() - 11,
                y + 4.5,
                words,
                (end ? type.strong() : type.tick()).aligned(Align.END));
    }

    private static String millimetres(double metres) {
        return Numerals.fixed(Shown.MILLIMETRE.fromSi(metres), 0);
    }

    private Colour ink(Ground role) {
        return on.palette().ground(role);
    }
}
