// SPDX-License-Identifier: Apache-2.0
package foldwright.report.plot;

import foldwright.report.draw.Align;
import foldwright.report.draw.Box;
import foldwright.report.draw.Fill;
import foldwright.report.draw.Ground;
import foldwright.report.draw.Path;
import foldwright.report.draw.Pen;
import foldwright.report.draw.Surface;
import foldwright.study.AreaPlot;
import foldwright.study.Numerals;
import foldwright.study.Series;
import foldwright.study.Shown;

/** A quantity over the work area as coloured cells, to scale, with the largest marked. */
public final class AreaMap {
    private static final double HEAD = 60;
    private static final double FOOT = 74;
    private static final double SIDE = 52;

    private final Surface on;
    private final Type type;
    private final AreaPlot plot;
    private final Box inner;
    private final double most;

    private AreaMap(Surface on, Box outer, AreaPlot plot) {
        this.on = on;
        this.type = new Type(on.palette());
        this.plot = plot;
        double wide = span(plot.x());
        double high = span(plot.y());
        double scale =
                Math.min((outer.width() - SIDE - 16) / wide, (outer.height() - HEAD - FOOT) / high);
        inner = new Box(outer.x() + SIDE, outer.y() + HEAD, scale * wide, scale * high);
        most = Math.max(1e-12, plot.values().max());
    }

    /** Width of the cells together [m]. */
    private static double span(Series middles) {
        return (middles.last() - middles.first()) * middles.size() / (middles.size() - 1.0);
    }

    /** Draws the map into the frame. */
    public static void draw(Surface on, Box outer, AreaPlot plot) {
        AreaMap map = new AreaMap(on, outer, plot);
        Frame.titles(on, plot.caption(), outer);
        map.cells();
        map.axes();
        map.largest();
        map.legend();
    }

    private Shown unit() {
        return plot.caption().unit();
    }

    private Box cell(int column, int row) {
        double w = inner.width() / plot.x().size();
        double h = inner.height() / plot.y().size();
        return new Box(inner.x() + column * w, inner.bottom() - (row + 1) * h, w, h);
    }

    private void cells() {
        for (int row = 0; row < plot.y().size(); row++) {
            for (int column = 0; column < plot.x().size(); column++) {
                double value = plot.at(column, row);
                if (Double.isFinite(value)) {
                    on.fill(Path.box(cell(column, row)), Fill.of(on.palette().load(value / most)));
                }
            }
        }
        on.stroke(Path.box(inner), Pen.of(on.palette().ground(Ground.INK), 1));
    }

    private void axes() {
        double halfX = span(plot.x()) / plot.x().size() / 2;
        double halfY = span(plot.y()) / plot.y().size() / 2;
        Scale x = millimetres(plot.x(), halfX, inner.x(), inner.right());
        Scale y = millimetres(plot.y(), halfY, inner.bottom(), inner.y());
        for (double tick : x.ticks(5)) {
            on.text(
                    x.at(tick),
                    inner.bottom() + 18,
                    Ticks.text(tick, x.decimals(5)),
                    type.tick().aligned(Align.MIDDLE));
        }
        for (double tick : y.ticks(5)) {
            on.text(
                    inner.x() - 8,
                    y.at(tick) + 4.5,
                    Ticks.text(tick, y.decimals(5)),
                    type.tick().aligned(Align.END));
        }
        on.text(inner.right(), inner.bottom() + 34, "x, mm", type.tick().aligned(Align.END));
        on.text(inner.x() - 8, inner.y() - 6, "y, mm", type.tick().aligned(Align.END));
    }

    private static Scale millimetres(Series middles, double half, double from, double to) {
        return new Scale(1e3 * (middles.first() - half), 1e3 * (middles.last() + half), from, to);
    }

    private void largest() {
        int worst = 0;
        for (int i = 0; i < plot.values().size(); i++) {
            worst = plot.values().at(i) >= plot.values().at(worst) ? i : worst;
            worst = Double.isNaN(plot.values().at(worst)) ? i : worst;
        }
        Box at = cell(worst % plot.x().size(), worst / plot.x().size());
        double x = at.x() + at.width() / 2;
        double y = at.y() + at.height() / 2;
        on.strokeCircle(x, y, 9, Pen.of(on.palette().ground(Ground.INK), 1.6));
        boolean right = x < inner.x() + inner.width() / 2;
        on.text(
                x + (right ? 13 : -13),
                y + 4.5,
                Numerals.with(plot.values().at(worst), unit()),
                type.strong()
                        .haloed(on.palette().ground(Ground.PAPER))
                        .aligned(right ? Align.START : Align.END));
    }

    private void legend() {
        double width = Math.min(220, inner.width());
        Box bar = new Box(inner.x(), inner.bottom() + 44, width, 10);
        int parts = 44;
        for (int i = 0; i < parts; i++) {
            on.fill(
                    Path.box(
                            new Box(
                                    bar.x() + i * width / parts,
                                    bar.y(),
                                    width / parts,
                                    bar.height())),
                    Fill.of(on.palette().load((i + 0.5) / parts)));
        }
        on.text(bar.x(), bar.bottom() + 15, "0", type.tick());
        on.text(
                bar.right(),
                bar.bottom() + 15,
                Numerals.with(most, unit()),
                type.tick().aligned(Align.END));
        if (plot.limit() > 0 && plot.limit() < most) {
            double at = bar.x() + width * plot.limit() / most;
            on.stroke(
                    Path.line(at, bar.y() - 3, at, bar.bottom() + 3),
                    Pen.of(on.palette().ground(Ground.INK), 2));
            on.text(
                    bar.right() + 12,
                    bar.bottom(),
                    "bar: allowed " + Numerals.with(plot.limit(), unit()),
                    type.tick());
        }
    }
}
