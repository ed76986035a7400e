// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.sparse;

/**
 * Forward and backward substitution with the factor, tile by tile.
 *
 * <p>Per front: {@code y = L11^-1 x}, border {@code -= L21 y}, then {@code y *= 1 / D}; and back in
 * the opposite order with the transposes.
 */
final class FactorSolve {
    private final FrontPlan plan;
    private final double[] factor;
    private final double[] inverse;
    private final double[] x;
    private final double[] local;

    /**
     * @param x the vector in elimination order, with one more place for the padding rows
     */
    FactorSolve(FrontPlan plan, double[] factor, double[] inverse, double[] x) {
        this.plan = plan;
        this.factor = factor;
        this.inverse = inverse;
        this.x = x;
        int most = 0;
        for (int strips : plan.strips) {
            most = Math.max(most, strips);
        }
        local = new double[4 * most];
    }

    /** Replaces the vector by the solution. */
    void run() {
        int count = plan.fronts();
        for (int f = 0; f < count; f++) {
            forward(f);
        }
        for (int f = count - 1; f >= 0; f--) {
            backward(f);
        }
    }

    private void forward(int front) {
        int strips = plan.strips[front];
        int rowStart = plan.rowStart[front];
        int p = plan.pivots[front];
        gather(rowStart, 4 * strips);
        double[] l = factor;
        double[] t = local;
        int width = plan.width[front];
        int at = plan.factor[front];
        for (int i = 0; i < strips; i++) {
            int full = Math.min(4 * i, width);
            double s0 = t[4 * i];
            double s1 = t[4 * i + 1];
            double s2 = t[4 * i + 2];
            double s3 = t[4 * i + 3];
            for (int k = 0; k < full; k += 4) {
                int m = at + 4 * k;
                double y0 = t[k];
                double y1 = t[k + 1];
                double y2 = t[k + 2];
                double y3 = t[k + 3];
                s0 -= (l[m] * y0 + l[m + 4] * y1) + (l[m + 8] * y2 + l[m + 12] * y3);
                s1 -= (l[m + 1] * y0 + l[m + 5] * y1) + (l[m + 9] * y2 + l[m + 13] * y3);
                s2 -= (l[m + 2] * y0 + l[m + 6] * y1) + (l[m + 10] * y2 + l[m + 14] * y3);
                s3 -= (l[m + 3] * y0 + l[m + 7] * y1) + (l[m + 11] * y2 + l[m + 15] * y3);
            }
            if (4 * i < width) {
                int m = at + 16 * i;
                s3 = s3 - l[m + 11] * s2 + (l[m + 12] * s0 + l[m + 13] * s1);
                s2 = s2 - l[m + 6] * s1 + l[m + 8] * s0;
                s1 -= l[m + 1] * s0;
            }
            t[4 * i] = s0;
            t[4 * i + 1] = s1;
            t[4 * i + 2] = s2;
            t[4 * i + 3] = s3;
            at += 4 * width;
        }
        scatter(rowStart, p, 4 * strips, plan.firstPivot[front]);
    }

    private void backward(int front) {
        int strips = plan.strips[front];
        int rowStart = plan.rowStart[front];
        gather(rowStart, 4 * strips);
        double[] l = factor;
        double[] t = local;
        int width = plan.width[front];
        int start = plan.factor[front];
        for (int k = width - 4; k >= 0; k -= 4) {
            double s0 = t[k];
            double s1 = t[k + 1];
            double s2 = t[k + 2];
            double s3 = t[k + 3];
            int m = start + (k + 4) * width + 4 * k;
            for (int i = k + 4; i < 4 * strips; i += 4) {
                double y0 = t[i];
                double y1 = t[i + 1];
                double y2 = t[i + 2];
                double y3 = t[i + 3];
                s0 -= (l[m] * y0 + l[m + 1] * y1) + (l[m + 2] * y2 + l[m + 3] * y3);
                s1 -= (l[m + 4] * y0 + l[m + 5] * y1) + (l[m + 6] * y2 + l[m + 7] * y3);
                s2 -= (l[m + 8] * y0 + l[m + 9] * y1) + (l[m + 10] * y2 + l[m + 11] * y3);
                s3 -= (l[m + 12] * y0 + l[m + 13] * y1) + (l[m + 14] * y2 + l[m + 15] * y3);
                m += 4 * width;
            }
            m = start + k * width + 4 * k;
            s0 = s0 - l[m + 1] * s1 + (l[m + 8] * s2 + l[m + 12] * s3);
            s1 = s1 - l[m + 6] * s2 + l[m + 13] * s3;
            s2 -= l[m + 11] * s3;
            t[k] = s0;
            t[k + 1] = s1;
            t[k + 2] = s2;
            t[k + 3] = s3;
        }
        System.arraycopy(t, 0, x, plan.firstPivot[front], plan.pivots[front]);
    }

    private void gather(int rowStart, int n) {
        int[] rows = plan.rows;
        for (int i = 0; i < n; i++) {
            local[i] = x[rows[rowStart + i]];
        }
    }

    /** Stores the pivots scaled by 1 / D and the border as it is. */
    private void scatter(int rowStart, int p, int n, int firstPivot) {
        for (int i = 0; i < p; i++) {
            x[firstPivot + i] = local[i] * inverse[firstPivot + i];
        }
        int[] rows = plan.rows;
        for (int i = p; i < n; i++) {
            x[rows[rowStart + i]] = local[i];
        }
    }
}
