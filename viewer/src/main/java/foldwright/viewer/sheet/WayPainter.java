// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

import foldwright.report.plot.Band;
import foldwright.report.plot.Scale;
import foldwright.study.Numerals;
import foldwright.study.Series;
import foldwright.study.Verdict;
import foldwright.viewer.paint.Align;
import foldwright.viewer.paint.Lettering;

/**
 * The way along a toolpath as an upright scale: corners by number, the ribbon of margins, the tab;
 * beside it the stray of the tool, and on the table its track.
 */
final class WayPainter {
    private static final double CUT = 5;

    private final Pen pen;
    private final Layout at;
    private final Hits hits;
    private final Playing run;
    private final Playing.Way way;
    private final Scale scale;
    private final double tabY;
    private final TabPainter tab;

    WayPainter(Pen pen, Hits hits, Playing run) {
        this.pen = pen;
        at = pen.at;
        this.hits = hits;
        this.run = run;
        way = run.way().orElseThrow();
        scale = scale(at, way.end());
        tabY = scale.at(scale.held(way.now()));
        tab = new TabPainter(pen, tabY, scale.from());
    }

    /** The scale of a path of this length [m] on a layout. */
    static Scale scale(Layout at, double length) {
        double low = at.little ? at.scaleFlat() : at.bottom(800, 520);
        return new Scale(0, length, low, at.plots() ? at.of(234, 166) : at.scaleTop());
    }

    void draw(SheetPainter.Scene scene) {
        TrackPainter track = new TrackPainter(pen, scene, way.track());
        track.draw(way.corners());
        ribbon();
        axis();
        StrayPainter stray = at.plots() ? new StrayPainter(pen, way.stray(), scale) : null;
        if (stray != null) {
            stray.draw();
        }
        new MarkPainter(pen).draw(run, scale);
        double[] tool = track.tool();
        double left = at.scaleX() - at.of(112, 84);
        pen.canvas.path().moveTo(tool[0], tool[1]);
        double bend = Math.max(tool[0], left - at.of(70, 46));
        pen.canvas.lineTo(bend, tabY).lineTo(stray == null ? at.scaleX() : stray.end(), tabY);
        pen.canvas.strokeRound(pen.palette.pine, pen.line(1.6));
        track.mark(tool);
        if (stray != null) {
            stray.now(tabY);
        }
        // From above the machine fills the table of a little sheet to its foot.
        if (!at.little || !scene.view().above) {
            new NotePainter(pen).draw(way.notes());
        }
        tab.draw(Numerals.fixed(way.now(), 3) + "\u00a0m", clock());
        grips();
    }

    /** The time alone; the whole stands below. */
    private String clock() {
        int of = run.clock().time().indexOf(" of ");
        return of < 0 ? run.clock().time() : run.clock().time().substring(0, of);
    }

    private void grips() {
        double top = scale.to();
        double high = scale.from() - top;
        hits.add(
                Hits.Kind.WAY,
                0,
                at.scaleX() - at.of(50, 36),
                top,
                at.plotRight() - at.scaleX(),
                high);
        hits.add(
                Hits.Kind.TAB,
                0,
                at.scaleX() - at.of(112, 84),
                tabY - at.of(18, 13),
                at.of(100, 75),
                at.of(36, 26));
        new MarkPainter(pen).grips(run, scale, hits);
    }

    private void axis() {
        double x = at.scaleX();
        pen.canvas.path().moveTo(x, scale.to()).lineTo(x, scale.from());
        pen.canvas.stroke(pen.palette.ink, pen.line(2.2));
        Lettering number = pen.strong(14, 13, pen.palette.ink);
        double last = Double.POSITIVE_INFINITY;
        for (Playing.Corner corner : way.corners()) {
            double y = scale.at(corner.way());
            pen.canvas.level(x - at.of(9, 6), x, y, pen.palette.ink2, pen.line(1.1));
            if (last - y > 1.1 * number.em() && !tab.covers(y)) {
                pen.canvas.text(
                        number,
                        x - at.of(14, 10),
                        y + 0.35 * number.em(),
                        Integer.toString(corner.number()),
                        Align.RIGHT);
                last = y;
            }
        }
        Lettering look = pen.tick(pen.palette.ink2);
        int most = 6;
        for (double tick : scale.ticks(most)) {
            double y = scale.at(tick);
            if (!tab.covers(y)) {
                pen.canvas.text(
                        look,
                        x - at.of(46, 34),
                        y + 0.35 * look.em(),
                        (tick == 0 ? "0" : Numerals.fixed(tick, scale.decimals(most))) + "\u00a0m",
                        Align.RIGHT);
            }
        }
    }

