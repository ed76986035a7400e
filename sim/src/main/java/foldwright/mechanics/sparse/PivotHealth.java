// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.sparse;

/** Measures cancellation in the pivots of a finished factorisation. */
final class PivotHealth {
    private final FrontPlan plan;
    private final int[] diagonalEntry;
    private final double[] sign;
    private final double[] terms;

    PivotHealth(BlockPattern pattern, BlockLayout layout, FrontPlan plan) {
        this.plan = plan;
        int n = plan.dimension;
        diagonalEntry = new int[n];
        sign = new double[n];
        terms = new double[n + 1];
        int[] entryOfRow = new int[n];
        double[] signOfRow = new double[n];
        for (int b = 0; b < pattern.blocks(); b++) {
            int size = pattern.size(b);
            for (int r = 0; r < size; r++) {
                entryOfRow[layout.offset(b) + r] = layout.diagonalEntry(b, r);
                signOfRow[layout.offset(b) + r] = pattern.isJoint(b) ? -1 : 1;
            }
        }
        for (int i = 0; i < n; i++) {
            diagonalEntry[i] = entryOfRow[plan.callerRow[i]];
            sign[i] = signOfRow[plan.callerRow[i]];
        }
    }

    /** Least of {@code sign d_i / (|a_ii| + sum_k L_ik^2 |d_k|)}; {@code 1} for an empty system. */
    double smallestRatio(double[] values, double[] factor, double[] pivots) {
        for (int i = 0; i < plan.dimension; i++) {
            terms[i] = Math.abs(values[diagonalEntry[i]]);
        }
        for (int f = 0; f < plan.fronts(); f++) {
            addTerms(f, factor, pivots);
        }
        double least = 1;
        for (int i = 0; i < plan.dimension; i++) {
            double ratio = sign[i] * pivots[i] / terms[i];
            if (!(ratio >= least)) {
                least = ratio;
            }
            if (Double.isNaN(ratio)) {
                return ratio;
            }
        }
        return least;
    }

    private void addTerms(int f, double[] factor, double[] pivots) {
        int width = plan.width[f];
        int p = plan.pivots[f];
        int rows = p + plan.borderRows[f];
        for (int i = 1; i < rows; i++) {
            int strip = plan.factor[f] + FrontPlan.factorStrip(i / 4, width) + (i & 3);
            int columns = Math.min(i, p);
            double sum = 0;
            for (int k = 0; k < columns; k++) {
                double l = factor[strip + 4 * k];
                sum += l * l * Math.abs(pivots[plan.firstPivot[f] + k]);
            }
            terms[plan.rows[plan.rowStart[f] + i]] += sum;
        }
    }
}
