// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

import foldwright.viewer.paint.Align;
import foldwright.viewer.paint.Lettering;

/** What a run shows, its time and speed in words, and below them what starts, steps and speeds. */
final class ClockPainter {
    private final Pen pen;
    private final Layout at;
    private final Hits hits;

    ClockPainter(Pen pen, Hits hits) {
        this.pen = pen;
        at = pen.at;
        this.hits = hits;
    }

    void draw(Playing.Clock clock) {
        double left = at.scaleX() - at.of(112, 84);
        double room = at.plotRight() - left;
        Lettering strong = pen.strong(15, 13, pen.palette.ink);
        Lettering text = pen.text(pen.palette.ink2);
        String first = clock.shown();
        String second = clock.time() + (clock.speed().isEmpty() ? "" : ", " + clock.speed());
        double w = pen.canvas.width(strong, first) + at.of(14, 10);
        boolean one = w + pen.canvas.width(text, second) <= room;
        double y = at.bottom(one ? 858 : 844, one ? 561 : 555);
        pen.canvas.text(strong, left, y, pen.fit(strong, first, room));
        if (one) {
            pen.canvas.text(text, left + w, y, second);
        } else {
            pen.canvas.text(text, left, at.bottom(864, 571), pen.fit(text, second, room));
        }
        if (clock.controls() != Playing.Controls.NONE) {
            controls(clock, left, at.bottom(892, 592));
        }
    }

    private void controls(Playing.Clock clock, double left, double y) {
        double r = at.of(9, 7);
        double pitch = at.of(44, 34);
        double x = left + r;
        stepper(x, y, r, -1);
        grip(Hits.Kind.STEP, 0, x, y, pitch);
        x += pitch;
        if (clock.controls() == Playing.Controls.RUNNING) {
            double w = 0.62 * r;
            pen.canvas.path().rect(x - r, y - r, w, 2 * r).fill(pen.palette.ink);
            pen.canvas.path().rect(x + r - w, y - r, w, 2 * r).fill(pen.palette.ink);
        } else {
            triangle(x, y, 1.15 * r, 1, pen.palette.ink);
        }
        grip(Hits.Kind.PLAY, 0, x, y, pitch);
        x += pitch;
        stepper(x, y, r, 1);
        grip(Hits.Kind.STEP, 1, x, y, pitch);
        x += pitch;
        loop(x, y, r, clock.again());
        grip(Hits.Kind.LOOP, 0, x, y, pitch);
        speed(clock, x + pitch, y);
    }

    private void grip(Hits.Kind kind, int index, double x, double y, double pitch) {
        hits.add(kind, index, x - pitch / 2, y - pitch / 2, pitch, pitch);
    }

    private void triangle(double x, double y, double r, int way, int colour) {
        pen.canvas.path().moveTo(x - 0.8 * r * way, y - r).lineTo(x + r * way, y);
        pen.canvas.lineTo(x - 0.8 * r * way, y + r).closePath().fill(colour);
    }

    /** A triangle against a bar: one row on, or back. */
    private void stepper(double x, double y, double r, int way) {
        triangle(x - 0.2 * r * way, y, 0.75 * r, way, pen.palette.ink2);
        pen.canvas
                .path()
                .rect(x + way * 0.75 * r - 0.13 * r, y - 0.8 * r, 0.26 * r, 1.6 * r)
                .fill(pen.palette.ink2);
    }

    /** Three quarters of a circle with a head: again and again; pale when only once. */
    private void loop(double x, double y, double r, Playing.Again again) {
        boolean on = again == Playing.Again.LOOP;
        int colour = on ? pen.palette.ink : pen.palette.ink3;
        pen.canvas.path().arc(x, y, 0.85 * r, -0.25 * Math.PI, 1.35 * Math.PI);
        pen.canvas.stroke(colour, pen.line(on ? 2.4 : 1.5));
        double hx = x + 0.85 * r * Math.cos(-0.25 * Math.PI);
        double hy = y + 0.85 * r * Math.sin(-0.25 * Math.PI);
        double s = 0.5 * r;
        pen.canvas.path().moveTo(hx - 1.1 * s, hy + 0.1 * s).lineTo(hx + 0.5 * s, hy - 1.1 * s);
        pen.canvas.lineTo(hx + 0.7 * s, hy + 0.9 * s).closePath().fill(colour);
    }

    private void speed(Playing.Clock clock, double left, double y) {
        Lettering look = pen.tick(pen.palette.ink2);
        double base = y + 0.35 * look.em();
        double lw = pen.canvas.text(look, left, base, "1/50");
        double right = at.plotRight();
        double rw = pen.canvas.text(look, right, base, "50×", Align.RIGHT);
        double x = left + lw + at.of(14, 10);
        double w = right - rw - at.of(14, 10) - x;
        pen.canvas.level(x, x + w, y, pen.palette.ink, pen.line(1.5));
        for (int i = 0; i <= 10; i++) {
            double px = x + w * i / 10;
            double h = i == 5 ? at.of(6, 4.5) : at.of(3, 2.2);
            pen.canvas.upright(px, y - h, y + h, pen.palette.ink2, pen.line(1));
        }
        double px = x + w * clock.speedShare();
        double half = at.of(10, 7);
        pen.canvas
                .path()
                .roundRect(px - at.of(3.5, 2.7), y - half, at.of(7, 5.4), 2 * half, at.of(3, 2.4))
                .fill(pen.palette.pine);
        hits.add(Hits.Kind.SPEED, 0, x, y - at.of(16, 11), w, at.of(32, 22));
    }
}