    private double place(double margin) {
        return at.scaleX() + at.ribbonStep() * Math.max(0, Math.min(CUT, margin));
    }

    private void ribbon() {
        Lettering title = pen.strong(15, 13, pen.palette.ink);
        double top = scale.to();
        if (at.plots()) {
            pen.canvas.text(title, at.scaleX(), top - at.of(64, 43), "margin all");
            pen.canvas.text(title, at.scaleX(), top - at.of(46, 28), "along the way");
        } else {
            pen.canvas.text(title, place(CUT) + 22, top - 10, "margin");
        }
        double[] found = way.stray().margin();
        if (Double.isNaN(found[0])) {
            pen.canvas.text(
                    pen.tick(pen.palette.ink2), at.scaleX(), top - at.of(18, 10), "no limit");
            return;
        }
        int n = Math.min(found.length, (int) (scale.from() - top) / 2);
        double[] along = new double[n];
        double[] margin = new double[n];
        for (int i = 0; i < n; i++) {
            double worst = Double.POSITIVE_INFINITY;
            for (int k = i * found.length / n; k < (i + 1) * found.length / n; k++) {
                worst = Math.min(worst, found[k]);
            }
            along[i] = way.end() * i / (n - 1);
            margin[i] = worst;
        }
        Series a = Series.of(along);
        Series m = Series.of(margin);
        for (Band band : Band.of(a, m, Verdict.RULE)) {
            pen.canvas.path().moveTo(at.scaleX(), scale.at(band.from()));
            pen.canvas.lineTo(place(m.over(a, band.from())), scale.at(band.from()));
            for (int i = 0; i < n; i++) {
                if (along[i] > band.from() && along[i] < band.to()) {
                    pen.canvas.lineTo(place(margin[i]), scale.at(along[i]));
                }
            }
            pen.canvas.lineTo(place(m.over(a, band.to())), scale.at(band.to()));
            pen.canvas.lineTo(at.scaleX(), scale.at(band.to())).closePath();
            pen.area(band.verdict());
        }
        pen.canvas.path();
        for (int i = 0; i < n; i++) {
            if (i == 0) {
                pen.canvas.moveTo(place(margin[0]), scale.at(0));
            } else {
                pen.canvas.lineTo(place(margin[i]), scale.at(along[i]));
            }
        }
        pen.canvas.strokeRound(pen.palette.ink, pen.line(1.2));
        limits(top);
    }

    private void limits(double top) {
        pen.canvas.upright(place(1), top, scale.from(), pen.palette.ink, pen.line(1.5));
        float x = (float) (Math.floor(place(Verdict.RULE)) + 0.5);
        pen.canvas
                .path()
                .dashes(
                        new float[] {x, x},
                        new float[] {(float) top, (float) scale.from()},
                        2,
                        2,
                        3);
        pen.canvas.stroke(pen.palette.ink2, pen.line(1.1));
        Lettering look = pen.tick(pen.palette.ink2);
        for (int m = 1; m <= CUT; m += 2) {
            pen.canvas.upright(
                    place(m), top - at.of(8, 5), top - at.of(3, 2), pen.palette.ink2, pen.line(1));
            pen.canvas.text(
                    look,
                    place(m),
                    top - at.of(18, 10),
                    m == CUT ? "5×" : Integer.toString(m),
                    Align.CENTRE);
        }
    }
}
