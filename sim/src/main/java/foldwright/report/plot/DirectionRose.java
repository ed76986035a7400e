// SPDX-License-Identifier: Apache-2.0
package foldwright.report.plot;

import foldwright.report.draw.Align;
import foldwright.report.draw.Box;
import foldwright.report.draw.Dash;
import foldwright.report.draw.Fill;
import foldwright.report.draw.Ground;
import foldwright.report.draw.Marks;
import foldwright.report.draw.Path;
import foldwright.report.draw.Pen;
import foldwright.report.draw.Surface;
import foldwright.study.DirectionPlot;
import foldwright.study.Numerals;
import foldwright.study.Outcome;
import foldwright.study.Shown;
import foldwright.study.Verdict;

/**
 * What is allowed in each direction as a polygon round a centre, the value asked for as a circle:
 * where the polygon lies inside the circle, too much is asked.
 */
public final class DirectionRose {
    private static final double HEAD = 46;

    /** Direction of the ring labels, between the spokes [rad]. */
    private static final double BETWEEN = Math.PI / 8;

    private static final double EDGE = 58;

    /** Room for the widest value beside the circle. */
    private static final double SIDE = 72;

    private final Surface on;
    private final Type type;
    private final DirectionPlot plot;
    private final double cx;
    private final double cy;
    private final double radius;
    private final double end;

    private DirectionRose(Surface on, Box outer, DirectionPlot plot) {
        this.on = on;
        this.type = new Type(on.palette());
        this.plot = plot;
        cx = outer.x() + outer.width() / 2;
        cy = outer.y() + HEAD + (outer.height() - HEAD) / 2;
        radius = Math.min(outer.width() / 2 - SIDE, (outer.height() - HEAD) / 2 - EDGE);
        double most = plot.asked();
        for (DirectionPlot.Spoke s : plot.spokes()) {
            most = Math.max(most, Math.min(s.allowed(), 3 * plot.asked()));
        }
        end = Scale.roundUp(1.02 * unit().fromSi(most));
    }

    private Shown unit() {
        return plot.caption().unit();
    }

    /** Draws the rose into the frame. */
    public static void draw(Surface on, Box outer, DirectionPlot plot) {
        DirectionRose rose = new DirectionRose(on, outer, plot);
        Frame.titles(on, plot.caption(), outer);
        rose.rings();
        rose.polygon();
        rose.asked();
        rose.spokes();
    }

    private double out(double si) {
        return radius * Math.min(1, unit().fromSi(si) / end);
    }

    private void rings() {
        Scale scale = new Scale(0, end, 0, radius);
        for (double tick : scale.ticks(3)) {
            if (tick > 0) {
                on.strokeCircle(
                        cx, cy, scale.at(tick), Pen.of(on.palette().ground(Ground.INK3), 0.6));
                on.text(
                        cx + scale.at(tick) * Math.sin(BETWEEN),
                        cy - scale.at(tick) * Math.cos(BETWEEN) + 4,
                        Ticks.text(tick, scale.decimals(3)),
                        type.tick()
                                .aligned(Align.MIDDLE)
                                .haloed(on.palette().ground(Ground.PAPER)));
            }
        }
    }

    private double x(DirectionPlot.Spoke s, double r) {
        return cx + r * Math.cos(s.angle());
    }

    private double y(DirectionPlot.Spoke s, double r) {
        return cy - r * Math.sin(s.angle());
    }

    private void polygon() {
        Path area = new Path();
        plot.spokes().stream()
                .sorted(java.util.Comparator.comparingDouble(DirectionPlot.Spoke::angle))
                .forEach(s -> area.point(x(s, out(s.allowed())), y(s, out(s.allowed()))));
        area.close();
        on.fill(area, new Fill.Flat(on.palette().load(0.35), 0.35));
        on.stroke(area, Pen.of(on.palette().ground(Ground.INK), 1.4));
    }

    private void asked() {
        on.strokeCircle(
                cx,
                cy,
                out(plot.asked()),
                Pen.of(on.palette().ground(Ground.INK), 2).dashed(Dash.DASHED));
        on.text(
                cx,
                cy + out(plot.asked()) + 16,
                "asked for " + Numerals.with(plot.asked(), unit()),
                type.strong().haloed(on.palette().ground(Ground.PAPER)).aligned(Align.MIDDLE));
    }

    private void spokes() {
        for (DirectionPlot.Spoke s : plot.spokes()) {
            double r = out(s.allowed());
            Verdict verdict = Verdict.of(Outcome.marginOf(plot.asked(), s.allowed()));
            Marks.draw(on, verdict, x(s, r), y(s, r), 11);
            double c = Math.cos(s.angle());
            Align side = c > 0.3 ? Align.START : c < -0.3 ? Align.END : Align.MIDDLE;
            double at = radius + 12;
            String words = s.word().replace('-', '\u2212');
            // Two lines of words above the circle stand higher, off its edge.
            double top = Math.sin(s.angle()) > 0.9 ? y(s, at) - 15 : y(s, at);
            on.text(x(s, at), top + 1, words, type.strong().aligned(side));
            on.text(
                    x(s, at),
                    top + 16,
                    Numerals.with(s.allowed(), unit()),
                    type.tick().aligned(side));
        }
    }
}
