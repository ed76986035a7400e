// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

import foldwright.report.plot.Scale;
import foldwright.study.HeightPlot;
import foldwright.study.Numerals;
import foldwright.viewer.paint.Lettering;

/**
 * The height scale with ribbon, plot, tab and level line. What stays is kept; it is drawn first.
 */
final class HeightPainter {
    private final Pen pen;
    private final Layout at;
    private final Kept kept;
    private final Hits hits;
    private SheetModel model;
    private SheetModel.Travel travel;
    private TableView table;
    private Scale heights;
    private ScalePainter scale;
    private PlotPainter plot;

    HeightPainter(Pen pen, Kept kept, Hits hits) {
        this.pen = pen;
        at = pen.at;
        this.kept = kept;
        this.hits = hits;
    }

    /** Draws what stays while the deck moves. */
    void stay(SheetModel next, SheetPainter.Scene scene) {
        model = next;
        travel = next.travel();
        table = scene.table();
        heights = table.heights();
        HeightPlot curve = next.plot().orElse(null);
        scale = new ScalePainter(pen, heights, travel, curve);
        if (curve != null) {
            kept.draw(
                    Kept.Area.RIBBON, scale.ribbonBox(), scale, ScalePainter::shows, scale::ribbon);
        }
        if (curve == null || !at.plots()) {
            plot = null;
            return;
        }
        if (plot == null || !plot.fits(curve, second(next), heights)) {
            plot = new PlotPainter(pen, heights, curve, second(next));
        }
        kept.draw(Kept.Area.PLOT, plotBox(), plot, (a, b) -> a == b, plot::draw);
    }

    private static PlotPainter.Second second(SheetModel model) {
        return model.playing().isPresent() ? PlotPainter.Second.RINGS : PlotPainter.Second.DASHED;
    }

    private Kept.Box plotBox() {
        return Kept.Box.between(
                at.plotLeft() - at.of(6, 4),
                heights.at(travel.top()) - at.of(100, 76),
                at.little ? at.width : at.cardsLeft() - at.of(24, 17),
                heights.at(travel.flat()) + at.of(50, 38));
    }

    /** What moves, over what stays. */
    void draw(TablePainter onTable) {
        scale.draw();
        if (model.plot().isEmpty()) {
            SheetModel.Cards cards = model.cards();
            scale.unshaded(cards.of(cards.open()).waiting());
        }
        double curve = plot == null ? at.scaleX() + 2 : plot.curveAt(travel.height());
        if (model.playing().isPresent()) {
            new MarkPainter(pen).draw(model.playing().get(), heights);
        }
        onTable.level(travel, curve);
        scale.tab();
        if (plot != null) {
            plot.over(travel.height());
        }
        stretched();
        grips();
        if (model.playing().isPresent()) {
            new MarkPainter(pen).grips(model.playing().get(), heights, hits);
        }
    }

    private void stretched() {
        if (table.stretch() == 1) {
            return;
        }
        Lettering look = pen.italic(pen.palette.ink2);
        String factor = Numerals.fixed(table.stretch(), 1) + "×";
        String words =
                at.plots()
                        ? "heights drawn " + factor + " taller than the machine"
                        : "heights drawn " + factor + " taller";
        double x = at.scaleX();
        double y = heights.from() + at.of(50, 38);
        pen.canvas.text(look, x, y, pen.fit(look, words, at.plotRight() + at.of(30, 20) - x));
    }

    private void grips() {
        double top = heights.at(travel.top());
        double bottom = heights.at(travel.flat());
        hits.add(
                Hits.Kind.SCALE, 0, at.scaleX() - at.of(50, 36), top, at.of(130, 90), bottom - top);
        double tab = heights.at(travel.height());
        if (at.plots()) {
            hits.add(
                    Hits.Kind.PLOT,
                    0,
                    at.plotLeft(),
                    top,
                    at.plotRight() - at.plotLeft(),
                    bottom - top);
        }
        hits.add(
                Hits.Kind.TAB,
                0,
                at.scaleX() - at.of(112, 84),
                tab - at.of(18, 13),
                at.of(118, 88),
                at.of(36, 26));
    }
}
