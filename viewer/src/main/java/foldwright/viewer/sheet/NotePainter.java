// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

import foldwright.viewer.paint.Align;
import foldwright.viewer.paint.Lettering;
import java.util.List;

/** Lines in italics at the foot of the table, beside that of the scale. */
final class NotePainter {
    private static final double PITCH = 1.3;
    private static final int MOST_LINES = 3;

    private final Pen pen;

    NotePainter(Pen pen) {
        this.pen = pen;
    }

    /** Draws lines that find room, the first at the bottom or over what stands there. */
    void draw(List<String> lines) {
        Layout at = pen.at;
        Lettering note = pen.over(pen.italic(pen.palette.ink2));
        double right = at.scaleX() - at.of(130, 98);
        double y = at.little ? at.tableBottom() - 2 : at.bottom(898, 606);
        double top = y - MOST_LINES * PITCH * note.em();
        for (String line : lines) {
            double w = pen.canvas.width(note, line);
            if (w > right - at.tableLeft()) {
                continue;
            }
            while (y > top && !pen.canvas.free(right - w, y - note.em(), w, PITCH * note.em())) {
                y -= PITCH * note.em();
            }
            if (y > top) {
                pen.canvas.text(note, right, y, line, Align.RIGHT);
                y -= PITCH * note.em();
            }
        }
    }
}
