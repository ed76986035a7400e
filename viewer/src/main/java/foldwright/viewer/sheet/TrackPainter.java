// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

import foldwright.viewer.paint.Align;
import foldwright.viewer.paint.Lettering;
import java.util.List;
import org.joml.Matrix4x3f;
import org.joml.Vector3f;

/**
 * The track of the tool on the table: where it is sent as a thin line, where it goes as a thick one
 * in the ink of its error, what lies between filled; errors drawn larger.
 */
final class TrackPainter {
    private static final int INKS = 9;

    /** Ribs between command and track stand this far apart [px]. */
    private static final double RIB = 1.4;

    private final Pen pen;
    private final Layout at;
    private final Playing.Track track;
    private final SheetPainter.Scene scene;
    private final Matrix4x3f frame;
    private final Vector3f point = new Vector3f();
    private final float[] sentX;
    private final float[] sentY;
    private final float[] goneX;
    private final float[] goneY;
    private final int[] ink;

    TrackPainter(Pen pen, SheetPainter.Scene scene, Playing.Track track) {
        this.pen = pen;
        at = pen.at;
        this.scene = scene;
        this.track = track;
        frame = scene.machine().gantry().orElseThrow().frame(scene.machine().pose());
        int n = track.x().length;
        sentX = new float[n];
        sentY = new float[n];
        goneX = new float[n];
        goneY = new float[n];
        ink = new int[n];
        for (int i = 0; i < n; i++) {
            double ex = track.errorX()[i];
            double ey = track.errorY()[i];
            double f = track.larger();
            double[] sent = seen(track.x()[i], track.y()[i]);
            double[] gone = seen(track.x()[i] + f * ex, track.y()[i] + f * ey);
            sentX[i] = (float) sent[0];
            sentY[i] = (float) sent[1];
            goneX[i] = (float) gone[0];
            goneY[i] = (float) gone[1];
            ink[i] = (int) Math.min(INKS - 1, Math.hypot(ex, ey) / track.end() * INKS);
        }
    }

    /** A place of the gantry's frame in the picture [px]. */
    private double[] seen(double x, double y) {
        frame.transformPosition(point.set((float) x, (float) y, (float) track.z()));
        return new double[] {
            scene.view().x(point.x, point.y, point.z), scene.view().y(point.x, point.y, point.z)
        };
    }

    void draw(List<Playing.Corner> corners) {
        ribs();
        line(sentX, sentY);
        pen.canvas.stroke(pen.palette.ink, pen.line(1));
        gone();
        numbers(corners);
    }

    private int colour(int step) {
        return pen.palette.load((step + 0.5) / INKS);
    }

    private void line(float[] xs, float[] ys) {
        pen.canvas.path();
        for (int i = 0; i < xs.length; i++) {
            if (i == 0) {
                pen.canvas.moveTo(xs[0], ys[0]);
            } else {
                pen.canvas.lineTo(xs[i], ys[i]);
            }
        }
    }

    /** What lies between command and track: ribs close together, one stroke an ink. */
    private void ribs() {
        for (int step = 0; step < INKS; step++) {
            pen.canvas.path();
            int count = 0;
            double since = RIB;
            for (int i = 1; i < ink.length; i++) {
                since +=
                        Math.max(
                                Math.hypot(sentX[i] - sentX[i - 1], sentY[i] - sentY[i - 1]),
                                Math.hypot(goneX[i] - goneX[i - 1], goneY[i] - goneY[i - 1]));
                if (since < RIB) {
                    continue;
                }
                since = 0;
                double length = Math.hypot(goneX[i] - sentX[i], goneY[i] - sentY[i]);
                if (ink[i] == step && length > 1) {
                    pen.canvas.moveTo(sentX[i], sentY[i]).lineTo(goneX[i], goneY[i]);
                    count++;
                }
            }
            if (count > 0) {
                pen.canvas.stroke(colour(step), 1.5, 0.85);
            }
        }
    }

    private void gone() {
        int from = 0;
        for (int i = 1; i <= ink.length; i++) {
            if (i < ink.length && ink[i] == ink[from]) {
                continue;
            }
            int to = Math.min(i, ink.length - 1);
            pen.canvas.path().moveTo(goneX[from], goneY[from]);
            for (int k = from + 1; k <= to; k++) {
                pen.canvas.lineTo(goneX[k], goneY[k]);
            }
            pen.canvas.strokeRound(colour(Math.max(3, ink[from])), pen.line(2));
            from = i;
        }
    }

    private void numbers(List<Playing.Corner> corners) {
        Lettering look = pen.over(pen.strong(14, 13, pen.palette.ink));
        double[][] placed = new double[corners.size()][];
        for (Playing.Corner corner : corners) {
            double[] p = seen(corner.x(), corner.y());
            pen.canvas.path().disc(p[0], p[1], at.of(3.4, 2.6)).fill(pen.palette.paper);
            pen.canvas
                    .path()
                    .disc(p[0], p[1], at.of(3.4, 2.6))
                    .stroke(pen.palette.ink, pen.line(1.5));
            double x = p[0] + at.of(8, 6);
            double y = p[1] - at.of(7, 5);
            boolean free = true;
            for (double[] other : placed) {
                free &=
                        other == null
                                || Math.abs(other[0] - x) > 1.7 * look.em()
                                || Math.abs(other[1] - y) > 1.3 * look.em();
            }
            if (free) {
                pen.canvas.text(look, x, y, Integer.toString(corner.number()), Align.LEFT);
                placed[corner.number() - 1] = new double[] {x, y};
            }
        }
    }

    /** Where the tool is in the picture now [px]. */
    double[] tool() {
        int i = track.now();
        return new double[] {goneX[i], goneY[i]};
    }

    void mark(double[] tool) {
        pen.canvas.path().disc(tool[0], tool[1], at.of(6, 4.6)).fill(pen.palette.paper);
        pen.canvas
                .path()
                .disc(tool[0], tool[1], at.of(6, 4.6))
                .stroke(pen.palette.pine, pen.line(2.4));
    }
}
