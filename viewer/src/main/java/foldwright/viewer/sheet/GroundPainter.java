// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

import foldwright.study.Numerals;
import foldwright.viewer.paint.Align;
import foldwright.viewer.paint.Lettering;
import foldwright.viewer.render.View;
import foldwright.viewer.scene.MachineScene;

/** Millimetres along two edges of the grid on the table, counted from the fixed base pins. */
final class GroundPainter {
    private static final double STEP = 0.05;

    private final Pen pen;
    private final View view;

    GroundPainter(Pen pen, View view) {
        this.pen = pen;
        this.view = view;
    }

    /** The front edge counts along the machine, the left edge across it. */
    void draw(MachineScene scene) {
        double[] r = scene.gridReach();
        Lettering look = pen.over(pen.tick(pen.palette.ink2));
        double drop = 1.25 * look.em();
        for (long i = Math.round(r[0] / STEP); i <= Math.round(r[2] / STEP); i++) {
            double x = view.x(i * STEP, r[1], 0);
            double y = view.y(i * STEP, r[1], 0) + drop;
            label(look, i, x, y, Align.CENTRE);
        }
        for (long i = Math.round(r[1] / STEP); i <= Math.round(r[3] / STEP); i++) {
            double x = view.x(r[0], i * STEP, 0) - 0.5 * look.em();
            double y = view.y(r[0], i * STEP, 0) + 0.35 * look.em();
            label(look, i, x, y, Align.RIGHT);
        }
    }

    private void label(Lettering look, long step, double x, double y, Align align) {
        double mm = 1000 * STEP * step;
        String words = Numerals.fixed(mm, 0) + (step == 0 ? "\u00a0mm" : "");
        double w = pen.canvas.width(look, words);
        double left = x - (align == Align.CENTRE ? w / 2 : w);
        boolean inside =
                left > 4
                        && left + w < pen.at.tableRight()
                        && y < pen.at.rulesTop() - 2
                        && y > pen.at.tableTop();
        if (inside && pen.canvas.free(left - 3, y - look.em(), w + 6, 1.2 * look.em())) {
            pen.canvas.text(look, x, y, words, align);
        }
    }
}
