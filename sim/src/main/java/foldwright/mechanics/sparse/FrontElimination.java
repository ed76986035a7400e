// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.sparse;

/**
 * Dense elimination of one front: the inner loops of the factorisation.
 *
 * <p>With {@code F = L D L'} and {@code W = L D}, tile column {@code J} of the front becomes
 *
 * <pre>
 *     A(I,J) - sum over pivots k left of J of L(I,k) W(J,k)'
 * </pre>
 *
 * in registers, tile by tile; then the pivots that lie inside {@code J} are eliminated in the same
 * registers with six coefficients held in locals. Each tile is loaded and stored once. Pivot
 * columns of the front end up holding {@code W}, the factor holds {@code L}, all other columns the
 * update for the parent. Where the pivots end inside a tile the coefficients of the remaining
 * columns are zero, which makes the same code right for both kinds of column.
 */
final class FrontElimination {
    private final double[] front;
    private final double[] factor;
    private final double[] pivots;
    private final double[] inverse;

    /**
     * @param front arena of the fronts, see {@link FrontPlan}
     * @param factor pivot columns of {@code L}
     * @param pivots receives {@code D} in elimination order, with room for three more at the end
     * @param inverse receives {@code 1 / D} likewise
     */
    FrontElimination(double[] front, double[] factor, double[] pivots, double[] inverse) {
        this.front = front;
        this.factor = factor;
        this.pivots = pivots;
        this.inverse = inverse;
    }

    /** Eliminates the {@code p} leading rows of a front of {@code strips} strips. */
    void run(int frontStart, int factorStart, int strips, int p, int firstPivot) {
        int width = (p + 3) & ~3;
        for (int tile = 0; tile < strips; tile++) {
            if (4 * tile < p) {
                pivotColumn(frontStart, factorStart, strips, p, firstPivot, tile);
            } else {
                updateColumn(frontStart, factorStart, strips, p, width, tile);
            }
        }
    }

    private void pivotColumn(int fs, int ls, int strips, int p, int firstPivot, int tile) {
        double[] f = front;
        double[] l = factor;
        int width = (p + 3) & ~3;
        int stripJ = fs + 8 * tile * (tile + 1);
        int lJ = ls + 4 * tile * width;
        int c = 4 * tile;
        int t = stripJ + 4 * c;
        double a00 = f[t];
        double a10 = f[t + 1];
        double a20 = f[t + 2];
        double a30 = f[t + 3];
        double a11 = f[t + 5];
        double a21 = f[t + 6];
        double a31 = f[t + 7];
        double a22 = f[t + 10];
        double a32 = f[t + 11];
        double a33 = f[t + 15];
        for (int k = 0; k < 4 * c; k += 4) {
            double w0 = f[stripJ + k];
            double w1 = f[stripJ + k + 1];
            double w2 = f[stripJ + k + 2];
            double w3 = f[stripJ + k + 3];
            double l0 = l[lJ + k];
            double l1 = l[lJ + k + 1];
            double l2 = l[lJ + k + 2];
            double l3 = l[lJ + k + 3];
            a00 -= l0 * w0;
            a10 -= l1 * w0;
            a20 -= l2 * w0;
            a30 -= l3 * w0;
            a11 -= l1 * w1;
            a21 -= l2 * w1;
            a31 -= l3 * w1;
            a22 -= l2 * w2;
            a32 -= l3 * w2;
            a33 -= l3 * w3;
        }
        int own = p - c;
        double i0 = 1 / a00;
        double d1 = a11 - a10 * a10 * i0;
        double w21 = a21 - a10 * a20 * i0;
        double w31 = a31 - a10 * a30 * i0;
        double i1 = own > 1 ? 1 / d1 : 0;
        double b22 = a22 - a20 * a20 * i0;
        double b32 = a32 - a20 * a30 * i0;
        double b33 = a33 - a30 * a30 * i0;
        double d2 = b22 - w21 * w21 * i1;
        double w32 = b32 - w21 * w31 * i1;
        double i2 = own > 2 ? 1 / d2 : 0;
        double d3 = b33 - w31 * w31 * i1 - w32 * w32 * i2;
        double i3 = own > 3 ? 1 / d3 : 0;
        f[t + 5] = d1;
        f[t + 6] = w21;
        f[t + 7] = w31;
        f[t + 10] = d2;
        f[t + 11] = w32;
        f[t + 15] = d3;
        int at = firstPivot + c;
        pivots[at] = a00;
        pivots[at + 1] = d1;
        pivots[at + 2] = d2;
        pivots[at + 3] = d3;
        inverse[at] = i0;
        inverse[at + 1] = i1;
        inverse[at + 2] = i2;
        inverse[at + 3] = i3;
        double l10 = a10 * i0;
        double l20 = a20 * i0;
        double l30 = a30 * i0;
        double l21 = w21 * i1;
        double l31 = w31 * i1;
        double l32 = w32 * i2;
        int m = lJ + 4 * c;
        l[m + 1] = l10;
        l[m + 2] = l20;
        l[m + 3] = l30;
        l[m + 6] = l21;
        l[m + 7] = l31;
        l[m + 11] = l32;
        for (int i = tile + 1; i < strips; i++) {
            int strip = fs + 8 * i * (i + 1);
            int lI = ls + 4 * i * width;
            int u = strip + 4 * c;
            double c00 = f[u];
            double c10 = f[u + 1];
            double c20 = f[u + 2];
            double c30 = f[u + 3];
            double c01 = f[u + 4];
            double c11 = f[u + 5];
            double c21 = f[u + 6];
            double c31 = f[u + 7];
            double c02 = f[u + 8];
            double c12 = f[u + 9];
            double c22 = f[u + 10];
            double c32 = f[u + 11];
            double c03 = f[u + 12];
            double c13 = f[u + 13];
            double c23 = f[u + 14];
            double c33 = f[u + 15];
            for (int k = 0; k < 4 * c; k += 4) {
                double w0 = f[stripJ + k];
                double w1 = f[stripJ + k + 1];
                double w2 = f[stripJ + k + 2];
                double w3 = f[stripJ + k + 3];
                double x0 = l[lI + k];
                double x1 = l[lI + k + 1];
                double x2 = l[lI + k + 2];
                double x3 = l[lI + k + 3];
                c00 -= x0 * w0;
                c10 -= x1 * w0;
                c20 -= x2 * w0;
                c30 -= x3 * w0;
                c01 -= x0 * w1;
                c11 -= x1 * w1;
                c21 -= x2 * w1;
                c31 -= x3 * w1;
                c02 -= x0 * w2;
                c12 -= x1 * w2;
                c22 -= x2 * w2;
                c32 -= x3 * w2;
                c03 -= x0 * w3;
                c13 -= x1 * w3;
                c23 -= x2 * w3;
                c33 -= x3 * w3;
            }
            c01 -= c00 * l10;
            c11 -= c10 * l10;
            c21 -= c20 * l10;
            c31 -= c30 * l10;
            c02 -= c00 * l20 + c01 * l21;
            c12 -= c10 * l20 + c11 * l21;
            c22 -= c20 * l20 + c21 * l21;
            c32 -= c30 * l20 + c31 * l21;
            c03 -= c00 * l30 + c01 * l31 + c02 * l32;
            c13 -= c10 * l30 + c11 * l31 + c12 * l32;
            c23 -= c20 * l30 + c21 * l31 + c22 * l32;
            c33 -= c30 * l30 + c31 * l31 + c32 * l32;
            f[u] = c00;
            f[u + 1] = c10;
            f[u + 2] = c20;
            f[u + 3] = c30;
            f[u + 4] = c01;
            f[u + 5] = c11;
            f[u + 6] = c21;
            f[u + 7] = c31;
            f[u + 8] = c02;
            f[u + 9] = c12;
            f[u + 10] = c22;
            f[u + 11] = c32;
            f[u + 12] = c03;
            f[u + 13] = c13;
            f[u + 14] = c23;
            f[u + 15] = c33;
            int v = lI + 4 * c;
            l[v] = c00 * i0;
            l[v + 1] = c10 * i0;
            l[v + 2] = c20 * i0;
            l[v + 3] = c30 * i0;
            l[v + 4] = c01 * i1;
            l[v + 5] = c11 * i1;
            l[v + 6] = c21 * i1;
            l[v + 7] = c31 * i1;
            l[v + 8] = c02 * i2;
            l[v + 9] = c12 * i2;
            l[v + 10] = c22 * i2;
            l[v + 11] = c32 * i2;
            l[v + 12] = c03 * i3;
            l[v + 13] = c13 * i3;
            l[v + 14] = c23 * i3;
            l[v + 15] = c33 * i3;
        }
    }

