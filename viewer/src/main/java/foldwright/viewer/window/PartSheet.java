// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.window;

import foldwright.report.draw.Face;
import foldwright.report.draw.Marks;
import foldwright.viewer.paint.Align;
import foldwright.viewer.paint.Canvas;
import foldwright.viewer.paint.CanvasSurface;
import foldwright.viewer.paint.Lettering;
import foldwright.viewer.session.PartReading;
import foldwright.viewer.sheet.Layout;
import foldwright.viewer.sheet.Studio;
import foldwright.viewer.theme.Palette;
import java.util.List;
import java.util.Optional;

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

    /** Letters and columns of one sheet. */
    private static final class Columns {
        final Lettering head;
        final Lettering text;
        final Lettering number;
        final double em;
        double names;
        double values;
        double left;

        /** Room for the numbers of shares. */
        double numbers;

        /** Room for their percentages and bars [em]. */
        static final double PERCENT = 3.4;

        static final double BARS = 6.6;

        Columns(Layout at, Palette p) {
            head = new Lettering(Face.SANS_SEMIBOLD, at.type(16, 13), p.ink);
            text = new Lettering(Face.SANS, at.type(15, 13), p.ink2);
            number = new Lettering(Face.SANS_MEDIUM, at.type(15, 13), p.ink);
            em = text.em();
        }

        void fit(Canvas canvas, PartReading reading) {
            for (PartReading.Fact f : reading.facts()) {
                names = Math.max(names, canvas.width(text, f.name()));
                values = Math.max(values, canvas.width(number, f.value()));
            }
            for (PartReading.Share s : reading.shares()) {
                names = Math.max(names, canvas.width(text, s.name()) + 0.9 * em);
                numbers = Math.max(numbers, canvas.width(number, s.value()));
            }
            if (!reading.shares().isEmpty()) {
                numbers = Math.max(numbers, 4 * em);
                values = Math.max(values, numbers + (PERCENT + BARS + 0.8) * em);
            }
        }

        double mark() {
            return 1.1 * em;
        }

        /** Where values begin. */
        double second() {
            return left + names + 1.2 * em;
        }

        double width(Canvas canvas, PartReading reading) {
            double own = names + 1.2 * em + values + mark();
            double title = canvas.width(head, reading.title()) + 2 * em;
            double split = canvas.width(head, reading.split());
            return Math.max(
                    Math.max(own, title), Math.max(split, canvas.width(text, reading.note())));
        }
    }

    private void draw(Canvas canvas, Layout at, Palette p) {
        canvas.nextLayer();
        Columns c = new Columns(at, p);
        c.fit(canvas, reading);
        double pitch = 1.45 * c.em;
        double rows =
                reading.facts().size()
                        + reading.shares().size()
                        + (reading.split().isEmpty() ? 0 : 1.35)
                        + (reading.note().isEmpty() ? 0 : 1.1);
        double h = pitch * (rows + 1.9);
        double pad = at.of(16, 12);
        double w = c.width(canvas, reading) + 2 * pad;
        Sheets.Frame frame = clear(at, w, h);
        leader(canvas, at, p, frame);
        Sheets.sheet(canvas, at, p, frame);
        c.left = frame.x() + pad;
        double row = frame.y() + 1.2 * pitch;
        canvas.text(c.head, c.left, row, reading.title());
        for (PartReading.Fact f : reading.facts()) {
            row += pitch;
            fact(canvas, p, c, f, row);
        }
        if (!reading.split().isEmpty()) {
            row += 1.35 * pitch;
            canvas.text(c.head, c.left, row, reading.split());
        }
        Bars bars = Bars.of(reading.shares(), c);
        for (PartReading.Share s : reading.shares()) {
            row += pitch;
            share(canvas, p, c, s, bars, row);
        }
        if (!reading.note().isEmpty()) {
            canvas.text(c.text, c.left, row + 1.1 * pitch, reading.note());
        }
    }

    /**
     * A corner of the table where the sheet does not hide the part: the upper ones first, where
     * there is least to see.
     */
    private Sheets.Frame clear(Layout at, double w, double h) {
        double free = at.of(26, 18);
        return clear(at, w, h, free, at.tableTop())
                .or(() -> clear(at, w, h, free / 3, at.tableTop()))
                .or(() -> clear(at, w, h, free / 3, 8))
                .orElseGet(() -> beside(at, w, h, free));
    }

    /**
     * The first corner that leaves {@code free} pixels round the part; sheets that do not fit the
     * table go over its edge, up to {@code least} from the top.
     */
    private Optional<Sheets.Frame> clear(Layout at, double w, double h, double free, double least) {
        double left = at.left(40, 27);
        double right = Math.max(left, at.scaleX() - at.of(130, 96) - w);
        double low = Math.max(8, at.rulesTop() - at.of(14, 10) - h);
        double top = Math.min(at.of(178, 118), low);
        double[] rows = {top, low, Math.min(top, y - free - h), Math.max(low, y + free)};
        for (double row : rows) {
            for (double column : new double[] {left, right}) {
                boolean fits = row >= Math.min(least, top) && row + h <= at.height - 8;
                boolean sideways = x <= column - free || x >= column + w + free;
                // Rounding must not decide of a row that was made to fit.
                boolean upright = y <= row - free + 0.01 || y >= row + h + free - 0.01;
                if (fits && (sideways || upright)) {
                    return Optional.of(new Sheets.Frame(column, row, w, h));
                }
            }
        }
        return Optional.empty();
    }

    /** Of a sheet as large as the table: beside the part, as far as the picture reaches. */
    private Sheets.Frame beside(Layout at, double w, double h, double free) {
        double column = Math.max(8, Math.min(x + free, at.width - w - 8));
        double row = Math.max(8, Math.min(y - h - free, at.height - h - 8));
        return new Sheets.Frame(column, row, w, h);
    }

    /** From the sheet to its part. */
    private void leader(Canvas canvas, Layout at, Palette p, Sheets.Frame f) {
        double fromX = Math.max(f.x() + at.of(24, 16), Math.min(x, f.x() + f.w() - at.of(24, 16)));
        double fromY = Math.max(f.y() + at.of(24, 16), Math.min(y, f.y() + f.h() - at.of(24, 16)));
        canvas.path().moveTo(fromX, fromY).lineTo(x, y).stroke(p.paper, at.of(5, 4));
        canvas.path().moveTo(fromX, fromY).lineTo(x, y).stroke(p.ink, at.of(1.6, 1.2));
        canvas.path().disc(x, y, at.of(4.5, 3.4)).fill(p.paper);
        canvas.path().disc(x, y, at.of(4.5, 3.4)).stroke(p.ink, at.of(1.6, 1.2));
    }

    private static void fact(Canvas canvas, Palette p, Columns c, PartReading.Fact f, double row) {
        canvas.text(c.text, c.left, row, f.name());
        double end = canvas.text(c.number, c.second(), row, f.value());
        double mx = c.second() + end + 0.8 * c.mark();
        double my = row - 0.33 * c.em;
        f.verdict()
                .ifPresent(
                        v -> Marks.draw(new CanvasSurface(canvas, p), v, mx, my, 0.8 * c.mark()));
    }

    /**
     * Bars to both sides of a line, on one scale: what helps goes left, what costs goes right.
     *
     * @param zero place of the line
     * @param unit length of the largest piece
     */
    private record Bars(double zero, double unit) {
        static Bars of(List<PartReading.Share> shares, Columns c) {
            double least = 0;
            double most = 0;
            for (PartReading.Share s : shares) {
                least = Math.min(least, s.part());
                most = Math.max(most, s.part());
            }
            double unit = c.em * Columns.BARS / Math.max(1, most - least);
            double from = c.second() + c.numbers + (Columns.PERCENT + 0.8) * c.em;
            return new Bars(from - least * unit, unit);
        }
    }

    private static void share(
            Canvas canvas, Palette p, Columns c, PartReading.Share s, Bars bars, double row) {
        double em = c.em;
        int colour = s.cause().map(k -> Palette.rgb(p.roles.cause(k))).orElse(p.ink3);
        canvas.path().rect(c.left, row - 0.62 * em, 0.6 * em, 0.6 * em).fill(colour);
        canvas.path().rect(c.left, row - 0.62 * em, 0.6 * em, 0.6 * em).stroke(p.ink3, 0.8);
        canvas.text(c.text, c.left + 0.9 * em, row, s.name());
        double right = c.second() + c.numbers;
        canvas.text(c.number, right, row, s.value(), Align.RIGHT);
        canvas.text(c.text, right + Columns.PERCENT * em, row, s.percent(), Align.RIGHT);
        double length = bars.unit * s.part();
        double from = Math.min(bars.zero, bars.zero + length);
        canvas.path().rect(from, row - 0.6 * em, Math.abs(length), 0.55 * em).fill(colour);
        canvas.path().rect(from, row - 0.6 * em, Math.abs(length), 0.55 * em);
        canvas.stroke(p.ink3, 0.8);
        canvas.upright(bars.zero, row - 0.8 * em, row + 0.15 * em, p.ink2, 1);
    }
}
