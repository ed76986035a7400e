// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.scene;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** The closed line of a belt round the outside of some circles: the convex hull of the circles. */
final class BeltLine {
    private static final int PER_CIRCLE = 48;

    private BeltLine() {}

    /** Points (x, y pairs), counter-clockwise, of a belt round circles (x, y, radius) [m]. */
    static float[] round(List<double[]> circles) {
        List<double[]> points = new ArrayList<>();
        for (double[] c : circles) {
            for (int i = 0; i < PER_CIRCLE; i++) {
                double a = 2 * Math.PI * i / PER_CIRCLE;
                points.add(new double[] {c[0] + c[2] * Math.cos(a), c[1] + c[2] * Math.sin(a)});
            }
        }
        points.sort(Comparator.<double[]>comparingDouble(p -> p[0]).thenComparingDouble(p -> p[1]));
        List<double[]> lower = chain(points);
        java.util.Collections.reverse(points);
        List<double[]> upper = chain(points);
        lower.remove(lower.size() - 1);
        upper.remove(upper.size() - 1);
        lower.addAll(upper);
        float[] out = new float[lower.size() * 2];
        for (int i = 0; i < lower.size(); i++) {
            out[2 * i] = (float) lower.get(i)[0];
            out[2 * i + 1] = (float) lower.get(i)[1];
        }
        return out;
    }

    /**
     * One half of Andrew's monotone chain (A. M. Andrew, Information Processing Letters 9, 1979,
     * 216-219).
     */
    private static List<double[]> chain(List<double[]> sorted) {
        List<double[]> out = new ArrayList<>();
        for (double[] p : sorted) {
            while (out.size() >= 2
                    && !turnsLeft(out.get(out.size() - 2), out.get(out.size() - 1), p)) {
                out.remove(out.size() - 1);
            }
            out.add(p);
        }
        return out;
    }

    private static boolean turnsLeft(double[] a, double[] b, double[] c) {
        return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]) > 1e-12;
    }
}
