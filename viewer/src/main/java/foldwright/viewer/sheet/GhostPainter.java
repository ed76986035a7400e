// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

import foldwright.viewer.render.View;
import java.util.Arrays;

/** Dashed outlines: the convex outline of each part as it is seen. */
final class GhostPainter {
    private final Pen pen;
    private final View view;

    GhostPainter(Pen pen, View view) {
        this.pen = pen;
        this.view = view;
    }

    void draw(Ghost ghost) {
        int colour = pen.palette.dark() ? pen.palette.pine : pen.palette.ink2;
        for (float[] part : ghost.parts()) {
            double[][] hull = hull(part);
            if (hull.length < 3) {
                continue;
            }
            float[] xs = new float[hull.length + 1];
            float[] ys = new float[hull.length + 1];
            for (int i = 0; i <= hull.length; i++) {
                xs[i] = (float) hull[i % hull.length][0];
                ys[i] = (float) hull[i % hull.length][1];
            }
            pen.canvas.path().dashes(xs, ys, xs.length, 5, 4);
            pen.canvas.stroke(pen.palette.paper, pen.line(3.2), 0.7);
            pen.canvas.path().dashes(xs, ys, xs.length, 5, 4);
            pen.canvas.stroke(colour, pen.line(1.4));
        }
    }

    /**
     * Convex outline of the points as seen [px] (A. M. Andrew, Information Processing Letters 9,
     * 1979, 216-219).
     */
    private double[][] hull(float[] points) {
        double[][] p = new double[points.length / 3][];
        for (int i = 0; i < p.length; i++) {
            double x = points[3 * i];
            double y = points[3 * i + 1];
            double z = points[3 * i + 2];
            p[i] = new double[] {view.x(x, y, z), view.y(x, y, z)};
        }
        Arrays.sort(
                p,
                (a, b) -> a[0] != b[0] ? Double.compare(a[0], b[0]) : Double.compare(a[1], b[1]));
        double[][] out = new double[2 * p.length][];
        int n = 0;
        for (double[] q : p) {
            n = add(out, n, 0, q);
        }
        int lower = n - 1;
        for (int i = p.length - 2; i >= 0; i--) {
            n = add(out, n, lower, p[i]);
        }
        return Arrays.copyOf(out, Math.max(0, n - 1));
    }

    private static int add(double[][] out, int count, int first, double[] q) {
        int n = count;
        while (n >= first + 2 && cross(out[n - 2], out[n - 1], q) <= 1e-9) {
            n--;
        }
        out[n] = q;
        return n + 1;
    }

    private static double cross(double[] a, double[] b, double[] c) {
        return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
    }
}
