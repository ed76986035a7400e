// SPDX-License-Identifier: Apache-2.0
package foldwright.report.plot;

import foldwright.report.draw.Align;
import foldwright.report.draw.Box;
import foldwright.report.draw.Fill;
import foldwright.report.draw.Ground;
import foldwright.report.draw.Marks;
import foldwright.report.draw.Path;
import foldwright.report.draw.Pen;
import foldwright.report.draw.Surface;
import foldwright.study.Numerals;
import foldwright.study.Outcome;
import foldwright.study.Series;
import foldwright.study.Shown;
import foldwright.study.SignedCurve;
import foldwright.study.Verdict;

/**
 * A curve with a sign, upright along its way: filled to zero in the signed scale, the allowed strip
 * between two limits, both ends named in words.
 */
public final class SignedChart {
    private static final double HEAD = 62;
    private static final double FOOT = 46;
    private static final double SIDE = 56;

    private final Surface on;
    private final Type type;
    private final SignedCurve curve;
    private final Box inner;
    private final Scale x;
    private final Scale way;

    private SignedChart(Surface on, Box outer, SignedCurve curve) {
        this.on = on;
        this.type = new Type(on.palette());
        this.curve = curve;
        inner =
                new Box(
                        outer.x() + SIDE,
                        outer.y() + HEAD,
                        outer.width() - SIDE - 12,
                        outer.height() - HEAD - FOOT);
        Shown unit = curve.caption().unit();
        double most = Math.max(-curve.values().min(), curve.values().max());
        if (Double.isFinite(curve.allowed())) {
            most = Math.max(most, curve.allowed());
        }
        double end = Scale.roundUp(Math.max(1e-12, 1.05 * unit.fromSi(most)));
        x = new Scale(-end, end, inner.x(), inner.right());
        Series places = curve.along().places();
        way = new Scale(places.first(), places.last(), inner.bottom(), inner.y());
    }

    /**
     * Draws the chart into the frame.
     *
     * @param wayUnit unit in which the way is lettered
     */
    public static void draw(Surface on, Box outer, SignedCurve curve, Shown wayUnit) {
        SignedChart chart = new SignedChart(on, outer, curve);
        chart.titles(outer);
        chart.body();
        chart.limits();
        chart.axes(wayUnit);
        chart.worst();
    }

    private void titles(Box outer) {
        String unit = curve.caption().unit().symbol();
        on.text(
                outer.x(),
                outer.y() + 15,
                curve.caption().title() + (unit.isEmpty() ? "" : ", " + unit),
                type.title());
        on.text(outer.x(), outer.y() + 32, curve.caption().subtitle(), type.subtitle());
        double below = inner.bottom() + 36;
        on.text(inner.x(), below, curve.minus(), type.tick());
        on.text(inner.right(), below, curve.plus(), type.tick().aligned(Align.END));
    }

    private double at(double si) {
        return x.at(x.held(curve.caption().unit().fromSi(si)));
    }

    private void body() {
        Path area = new Path();
        Path line = new Path();
        Series places = curve.along().places();
        area.point(x.at(0), way.at(places.first()));
        for (int i = 0; i < places.size(); i++) {
            area.point(at(curve.values().at(i)), way.at(places.at(i)));
            line.point(at(curve.values().at(i)), way.at(places.at(i)));
        }
        area.point(x.at(0), way.at(places.last())).close();
        on.fill(area, new Fill.Ramp(on.palette().signedStops(), inner.x(), inner.right()));
        on.stroke(line, Pen.of(on.palette().ground(Ground.INK), 1.4));
    }

    private void limits() {
        if (!Double.isFinite(curve.allowed())) {
            return;
        }
        for (int side = -1; side <= 1; side += 2) {
            double at = at(side * curve.allowed());
            on.stroke(
                    Path.line(at, inner.y(), at, inner.bottom()),
                    Pen.of(on.palette().ground(Ground.INK), 2));
            Path ticks = new Path();
            for (double y = inner.y() + 4; y < inner.bottom() - 6; y += 7) {
                ticks.start(at, y + 5).point(at + side * 6, y - 1);
            }
            on.stroke(ticks, Pen.of(on.palette().ground(Ground.INK2), 1));
        }
        on.text(
                x.at(0),
                inner.y() - 9,
                "allowed ±" + Numerals.with(curve.allowed(), curve.caption().unit()),
                type.strong().aligned(Align.MIDDLE));
    }

    private void axes(Shown wayUnit) {
        on.stroke(
                Path.line(x.at(0), inner.y(), x.at(0), inner.bottom()),
                Pen.of(on.palette().ground(Ground.INK), 1));
        on.stroke(
                Path.line(inner.x(), inner.bottom(), inner.right(), inner.bottom()),
                Pen.of(on.palette().ground(Ground.INK), 1));
        for (double tick : x.ticks(4)) {
            on.text(
                    x.at(tick),
                    inner.bottom() + 19,
                    Ticks.text(tick, x.decimals(4)),
                    type.tick().aligned(Align.MIDDLE));
        }
        Scale shown =
                new Scale(
                        wayUnit.fromSi(way.low()),
                        wayUnit.fromSi(way.high()),
                        way.from(),
                        way.to());
        for (double tick : shown.ticks(6)) {
            on.text(
                    inner.x() - 8,
                    shown.at(tick) + 4.5,
                    Ticks.text(tick, shown.decimals(6)),
                    type.tick().aligned(Align.END));
        }
        String word = curve.along().word();
        on.text(
                inner.x() - SIDE,
                inner.y() - 9,
                word + (word.isEmpty() ? "" : ", ") + wayUnit.symbol(),
                type.tick());
    }

    private void worst() {
        int worst = curve.worst();
        double value = curve.values().at(worst);
        Verdict verdict = Verdict.of(Outcome.marginOf(Math.abs(value), curve.allowed()));
        double y = way.at(curve.along().places().at(worst));
        Marks.draw(on, verdict, at(value), y, 13);
        boolean right = value > 0;
        // Above the upper end stands what is allowed.
        boolean top = y < inner.y() + 24;
        on.text(
                at(value) + (right ? -12 : 12),
                top ? y + 20 : y - 8,
                Numerals.with(value, curve.caption().unit()),
                type.strong()
                        .haloed(on.palette().ground(Ground.PAPER))
                        .aligned(right ? Align.END : Align.START));
    }
}
