// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

import foldwright.report.plot.Scale;

/** Moments of a run on its axis: a verdict's mark, or a ring for what merely happens. */
final class MarkPainter {
    private final Pen pen;

    MarkPainter(Pen pen) {
        this.pen = pen;
    }

    void draw(Playing run, Scale axis) {
        double x = pen.at.scaleX();
        double size = pen.at.of(15, 11);
        // Rings first: where both stand, the verdict is seen.
        for (boolean judged : new boolean[] {false, true}) {
            for (int i = 0; i < run.marks().size(); i++) {
                Playing.Mark mark = run.marks().get(i);
                double y = axis.at(axis.held(mark.at()));
                if (mark.verdict().isPresent() == judged) {
                    mark(mark, x, y, size);
                }
            }
        }
    }

    /** The boxes to click, over those of the scale. */
    void grips(Playing run, Scale axis, Hits hits) {
        double reach = pen.at.of(10, 7.5);
        for (int i = 0; i < run.marks().size(); i++) {
            double y = axis.at(axis.held(run.marks().get(i).at()));
            hits.add(Hits.Kind.MARK, i, pen.at.scaleX() - reach, y - reach, 2 * reach, 2 * reach);
        }
    }

    private void mark(Playing.Mark mark, double x, double y, double size) {
        if (mark.verdict().isPresent()) {
            pen.canvas.path().disc(x, y, 0.72 * size).fill(pen.palette.paper);
            pen.mark(mark.verdict().get(), x, y, size);
        } else {
            pen.canvas.path().disc(x, y, 0.3 * size).fill(pen.palette.paper);
            pen.canvas.path().disc(x, y, 0.3 * size).stroke(pen.palette.ink, pen.line(1.5));
        }
    }
}
