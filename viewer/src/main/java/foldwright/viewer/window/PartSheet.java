// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.window;

import foldwright.report.draw.Face;
import foldwright.viewer.paint.Align;
import foldwright.viewer.paint.Canvas;
import foldwright.viewer.paint.CanvasSurface;
import foldwright.viewer.paint.Lettering;
import foldwright.viewer.session.PartReading;
import foldwright.viewer.sheet.Layout;
import foldwright.viewer.sheet.Studio;
import foldwright.viewer.theme.Palette;

/** A small sheet beside a part: what it carries, of what that is made, how far it may go. */
public final class PartSheet {
    private final PartReading reading;
    private final double x;
    private final double y;

    private PartSheet(PartReading reading, double x, double y) {
        this.reading = reading;
        this.x = x;
        this.y = y;
    }

    /** Laid beside a place of the picture [px]. */
    public static Studio.Overlay of(PartReading reading, double x, double y) {
        return new PartSheet(reading, x, y)::draw;
    }

    private void draw(Canvas canvas, Layout at, Palette p) {
        canvas.nextLayer();
        Lettering head = new Lettering(Face.SANS_SEMIBOLD, at.type(16, 13), p.ink);
        Lettering text = new Lettering(Face.SANS, at.type(15, 13), p.ink2);
        Lettering number = new Lettering(Face.SANS_MEDIUM, at.type(15, 13), p.ink);
        double pitch = 1.45 * text.em();
        double gap = 1.2 * text.em();
        double names = 0;
        double values = 0;
        for (PartReading.Fact f : reading.facts()) {
            names = Math.max(names, canvas.width(text, f.name()));
            values = Math.max(values, canvas.width(number, f.value()));
        }
        for (PartReading.Share s : reading.shares()) {
            names = Math.max(names, canvas.width(text, s.name()) + 0.9 * text.em());
            values = Math.max(values, 13 * text.em());
        }
        double mark = 1.1 * text.em();
        double inner =
                Math.max(
                        names + gap + values + mark,
                        Math.max(
                                canvas.width(head, reading.title()) + 2 * text.em(),
                                canvas.width(head, reading.split())));
        int rows = reading.facts().size() + reading.shares().size();
        double h = pitch * (rows + 1.9 + (reading.split().isEmpty() ? 0 : 1.35));
        double pad = at.of(16, 12);
        double w = inner + 2 * pad;
        double left = Math.max(8, Math.min(x + at.of(18, 14), at.scaleX() - at.of(130, 96) - w));
        double top = Math.max(8, Math.min(y - h - at.of(10, 8), at.height - h - 8));
        Sheets.sheet(canvas, at, p, new Sheets.Frame(left, top, w, h));
        double row = top + 1.2 * pitch;
        double column = left + pad;
        canvas.text(head, column, row, reading.title());
        for (PartReading.Fact f : reading.facts()) {
            row += pitch;
            canvas.text(text, column, row, f.name());
            double end = canvas.text(number, column + names + gap, row, f.value());
            double mx = column + names + gap + end + 0.8 * mark;
            double my = row - 0.33 * text.em();
            f.verdict()
                    .ifPresent(
                            v ->
                                    foldwright.report.draw.Marks.draw(
                                            new CanvasSurface(canvas, p), v, mx, my, 0.8 * mark));
        }
        if (reading.split().isEmpty()) {
            return;
        }
        row += 1.35 * pitch;
        canvas.text(head, column, row, reading.split());
        for (PartReading.Share s : reading.shares()) {
            row += pitch;
            share(canvas, p, s, new double[] {column, column + names + gap, row}, text, number);
        }
    }

    private static void share(
            Canvas canvas,
            Palette p,
            PartReading.Share s,
            double[] at,
            Lettering text,
            Lettering number) {
        double em = text.em();
        int colour = s.cause().map(c -> Palette.rgb(p.roles.cause(c))).orElse(p.ink3);
        canvas.path().rect(at[0], at[2] - 0.62 * em, 0.6 * em, 0.6 * em).fill(colour);
        canvas.path().rect(at[0], at[2] - 0.62 * em, 0.6 * em, 0.6 * em).stroke(p.ink3, 0.8);
        canvas.text(text, at[0] + 0.9 * em, at[2], s.name());
        double right = at[1] + 4.6 * em;
        canvas.text(number, right, at[2], s.value(), Align.RIGHT);
        // Bars to both sides of a line: what helps goes left, what costs goes right.
        double zero = right + 2.6 * em;
        // What helps is seldom more than half of what costs.
        double length = (s.part() < 0 ? 1.9 : 5.0) * em * s.part();
        double from = Math.min(zero, zero + length);
        canvas.path().rect(from, at[2] - 0.6 * em, Math.abs(length), 0.55 * em).fill(colour);
        canvas.path().rect(from, at[2] - 0.6 * em, Math.abs(length), 0.55 * em);
        canvas.stroke(p.ink3, 0.8);
        canvas.upright(zero, at[2] - 0.8 * em, at[2] + 0.15 * em, p.ink2, 1);
    }
}
