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

    private static final double EDGE = 62;

    /** Room for the widest value beside the circle. */
    private static final double SIDE = 76;

    /** Room for the head of an arrow outside the circle. */
    private static final double ARROW = 10;

    /** A circle of a smaller radius has no room for words below it. */
    private static final double ROOM = 25;

    /** From the rim to the words of a direction. */
    private static final double OFF = 15;

    /** A direction that allows this many times the least one, or what is asked, is cut. */
    private static final double CUT = 3;

    private final Surface on;
    private final Type type;
    private final DirectionPlot plot;
    private final double cx;
    private final double cy;
    private final double radius;
    private final double end;
    private final boolean cut;
    private final double foot;

    private DirectionRose(Surface on, Box outer, DirectionPlot plot) {
        this.on = on;
        this.type = new Type(on.palette());
        this.plot = plot;
        cx = outer.x() + outer.width() / 2;
        cy = outer.y() + HEAD + (outer.height() - HEAD) / 2;
        foot = outer.bottom();
        double least = Double.POSITIVE_INFINITY;
        double most = plot.asked();
        for (DirectionPlot.Spoke s : plot.spokes()) {
            least = Math.min(least, s.allowed());
            most = Math.max(most, s.allowed());
        }
        double held = CUT * Math.max(plot.asked(), least);
        cut = most > held;
        end = Scale.roundUp(1.02 * unit().fromSi(Math.min(most, held)));
        radius =
                Math.min(
                        outer.width() / 2 - SIDE - (cut ? ARROW : 0),
                        (outer.height() - HEAD) / 2 - EDGE - (cut ? ARROW : 0));
    }

    private boolean beyond(DirectionPlot.Spoke s) {
        return unit().fromSi(s.allowed()) > end;
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
        rose.legend(outer.x());
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
                if (Math.abs(scale.at(tick) - out(plot.asked())) < 7) {
                    continue;
                }
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
        double r = out(plot.asked());
        on.strokeCircle(cx, cy, r, ring());
        if (r > ROOM) {
            on.text(
                    cx,
                    cy + r + 16,
                    words(),
                    type.strong().haloed(on.palette().ground(Ground.PAPER)).aligned(Align.MIDDLE));
        }
    }

    private Pen ring() {
        return Pen.of(on.palette().ground(Ground.INK), 2).dashed(Dash.DASHED);
    }

    private String words() {
        return "asked for " + Numerals.with(plot.asked(), unit());
    }

    private void spokes() {
        for (DirectionPlot.Spoke s : plot.spokes()) {
            double r = out(s.allowed());
            Verdict verdict = Verdict.of(Outcome.marginOf(plot.asked(), s.allowed()));
            Marks.draw(on, verdict, x(s, r), y(s, r), 11);
            double c = Math.cos(s.angle());
            Align side = c > 0.3 ? Align.START : c < -0.3 ? Align.END : Align.MIDDLE;
            double at = radius + OFF;
            if (beyond(s)) {
                arrow(x(s, radius + 7), y(s, radius + 7), s.angle());
                at += ARROW;
            }
            // Two lines of words above or below the circle stand off its edge.
            double up = Math.sin(s.angle());
            double top = y(s, at) + (up > 0.9 ? -15 : up < -0.9 ? 6 : 0);
            on.text(x(s, at), top + 1, s.word(), type.strong().aligned(side));
            on.text(
                    x(s, at),
                    top + 16,
                    Numerals.with(s.allowed(), unit()),
                    type.tick().aligned(side));
        }
    }

    /** The head of an arrow with the middle of its foot at a point, turned to a direction. */
    private void arrow(double x, double y, double angle) {
        double c = Math.cos(angle);
        double n = Math.sin(angle);
        double wide = 5;
        on.fill(
                Path.polygon(
                        x - wide * n,
                        y - wide * c,
                        x + ARROW * c,
                        y - ARROW * n,
                        x + wide * n,
                        y + wide * c),
                Fill.of(on.palette().ground(Ground.INK)));
    }

    /** What the small circle is, where its words would cover the rose, and what an arrow means. */
    private void legend(double left) {
        double y = foot - 6;
        if (cut) {
            arrow(left + 1, y - 4, 0);
            on.text(left + 18, y, "allows more than the rim shows; value beside it", type.hint());
            y -= 19;
        }
        if (out(plot.asked()) <= ROOM) {
            on.strokeCircle(left + 6, y - 4.5, 5.5, ring());
            on.text(left + 18, y, words(), type.strong());
        }
    }
}
