// SPDX-License-Identifier: Apache-2.0
package foldwright.report.draw;

import foldwright.study.Verdict;

/**
 * The marks of the verdicts: a disc that rests, a lozenge that stands on its point, a square
 * snapped along its diagonal; for what is not known, or not judged, an empty dotted ring.
 */
public final class Marks {
    private Marks() {}

    /** Draws the mark of a verdict centred at a point; {@code size} is about its width. */
    public static void draw(Surface on, Verdict verdict, double x, double y, double size) {
        Colour fill = on.palette().fill(verdict);
        switch (verdict) {
            case HOLDS -> on.fillCircle(x, y, 0.5 * size, Fill.of(fill));
            case TIGHT -> lozenge(on, x, y, 0.62 * size);
            case FAILS -> snapped(on, x, y, 0.5 * size);
            case UNKNOWN, UNJUDGED ->
                    on.strokeCircle(
                            x,
                            y,
                            0.46 * size,
                            Pen.of(fill, Math.max(1, 0.09 * size)).dashed(Dash.DOTTED));
        }
    }

    private static void lozenge(Surface on, double x, double y, double r) {
        Path path = Path.polygon(x, y - r, x + r, y, x, y + r, x - r, y);
        on.fill(path, Fill.of(on.palette().fill(Verdict.TIGHT)));
        on.stroke(path, Pen.of(on.palette().text(Verdict.TIGHT), Math.max(0.9, 0.16 * r)));
    }

    /** Two corners of a square, parted along its rising diagonal and slid along it. */
    private static void snapped(Surface on, double x, double y, double r) {
        double gap = 0.30 * r;
        double slide = 0.10 * r;
        Fill fill = Fill.of(on.palette().fill(Verdict.FAILS));
        double l = x - r + slide;
        double t = y - r - slide;
        on.fill(Path.polygon(l, t, l + 2 * r - gap, t, l, t + 2 * r - gap), fill);
        double right = x + r - slide;
        double b = y + r + slide;
        on.fill(Path.polygon(right, b, right - 2 * r + gap, b, right, b - 2 * r + gap), fill);
    }
}
