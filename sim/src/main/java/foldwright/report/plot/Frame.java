// SPDX-License-Identifier: Apache-2.0
package foldwright.report.plot;

import foldwright.report.draw.Align;
import foldwright.report.draw.Box;
import foldwright.report.draw.Colour;
import foldwright.report.draw.Ground;
import foldwright.report.draw.Path;
import foldwright.report.draw.Pen;
import foldwright.report.draw.Surface;
import foldwright.study.HeightPlot;

/** Titles, axes and ticks of the plots whose value stands upright over a lying axis. */
final class Frame {
    static final double HEAD = 44;
    static final double FOOT = 40;
    static final double SIDE = 52;

    final Surface on;
    final Type type;
    final Box inner;
    final Scale x;
    final Scale y;

    /** Scales run over the inner box; x from low to high, y from its low value at the bottom. */
    Frame(Surface on, Box outer, double[] xEnds, double[] yEnds) {
        this.on = on;
        type = new Type(on.palette());
        inner =
                new Box(
                        outer.x() + SIDE,
                        outer.y() + HEAD,
                        outer.width() - SIDE - 12,
                        outer.height() - HEAD - FOOT);
        x = new Scale(xEnds[0], xEnds[1], inner.x(), inner.right());
        y = new Scale(yEnds[0], yEnds[1], inner.bottom(), inner.y());
    }

    Colour ink(Ground role) {
        return on.palette().ground(role);
    }

    void titles(HeightPlot.Caption caption, Box outer) {
        titles(on, caption, outer);
    }

    /** Title with its unit, and the second line, at the top of a frame. */
    static void titles(Surface on, HeightPlot.Caption caption, Box outer) {
        Type type = new Type(on.palette());
        String unit = caption.unit().symbol();
        String title = caption.title() + (unit.isEmpty() ? "" : ", " + unit);
        on.text(outer.x(), outer.y() + 15, title, type.title());
        on.text(outer.x(), outer.y() + 32, caption.subtitle(), type.subtitle());
    }

    /** Grid and numbers of the upright axis. */
    void upright() {
        for (double tick : y.ticks(5)) {
            double at = y.at(tick);
            on.stroke(Path.line(inner.x(), at, inner.right(), at), Pen.of(ink(Ground.RULE), 1));
            on.text(
                    inner.x() - 8,
                    at + 4.5,
                    Ticks.text(tick, y.decimals(5)),
                    type.tick().aligned(Align.END));
        }
    }

    /** Numbers of the lying axis and its name at the right end. */
    void lying(String name) {
        on.stroke(
                Path.line(inner.x(), inner.bottom(), inner.right(), inner.bottom()),
                Pen.of(ink(Ground.INK), 1));
        for (double tick : x.ticks(6)) {
            double at = x.at(tick);
            on.stroke(
                    Path.line(at, inner.bottom(), at, inner.bottom() + 5),
                    Pen.of(ink(Ground.INK), 1));
            on.text(
                    at,
                    inner.bottom() + 19,
                    Ticks.text(tick, x.decimals(6)),
                    type.tick().aligned(Align.MIDDLE));
        }
        on.text(inner.right(), inner.bottom() + 35, name, type.tick().aligned(Align.END));
    }
}
