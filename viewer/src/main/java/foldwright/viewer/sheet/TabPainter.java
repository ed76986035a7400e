// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

import foldwright.viewer.paint.Align;
import foldwright.viewer.paint.Lettering;

/** The tag on an upright scale that is dragged, with a caption below or above it. */
final class TabPainter {
    private final Pen pen;
    private final Layout at;
    private final double x;
    private final double y;
    private final double bottom;

    /**
     * A tag.
     *
     * @param y its place [px]
     * @param bottom lower end of the scale [px]
     */
    TabPainter(Pen pen, double y, double bottom) {
        this.pen = pen;
        at = pen.at;
        x = at.scaleX();
        this.y = y;
        this.bottom = bottom;
    }

    void draw(String words, String caption) {
        Lettering look = pen.strong(18, 13.5, pen.palette.sheet);
        double point = at.of(12, 8);
        double w = pen.canvas.width(look, words) + at.of(20, 14);
        double h = at.of(34, 24);
        double left = x - point - w;
        pen.canvas.path().moveTo(left, y - h / 2).lineTo(x - point, y - h / 2).lineTo(x, y);
        pen.canvas
                .lineTo(x - point, y + h / 2)
                .lineTo(left, y + h / 2)
                .closePath()
                .fill(pen.palette.pine);
        pen.canvas.text(look, left + at.of(10, 7), y + 0.35 * look.em(), words);
        pen.canvas.path().disc(x, y, at.of(4.5, 3.4)).fill(pen.palette.paper);
        pen.canvas.path().disc(x, y, at.of(4.5, 3.4)).stroke(pen.palette.pine, pen.line(1.6));
        Lettering small = pen.over(pen.caption(pen.palette.ink2));
        pen.canvas.text(small, x - at.of(16, 10), captionY(), caption, Align.RIGHT);
    }

    private double captionY() {
        boolean low = y + at.of(38, 28) > bottom + at.of(22, 18);
        return low ? y - at.of(24, 17) : y + at.of(38, 28);
    }

    /** Whether a label at this height would run into the tag or its caption. */
    boolean covers(double labelY) {
        double em = at.type(13.5, 13);
        double top = Math.min(y - at.of(17, 12), captionY() - em) - 0.35 * em;
        double low = Math.max(y + at.of(17, 12), captionY() + 0.3 * em) + 0.35 * em;
        return labelY > top - 0.3 * em && labelY < low + 0.3 * em;
    }
}
