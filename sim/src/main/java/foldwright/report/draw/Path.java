// SPDX-License-Identifier: Apache-2.0
package foldwright.report.draw;

import java.util.Arrays;

/** Straight-lined contours, each open or closed. Built point by point, then only read. */
public final class Path {
    private double[] xy;
    private int size;
    private int[] starts = new int[4];
    private boolean[] closed = new boolean[4];
    private int contours;

    /** Nothing yet. */
    public Path() {
        this(32);
    }

    private Path(int numbers) {
        xy = new double[numbers];
    }

    /** One open contour through the points x0, y0, x1, y1, ... */
    public static Path line(double... points) {
        Path path = new Path(Math.max(2, points.length));
        for (int i = 0; i + 1 < points.length; i += 2) {
            path.point(points[i], points[i + 1]);
        }
        return path;
    }

    /** One closed contour through the points. */
    public static Path polygon(double... points) {
        return line(points).close();
    }

    public static Path box(Box b) {
        return polygon(b.x(), b.y(), b.right(), b.y(), b.right(), b.bottom(), b.x(), b.bottom());
    }

    /** Begins a new contour at the point. */
    public Path start(double x, double y) {
        if (contours == starts.length) {
            starts = Arrays.copyOf(starts, 2 * contours);
            closed = Arrays.copyOf(closed, 2 * contours);
        }
        starts[contours++] = size;
        return add(x, y);
    }

    /** Adds a point; the first begins a contour. */
    public Path point(double x, double y) {
        return contours == 0 || closed[contours - 1] ? start(x, y) : add(x, y);
    }

    /** Closes the contour begun last. */
    public Path close() {
        if (contours > 0) {
            closed[contours - 1] = true;
        }
        return this;
    }

    private Path add(double x, double y) {
        if (2 * size + 2 > xy.length) {
            xy = Arrays.copyOf(xy, 2 * xy.length);
        }
        xy[2 * size] = x;
        xy[2 * size + 1] = y;
        size++;
        return this;
    }

    public int contours() {
        return contours;
    }

    /** Index of the first point of a contour. */
    public int from(int contour) {
        return starts[contour];
    }

    /** Index after the last point of a contour. */
    public int to(int contour) {
        return contour + 1 < contours ? starts[contour + 1] : size;
    }

    public boolean isClosed(int contour) {
        return closed[contour];
    }

    public double x(int point) {
        return xy[2 * point];
    }

    public double y(int point) {
        return xy[2 * point + 1];
    }
}
