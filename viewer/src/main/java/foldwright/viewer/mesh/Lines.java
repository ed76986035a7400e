// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.mesh;

import java.util.Arrays;

/** Lines without faces, lying level: outlines and grids on the table. */
public final class Lines {
    private Lines() {}

    /**
     * A square grid lying at a height.
     *
     * @param reach least x and y, greatest x and y [m]
     * @param step between lines [m]
     * @param without lines whose number from zero is a multiple of this are left out; 0: none
     */
    public static Mesh grid(double[] reach, double z, double step, int without) {
        float[] out = new float[Mesh.EDGE_FLOATS * 16];
        int n = 0;
        for (int axis = 0; axis < 2; axis++) {
            long last = Math.round(reach[axis + 2] / step);
            for (long i = Math.round(reach[axis] / step); i <= last; i++) {
                if (without > 0 && i % without == 0) {
                    continue;
                }
                double at = i * step;
                double[] a = axis == 0 ? new double[] {at, reach[1]} : new double[] {reach[0], at};
                double[] b = axis == 0 ? new double[] {at, reach[3]} : new double[] {reach[2], at};
                if (n + Mesh.EDGE_FLOATS > out.length) {
                    out = Arrays.copyOf(out, out.length * 2);
                }
                n = dash(out, n, a, b, 0, 1, z);
            }
        }
        return new Mesh(new float[0], new int[0], Arrays.copyOf(out, n), null);
    }

    /**
     * Dashes of a closed line (x, y pairs [m]) lying at a height, as lines without faces: drawn,
     * bare, drawn, bare... [m].
     */
    public static Mesh dashes(double[][] line, double z, double... pattern) {
        float[] out = new float[Mesh.EDGE_FLOATS * 16];
        int n = 0;
        int piece = 0;
        double left = pattern[0];
        for (int i = 0; i < line.length; i++) {
            double[] a = line[i];
            double[] b = line[(i + 1) % line.length];
            double len = Math.hypot(b[0] - a[0], b[1] - a[1]);
            double gone = 0;
            while (gone < len) {
                double step = Math.min(left, len - gone);
                if (piece % 2 == 0) {
                    if (n + Mesh.EDGE_FLOATS > out.length) {
                        out = Arrays.copyOf(out, out.length * 2);
                    }
                    n = dash(out, n, a, b, gone / len, (gone + step) / len, z);
                }
                gone += step;
                left -= step;
                if (left <= 1e-9) {
                    piece = (piece + 1) % pattern.length;
                    left = pattern[piece];
                }
            }
        }
        return new Mesh(new float[0], new int[0], Arrays.copyOf(out, n), null);
    }

    /** Faces turned up and down: a silhouette from every side. */
    private static int dash(
            float[] out, int n, double[] a, double[] b, double from, double to, double z) {
        double[] ends = {from, to};
        for (int k = 0; k < 2; k++) {
            out[n + 3 * k] = (float) (a[0] + ends[k] * (b[0] - a[0]));
            out[n + 3 * k + 1] = (float) (a[1] + ends[k] * (b[1] - a[1]));
            out[n + 3 * k + 2] = (float) z;
        }
        out[n + 8] = 1;
        out[n + 11] = -1;
        return n + Mesh.EDGE_FLOATS;
    }
}
