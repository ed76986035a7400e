// SPDX-License-Identifier: Apache-2.0
package foldwright.report.plot;

import foldwright.report.draw.Align;
import foldwright.report.draw.Box;
import foldwright.report.draw.Dash;
import foldwright.report.draw.Ground;
import foldwright.report.draw.Marks;
import foldwright.report.draw.Path;
import foldwright.report.draw.Pen;
import foldwright.report.draw.Surface;
import foldwright.report.draw.TextStyle;
import foldwright.study.Shown;
import foldwright.study.TimePlot;

/** Curves over time with named moments. */
public final class TimeChart {
    private TimeChart() {}

    /** Draws the chart into the frame; the axis of values spans all curves and zero. */
    public static void draw(Surface on, Box outer, TimePlot plot) {
        Shown unit = plot.caption().unit();
        double low = 0;
        double high = 0;
        for (TimePlot.Curve c : plot.curves()) {
            low = Math.min(low, unit.fromSi(c.values().min()));
            high = Math.max(high, unit.fromSi(c.values().max()));
        }
        double[] ends = {
            low < 0 ? -Scale.roundUp(-low) : 0, high > 0 ? Scale.roundUp(1.02 * high) : 1
        };
        double end = Math.max(plot.time().last(), plot.time().first() + 1e-9);
        Frame frame = new Frame(on, outer, new double[] {plot.time().first(), end}, ends);
        frame.titles(plot.caption(), outer);
        frame.upright();
        for (TimePlot.Curve c : plot.curves()) {
            on.stroke(curve(frame, plot, c), pen(frame, c.kind()));
        }
        frame.lying("time, s");
        labels(frame, plot);
        events(frame, plot);
    }

    private static Path curve(Frame frame, TimePlot plot, TimePlot.Curve c) {
        Path path = new Path();
        boolean down = false;
        for (int i = 0; i < plot.time().size(); i++) {
            double v = plot.caption().unit().fromSi(c.values().at(i));
            if (!Double.isFinite(v)) {
                down = false;
                continue;
            }
            double x = frame.x.at(plot.time().at(i));
            path = down ? path.point(x, frame.y.at(v)) : path.start(x, frame.y.at(v));
            down = true;
        }
        return path;
    }

    private static Pen pen(Frame frame, TimePlot.Kind kind) {
        return switch (kind) {
            case FOUND -> Pen.of(frame.ink(Ground.INK), 2.2);
            case ASKED -> Pen.of(frame.ink(Ground.INK2), 1.4).dashed(Dash.DASHED);
            case LIMIT -> Pen.of(frame.ink(Ground.INK), 1.2).dashed(Dash.DOTTED);
        };
    }

    /** Names each curve at its right end, moved apart where ends meet. */
    private static void labels(Frame frame, TimePlot plot) {
        double taken = Double.NaN;
        for (TimePlot.Curve c : plot.curves()) {
            double v = plot.caption().unit().fromSi(c.values().last());
            if (!Double.isFinite(v)) {
                continue;
            }
            double y = frame.y.at(v) - 8;
            if (Math.abs(y - taken) < 15) {
                y = taken - 15;
            }
            taken = y;
            TextStyle style =
                    c.kind() == TimePlot.Kind.FOUND ? frame.type.strong() : frame.type.subtitle();
            frame.on.text(
                    frame.inner.right(),
                    y,
                    c.words(),
                    style.haloed(frame.ink(Ground.PAPER)).aligned(Align.END));
        }
    }

    private static void events(Frame frame, TimePlot plot) {
        int row = 0;
        for (TimePlot.Event e : plot.events()) {
            double x = frame.x.at(frame.x.held(e.time()));
            double y = frame.inner.bottom() - 12 - 18 * (row++ % 3);
            frame.on.stroke(
                    Path.line(x, frame.inner.y(), x, frame.inner.bottom()),
                    Pen.of(frame.ink(Ground.INK3), 1).dashed(Dash.DOTTED));
            Marks.draw(frame.on, e.verdict(), x, y - 4, 10);
            boolean left = x > 0.6 * (frame.inner.x() + frame.inner.right());
            frame.on.text(
                    left ? x - 10 : x + 10,
                    y,
                    e.words(),
                    frame.type
                            .label()
                            .haloed(frame.ink(Ground.PAPER))
                            .aligned(left ? Align.END : Align.START));
        }
    }
}
