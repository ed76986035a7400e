// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.sparse;

/**
 * Forward and backward substitution with the factor, tile by tile.
 *
 * <p>Per front: {@code y = L11^-1 x}, border {@code -= L21 y}, then {@code y *= 1 / D}; and back in
 * the opposite order with the transposes. Diagonal tiles are applied as their inverses (see {@link
 * FrontElimination}), which shortens the chain of dependent operations from one row to the next. A
 * last strip of one row is done as a row.
 */
final class FactorSolve {
    private final FrontPlan plan;
    private final double[] factor;
    private final double[] inverse;
    private final double[] local;

    FactorSolve(FrontPlan plan, double[] factor, double[] inverse) {
        this.plan = plan;
        this.factor = factor;
        this.inverse = inverse;
        int most = 0;
        for (int strips : plan.strips) {
            most = Math.max(most, strips);
        }
        local = new double[FrontPlan.TILE * most];
    }

    /** Replaces a right-hand side in the caller's order by the solution. */
    void run(double[] x) {
        for (int f = 0; f < plan.fronts(); f++) {
            forward(f, x);
        }
        backward(x);
    }

    /** One front's share of the forward substitution; fronts in their order, each once. */
    void forward(int f, double[] x) {
        gather(f, x);
        forward(plan.factor[f], plan.width[f], plan.pivots[f] + plan.borderRows[f]);
        scatterScaled(f, x);
    }

    /** The backward substitution, after all fronts have gone forward. */
    void backward(double[] x) {
        for (int f = plan.fronts() - 1; f >= 0; f--) {
            gather(f, x);
            backward(plan.factor[f], plan.width[f], plan.pivots[f] + plan.borderRows[f]);
            scatterPivots(f, x);
        }
    }

    private void forward(int start, int width, int n) {
        double[] l = factor;
        double[] t = local;
        int at = start;
        int whole = (n & 3) == 1 && n > width ? n - 1 : n;
        for (int i = 0; i < whole; i += 4) {
            int end = Math.min(i, width);
            double s0 = t[i];
            double s1 = t[i + 1];
            double s2 = t[i + 2];
            double s3 = t[i + 3];
            for (int k = 0; k < end; k += 4) {
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
            if (i < width) {
                int m = at + 4 * i;
                s3 = s3 - l[m + 11] * s2 + (l[m + 12] * s0 + l[m + 13] * s1);
                s2 = s2 - l[m + 6] * s1 + l[m + 8] * s0;
                s1 -= l[m + 1] * s0;
            }
            t[i] = s0;
            t[i + 1] = s1;
            t[i + 2] = s2;
            t[i + 3] = s3;
            at += 4 * Math.min(i + 4, width);
        }
        if (whole < n) {
            double sum = t[whole];
            for (int k = 0; k < width; k += 4) {
                int m = at + 4 * k;
                sum -=
                        (l[m] * t[k] + l[m + 4] * t[k + 1])
                                + (l[m + 8] * t[k + 2] + l[m + 12] * t[k + 3]);
            }
            t[whole] = sum;
        }
    }

    private void backward(int start, int width, int n) {
        double[] l = factor;
        double[] t = local;
        int whole = (n & 3) == 1 && n > width ? n - 1 : n;
        for (int k = width - 4; k >= 0; k -= 4) {
            double s0 = t[k];
            double s1 = t[k + 1];
            double s2 = t[k + 2];
            double s3 = t[k + 3];
            int m = start + FrontPlan.factorStrip(k / 4 + 1, width) + 4 * k;
            for (int i = k + 4; i < whole; i += 4) {
                double y0 = t[i];
                double y1 = t[i + 1];
                double y2 = t[i + 2];
                double y3 = t[i + 3];
                s0 -= (l[m] * y0 + l[m + 1] * y1) + (l[m + 2] * y2 + l[m + 3] * y3);
                s1 -= (l[m + 4] * y0 + l[m + 5] * y1) + (l[m + 6] * y2 + l[m + 7] * y3);
                s2 -= (l[m + 8] * y0 + l[m + 9] * y1) + (l[m + 10] * y2 + l[m + 11] * y3);
                s3 -= (l[m + 12] * y0 + l[m + 13] * y1) + (l[m + 14] * y2 + l[m + 15] * y3);
                m += 4 * Math.min(i + 4, width);
            }
            if (whole < n) {
                double y = t[whole];
                s0 -= l[m] * y;
                s1 -= l[m + 4] * y;
                s2 -= l[m + 8] * y;
                s3 -= l[m + 12] * y;
            }
            m = start + FrontPlan.factorStrip(k / 4, width) + 4 * k;
            s0 = s0 - l[m + 1] * s1 + (l[m + 8] * s2 + l[m + 12] * s3);
            s1 = s1 - l[m + 6] * s2 + l[m + 13] * s3;
            s2 -= l[m + 11] * s3;
            t[k] = s0;
            t[k + 1] = s1;
            t[k + 2] = s2;
            t[k + 3] = s3;
        }
    }

    /** Rows of a front, padding zero. */
    private void gather(int f, double[] x) {
        int[] rows = plan.callerRows;
        int from = plan.rowStart[f];
        int n = plan.pivots[f] + plan.borderRows[f];
        double[] t = local;
        for (int i = 0; i < n; i++) {
            t[i] = x[rows[from + i]];
        }
        for (int i = n; (i & 3) != 0; i++) {
            t[i] = 0;
        }
    }

    /** Stores the pivots scaled by 1 / D and the border as it is. */
    private void scatterScaled(int f, double[] x) {
        int[] rows = plan.callerRows;
        int from = plan.rowStart[f];
        int p = plan.pivots[f];
        int n = p + plan.borderRows[f];
        int first = plan.firstPivot[f];
        double[] t = local;
        for (int i = 0; i < p; i++) {
            x[rows[from + i]] = t[i] * inverse[first + i];
        }
        for (int i = p; i < n; i++) {
            x[rows[from + i]] = t[i];
        }
    }

    private void scatterPivots(int f, double[] x) {
        int[] rows = plan.callerRows;
        int from = plan.rowStart[f];
        int p = plan.pivots[f];
        for (int i = 0; i < p; i++) {
            x[rows[from + i]] = local[i];
        }
    }
}
