// SPDX-License-Identifier: Apache-2.0
package foldwright.report.plot;

import foldwright.report.draw.Align;
import foldwright.report.draw.Box;
import foldwright.report.draw.Fill;
import foldwright.report.draw.Ground;
import foldwright.report.draw.Path;
import foldwright.report.draw.Pen;
import foldwright.report.draw.Surface;
import foldwright.study.Distribution;
import foldwright.study.Numerals;
import foldwright.study.Verdict;

/** A histogram with its bound; classes beyond the bound are striped. */
public final class DistributionChart {
    private DistributionChart() {}

    /** Draws the chart into the frame. */
    public static void draw(Surface on, Box outer, Distribution d) {
        double low = d.caption().unit().fromSi(d.edges().first());
        double high = d.caption().unit().fromSi(d.edges().last());
        double most = Math.max(1, d.counts().max());
        Frame frame =
                new Frame(
                        on,
                        outer,
                        new double[] {low, high},
                        new double[] {0, Scale.roundUp(1.02 * most)});
        frame.titles(d.caption(), outer);
        frame.upright();
        for (int i = 0; i < d.counts().size(); i++) {
            bar(frame, d, i);
        }
        frame.lying(d.caption().unit().symbol());
        bound(frame, d);
    }

    private static void bar(Frame frame, Distribution d, int i) {
        double from = frame.x.at(d.caption().unit().fromSi(d.edges().at(i)));
        double to = frame.x.at(d.caption().unit().fromSi(d.edges().at(i + 1)));
        double top = frame.y.at(d.counts().at(i));
        double middle = 0.5 * (d.edges().at(i) + d.edges().at(i + 1));
        boolean bad = d.side() == Distribution.Side.BELOW ? middle < d.limit() : middle > d.limit();
        Path path = Path.box(new Box(from, top, to - from, frame.inner.bottom() - top));
        frame.on.fill(path, new Fill.Texture(bad ? Verdict.FAILS : Verdict.HOLDS));
        frame.on.stroke(path, Pen.of(frame.ink(Ground.INK), 1));
    }

    private static void bound(Frame frame, Distribution d) {
        if (!Double.isFinite(d.limit())) {
            return;
        }
        double at = frame.x.at(frame.x.held(d.caption().unit().fromSi(d.limit())));
        frame.on.stroke(
                Path.line(at, frame.inner.y(), at, frame.inner.bottom()),
                Pen.of(frame.ink(Ground.INK), 2.2));
        Path ticks = new Path();
        double side = d.side() == Distribution.Side.BELOW ? -6 : 6;
        for (double y = frame.inner.y() + 4; y < frame.inner.bottom() - 6; y += 7) {
            ticks.start(at, y + 5).point(at + side, y - 1);
        }
        frame.on.stroke(ticks, Pen.of(frame.ink(Ground.INK2), 1));
        frame.on.text(
                at + (side < 0 ? 8 : -8),
                frame.inner.y() + 12,
                "limit " + Numerals.with(d.limit(), d.caption().unit()),
                frame.type
                        .strong()
                        .haloed(frame.ink(Ground.PAPER))
                        .aligned(side < 0 ? Align.START : Align.END));
    }
}
