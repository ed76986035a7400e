// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import java.util.ArrayList;
import java.util.List;

/**
 * Pairs of axles that are mirror images of each other, as their sum and their difference. In these
 * a mirrored problem differs by signs alone, and elimination gives the mirrored solution to the
 * last bit; in the axles themselves it would change the order of sums.
 */
final class MirrorAxles {
    private record Pair(int a, int b, double sense) {}

    private final List<Pair> pairs = new ArrayList<>();
    private final boolean[] paired;

    /**
     * Finds the pairs.
     *
     * @param free axles that are coordinates, in order
     * @param first coordinate of the first of them
     */
    MirrorAxles(Rotor[] rotors, int[] free, int first) {
        paired = new boolean[first + free.length];
        for (int i = 0; i < free.length; i++) {
            Rotor a = rotors[free[i]];
            for (int j = i + 1; j < free.length; j++) {
                if (rotors[free[j]] == a.image) {
                    pairs.add(new Pair(first + i, first + j, a.imageSense));
                    paired[first + i] = true;
                    paired[first + j] = true;
                }
            }
        }
    }

    /** Turns a symmetric problem into sums and differences, in place. */
    void halves(double[][] k, double[] right) {
        for (Pair p : pairs) {
            double aa = k[p.a][p.a];
            double bb = k[p.b][p.b];
            double ab = 2 * p.sense * k[p.a][p.b];
            for (int r = 0; r < k.length; r++) {
                double a = k[r][p.a];
                double b = p.sense * k[r][p.b];
                set(k, r, p.a, a + b);
                set(k, r, p.b, a - b);
            }
            k[p.a][p.a] = (aa + bb) + ab;
            k[p.b][p.b] = (aa + bb) - ab;
            set(k, p.a, p.b, aa - bb);
            double a = right[p.a];
            double b = p.sense * right[p.b];
            right[p.a] = a + b;
            right[p.b] = a - b;
        }
    }

    private static void set(double[][] k, int r, int c, double value) {
        k[r][c] = value;
        k[c][r] = value;
    }

    /** Turns a solution back into axles, in place. */
    void wholes(double[] x) {
        for (Pair p : pairs) {
            double sum = x[p.a];
            double difference = x[p.b];
            x[p.a] = sum + difference;
            x[p.b] = p.sense * (sum - difference);
        }
    }

    /** Scalar product, pairs added among themselves first. */
    double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += paired[i] ? 0 : a[i] * b[i];
        }
        for (Pair p : pairs) {
            sum += a[p.a] * b[p.a] + a[p.b] * b[p.b];
        }
        return sum;
    }
}
