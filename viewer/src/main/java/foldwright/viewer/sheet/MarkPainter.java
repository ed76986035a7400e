// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

import foldwright.report.plot.Scale;

/** Moments of a run on its axis: a verdict's mark, or a ring for what merely happens. */
final class MarkPainter {
    private final Pen pen;
    private final Hits hits;

    MarkPainter(Pen pen, Hits hits) {
        this.pen = pen;
        this.hits = hits;
    }

    void draw(Playing run, Scale axis) {
        double x = pen.at.scaleX();
        double size = pen.at.of(15, 11);
        for (int i = 0; i < run.marks().size(); i++) {
            Playing.Mark mark = run.marks().get(i);
            double y = axis.at(axis.held(mark.at()));
            if (mark.verdict().isPresent()) {
                pen.canvas.path().disc(x, y, 0.72 * size).fill(pen.palette.paper);
                pen.mark(mark.verdict().get(), x, y, size);
            } else {
                pen.canvas.path().disc(x, y, 0.3 * size).fill(pen.palette.paper);
                pen.canvas.path().disc(x, y, 0.3 * size).stroke(pen.palette.ink, pen.line(1.5));
            }
            hits.add(Hits.Kind.MARK, i, x - 0.7 * size, y - 0.7 * size, 1.4 * size, 1.4 * size);
        }
    }
}
