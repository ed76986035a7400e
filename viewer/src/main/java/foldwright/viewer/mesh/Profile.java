// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.mesh;

/** Closed lines in a plane as x, y pairs [m], counter-clockwise. */
final class Profile {
    private static final double ROUND = Math.cos(Math.toRadians(35));
    private static final int QUARTER = 5;

    private Profile() {}

    /** Points of a circle, counter-clockwise. */
    static float[] circle(double radius, int sides) {
        float[] out = new float[sides * 2];
        for (int i = 0; i < sides; i++) {
            double a = 2 * Math.PI * i / sides;
            out[2 * i] = (float) (radius * Math.cos(a));
            out[2 * i + 1] = (float) (radius * Math.sin(a));
        }
        return out;
    }

    static float[] roundedRectangle(double x0, double y0, double x1, double y1, double radius) {
        double r = Math.max(1e-5, Math.min(radius, Math.min(x1 - x0, y1 - y0) / 2 - 1e-5));
        double[] cx = {x1 - r, x0 + r, x0 + r, x1 - r};
        double[] cy = {y1 - r, y1 - r, y0 + r, y0 + r};
        float[] out = new float[4 * (QUARTER + 1) * 2];
        int n = 0;
        for (int corner = 0; corner < 4; corner++) {
            for (int i = 0; i <= QUARTER; i++) {
                double a = Math.PI / 2 * (corner + (double) i / QUARTER);
                out[n++] = (float) (cx[corner] + r * Math.cos(a));
                out[n++] = (float) (cy[corner] + r * Math.sin(a));
            }
        }
        return out;
    }

    /** Normal of the wall from a point to the next; {@code out} is -1 for a hole. */
    static float[] wallNormal(float[] p, int i, int out) {
        int n = p.length / 2;
        int j = (i + 1) % n;
        float dx = p[2 * j] - p[2 * i];
        float dy = p[2 * j + 1] - p[2 * i + 1];
        float len = (float) Math.hypot(dx, dy);
        return new float[] {out * dy / len, -out * dx / len};
    }

    /** The common normal where two walls meet softly, else that of the wall itself. */
    static float[] meet(float[] a, float[] b, float[] own) {
        if (a[0] * b[0] + a[1] * b[1] < ROUND) {
            return own;
        }
        float x = a[0] + b[0];
        float y = a[1] + b[1];
        float len = (float) Math.hypot(x, y);
        return new float[] {x / len, y / len};
    }
}
