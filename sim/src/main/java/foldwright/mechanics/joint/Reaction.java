// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.joint;

/** What the multipliers of a row block do to one of its bodies. */
public final class Reaction {
    private Reaction() {}

    /**
     * Adds G' lambda to six loads.
     *
     * @param size rows of the block
     * @param lambda multipliers, the block's from {@code row} on
     * @param g Jacobians, that of the body from {@code at} on, row-major
     * @param load six numbers a body, those of the body from {@code to} on
     */
    public static void add(
            int size, double[] lambda, int row, double[] g, int at, double[] load, int to) {
        double f0 = 0;
        double f1 = 0;
        double f2 = 0;
        double f3 = 0;
        double f4 = 0;
        double f5 = 0;
        int j = at;
        for (int i = row; i < row + size; i++) {
            double l = lambda[i];
            f0 += l * g[j];
            f1 += l * g[j + 1];
            f2 += l * g[j + 2];
            f3 += l * g[j + 3];
            f4 += l * g[j + 4];
            f5 += l * g[j + 5];
            j += 6;
        }
        load[to] += f0;
        load[to + 1] += f1;
        load[to + 2] += f2;
        load[to + 3] += f3;
        load[to + 4] += f4;
        load[to + 5] += f5;
    }
}