    private void updateColumn(int fs, int ls, int strips, int p, int width, int tile) {
        double[] f = front;
        double[] l = factor;
        int stripJ = fs + 8 * tile * (tile + 1);
        for (int i = tile; i < strips; i++) {
            int lI = ls + 4 * i * width;
            int u = fs + 8 * i * (i + 1) + 16 * tile;
            double c00 = f[u];
            double c10 = f[u + 1];
            double c20 = f[u + 2];
            double c30 = f[u + 3];
            double c01 = f[u + 4];
            double c11 = f[u + 5];
            double c21 = f[u + 6];
            double c31 = f[u + 7];
            double c02 = f[u + 8];
            double c12 = f[u + 9];
            double c22 = f[u + 10];
            double c32 = f[u + 11];
            double c03 = f[u + 12];
            double c13 = f[u + 13];
            double c23 = f[u + 14];
            double c33 = f[u + 15];
            for (int k = 0; k < 4 * p; k += 4) {
                double w0 = f[stripJ + k];
                double w1 = f[stripJ + k + 1];
                double w2 = f[stripJ + k + 2];
                double w3 = f[stripJ + k + 3];
                double x0 = l[lI + k];
                double x1 = l[lI + k + 1];
                double x2 = l[lI + k + 2];
                double x3 = l[lI + k + 3];
                c00 -= x0 * w0;
                c10 -= x1 * w0;
                c20 -= x2 * w0;
                c30 -= x3 * w0;
                c01 -= x0 * w1;
                c11 -= x1 * w1;
                c21 -= x2 * w1;
                c31 -= x3 * w1;
                c02 -= x0 * w2;
                c12 -= x1 * w2;
                c22 -= x2 * w2;
                c32 -= x3 * w2;
                c03 -= x0 * w3;
                c13 -= x1 * w3;
                c23 -= x2 * w3;
                c33 -= x3 * w3;
            }
            f[u] = c00;
            f[u + 1] = c10;
            f[u + 2] = c20;
            f[u + 3] = c30;
            f[u + 4] = c01;
            f[u + 5] = c11;
            f[u + 6] = c21;
            f[u + 7] = c31;
            f[u + 8] = c02;
            f[u + 9] = c12;
            f[u + 10] = c22;
            f[u + 11] = c32;
            f[u + 12] = c03;
            f[u + 13] = c13;
            f[u + 14] = c23;
            f[u + 15] = c33;
        }
    }
}
