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
 *
 * <p>The pivots of a diagonal tile form a chain of four divisions. The next diagonal tile is
 * therefore started as soon as the first tile below the current one is done, so that the core can
 * work on the remaining tiles while it waits. A last strip of one or two rows is done row by row.
 *
 * <p>Methods here are longer than elsewhere because 16 numbers must stay in registers: Java has no
 * other way to say so. The plain twin is the dense elimination in the tests.
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

    /**
     * Eliminates the leading rows of a front.
     *
     * @param fs start of the front in the arena
     * @param ls start of its columns in the factor
     * @param n rows of the front without padding
     * @param p rows to eliminate
     * @param at place of the first pivot in elimination order
     */
    void run(int fs, int ls, int n, int p, int at) {
        int width = (p + 3) & ~3;
        int full = wholeStrips(n, p);
        diagonalTile(fs, ls, p, at, 0);
        int tile = 0;
        for (; 4 * tile < p; tile++) {
            if (tile + 1 < full) {
                pivotTiles(fs, ls, width, at, tile, tile + 1, tile + 2);
                diagonalTile(fs, ls, p, at, tile + 1);
                pivotTiles(fs, ls, width, at, tile, tile + 2, full);
            }
        }
        for (; tile < full; tile++) {
            updateTiles(fs, ls, p, tile, full);
        }
        for (int row = 4 * full; row < n; row++) {
            lastRow(fs, ls, p, at, row);
        }
    }

    /** Strips done tile by tile; one or two rows of the border beyond them are done one by one. */
    private static int wholeStrips(int n, int p) {
        int rest = n & 3;
        return rest != 0 && rest != 3 && p <= (n & ~3) ? n >> 2 : (n + 3) >> 2;
    }

    /**
     * The tile on the diagonal: brought up to date and, as far as pivots reach into it, factored.
     */
    private void diagonalTile(int fs, int ls, int p, int at, int tile) {
        double[] f = front;
        double[] l = factor;
        int width = (p + 3) & ~3;
        int strip = fs + 8 * tile * (tile + 1);
        int lJ = ls + FrontPlan.factorStrip(tile, width);
        int t = strip + 16 * tile;
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
        int end = Math.min(16 * tile, 4 * p);
        for (int k = 0; k < end; k += 4) {
            double w0 = f[strip + k];
            double w1 = f[strip + k + 1];
            double w2 = f[strip + k + 2];
            double w3 = f[strip + k + 3];
            double x0 = l[lJ + k];
            double x1 = l[lJ + k + 1];
            double x2 = l[lJ + k + 2];
            double x3 = l[lJ + k + 3];
            a00 -= x0 * w0;
            a10 -= x1 * w0;
            a20 -= x2 * w0;
            a30 -= x3 * w0;
            a11 -= x1 * w1;
            a21 -= x2 * w1;
            a31 -= x3 * w1;
            a22 -= x2 * w2;
            a32 -= x3 * w2;
            a33 -= x3 * w3;
        }
        int own = p - 4 * tile;
        if (own <= 0) {
            f[t] = a00;
            f[t + 1] = a10;
            f[t + 2] = a20;
            f[t + 3] = a30;
            f[t + 5] = a11;
            f[t + 6] = a21;
            f[t + 7] = a31;
            f[t + 10] = a22;
            f[t + 11] = a32;
            f[t + 15] = a33;
            return;
        }
        // each pivot is formed from products that do not wait for the division before it
        double i0 = 1 / a00;
        double d1 = a11 - a10 * a10 * i0;
        double i1 = own > 1 ? 1 / d1 : 0;
        double w21 = a21 - a10 * a20 * i0;
        double w31 = a31 - a10 * a30 * i0;
        double d2 = a22 - a20 * a20 * i0 - w21 * w21 * i1;
        double i2 = own > 2 ? 1 / d2 : 0;
        double w32 = a32 - a20 * a30 * i0 - w21 * w31 * i1;
        double d3 = a33 - a30 * a30 * i0 - w31 * w31 * i1 - w32 * w32 * i2;
        double i3 = own > 3 ? 1 / d3 : 0;
        f[t + 5] = d1;
        f[t + 6] = w21;
        f[t + 7] = w31;
        f[t + 10] = d2;
        f[t + 11] = w32;
        f[t + 15] = d3;
        int to = at + 4 * tile;
        keepPivots(pivots, to, a00, d1, d2, d3);
        keepPivots(inverse, to, i0, i1, i2, i3);
        keepCoefficients(
                lJ + 16 * tile, a10 * i0, a20 * i0, a30 * i0, w21 * i1, w31 * i1, w32 * i2);
    }

    private static void keepPivots(
            double[] to, int at, double d0, double d1, double d2, double d3) {
        to[at] = d0;
        to[at + 1] = d1;
        to[at + 2] = d2;
        to[at + 3] = d3;
    }

    /**
     * Stores the unit lower triangle of a diagonal tile below its diagonal, and above it the three
     * entries of the inverse that are not simply the negative: substitution multiplies by the
     * inverse.
     */
    private void keepCoefficients(
            int m, double l10, double l20, double l30, double l21, double l31, double l32) {
        double[] l = factor;
        l[m + 1] = l10;
        l[m + 2] = l20;
        l[m + 3] = l30;
        l[m + 6] = l21;
        l[m + 7] = l31;
        l[m + 11] = l32;
        double n20 = l21 * l10 - l20;
        l[m + 8] = n20;
        l[m + 12] = l31 * l10 - l30 - l32 * n20;
        l[m + 13] = l32 * l21 - l31;
    }

    /** Tiles {@code from..to-1} of a column that holds pivots. */
    private void pivotTiles(int fs, int ls, int width, int at, int tile, int from, int to) {
        double[] f = front;
        double[] l = factor;
        int strip = fs + 8 * tile * (tile + 1);
        int m = ls + FrontPlan.factorStrip(tile, width) + 16 * tile;
        double l10 = l[m + 1];
        double l20 = l[m + 2];
        double l30 = l[m + 3];
        double l21 = l[m + 6];
        double l31 = l[m + 7];
        double l32 = l[m + 11];
        int d = at + 4 * tile;
        double i0 = inverse[d];
        double i1 = inverse[d + 1];
        double i2 = inverse[d + 2];
        double i3 = inverse[d + 3];
        for (int i = from; i < to; i++) {
            int t = fs + 8 * i * (i + 1) + 16 * tile;
            int lI = ls + FrontPlan.factorStrip(i, width);
            double c00 = f[t];
            double c10 = f[t + 1];
            double c20 = f[t + 2];
            double c30 = f[t + 3];
            double c01 = f[t + 4];
            double c11 = f[t + 5];
            double c21 = f[t + 6];
            double c31 = f[t + 7];
            double c02 = f[t + 8];
            double c12 = f[t + 9];
            double c22 = f[t + 10];
            double c32 = f[t + 11];
            double c03 = f[t + 12];
            double c13 = f[t + 13];
            double c23 = f[t + 14];
            double c33 = f[t + 15];
            for (int k = 0; k < 16 * tile; k += 4) {
                double w0 = f[strip + k];
                double w1 = f[strip + k + 1];
                double w2 = f[strip + k + 2];
                double w3 = f[strip + k + 3];
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
            c02 = c02 - c00 * l20 - c01 * l21;
            c12 = c12 - c10 * l20 - c11 * l21;
            c22 = c22 - c20 * l20 - c21 * l21;
            c32 = c32 - c30 * l20 - c31 * l21;
            c03 = c03 - c00 * l30 - c01 * l31 - c02 * l32;
            c13 = c13 - c10 * l30 - c11 * l31 - c12 * l32;
            c23 = c23 - c20 * l30 - c21 * l31 - c22 * l32;
            c33 = c33 - c30 * l30 - c31 * l31 - c32 * l32;
            f[t] = c00;
            f[t + 1] = c10;
            f[t + 2] = c20;
            f[t + 3] = c30;
            f[t + 4] = c01;
            f[t + 5] = c11;
            f[t + 6] = c21;
            f[t + 7] = c31;
            f[t + 8] = c02;
            f[t + 9] = c12;
            f[t + 10] = c22;
            f[t + 11] = c32;
            f[t + 12] = c03;
            f[t + 13] = c13;
            f[t + 14] = c23;
            f[t + 15] = c33;
            int v = lI + 16 * tile;
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

    /**
     * Tiles of a column of the border, its diagonal tile included unless it has been done ahead.
     */
    private void updateTiles(int fs, int ls, int p, int tile, int to) {
        if (4 * (tile - 1) >= p) {
            diagonalTile(fs, ls, p, 0, tile);
        }
        double[] f = front;
        double[] l = factor;
        int width = (p + 3) & ~3;
        int strip = fs + 8 * tile * (tile + 1);
        for (int i = tile + 1; i < to; i++) {
            int t = fs + 8 * i * (i + 1) + 16 * tile;
            int lI = ls + FrontPlan.factorStrip(i, width);
            double c00 = f[t];
            double c10 = f[t + 1];
            double c20 = f[t + 2];
            double c30 = f[t + 3];
            double c01 = f[t + 4];
            double c11 = f[t + 5];
            double c21 = f[t + 6];
            double c31 = f[t + 7];
            double c02 = f[t + 8];
            double c12 = f[t + 9];
            double c22 = f[t + 10];
            double c32 = f[t + 11];
            double c03 = f[t + 12];
            double c13 = f[t + 13];
            double c23 = f[t + 14];
            double c33 = f[t + 15];
            for (int k = 0; k < 4 * p; k += 4) {
                double w0 = f[strip + k];
                double w1 = f[strip + k + 1];
                double w2 = f[strip + k + 2];
                double w3 = f[strip + k + 3];
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
            f[t] = c00;
            f[t + 1] = c10;
            f[t + 2] = c20;
            f[t + 3] = c30;
            f[t + 4] = c01;
            f[t + 5] = c11;
            f[t + 6] = c21;
            f[t + 7] = c31;
            f[t + 8] = c02;
            f[t + 9] = c12;
            f[t + 10] = c22;
            f[t + 11] = c32;
            f[t + 12] = c03;
            f[t + 13] = c13;
            f[t + 14] = c23;
            f[t + 15] = c33;
        }
    }

    /** A border row beyond the whole strips: its tiles from left to right, then its own strip. */
    private void lastRow(int fs, int ls, int p, int at, int row) {
        double[] f = front;
        double[] l = factor;
        int width = (p + 3) & ~3;
        int strips = row >> 2;
        int r = fs + 8 * strips * (strips + 1) + (row & 3);
        int lR = ls + FrontPlan.factorStrip(strips, width) + (row & 3);
        for (int tile = 0; tile < strips; tile++) {
            int strip = fs + 8 * tile * (tile + 1);
            int t = r + 16 * tile;
            double c0 = f[t];
            double c1 = f[t + 4];
            double c2 = f[t + 8];
            double c3 = f[t + 12];
            int end = Math.min(16 * tile, 4 * p);
            for (int k = 0; k < end; k += 4) {
                double x = l[lR + k];
                c0 -= x * f[strip + k];
                c1 -= x * f[strip + k + 1];
                c2 -= x * f[strip + k + 2];
                c3 -= x * f[strip + k + 3];
            }
            if (4 * tile < p) {
                int m = ls + FrontPlan.factorStrip(tile, width) + 16 * tile;
                c1 -= c0 * l[m + 1];
                c2 = c2 - c0 * l[m + 2] - c1 * l[m + 6];
                c3 = c3 - c0 * l[m + 3] - c1 * l[m + 7] - c2 * l[m + 11];
                int v = lR + 16 * tile;
                int d = at + 4 * tile;
                l[v] = c0 * inverse[d];
                l[v + 4] = c1 * inverse[d + 1];
                l[v + 8] = c2 * inverse[d + 2];
                l[v + 12] = c3 * inverse[d + 3];
            }
            f[t] = c0;
            f[t + 4] = c1;
            f[t + 8] = c2;
            f[t + 12] = c3;
        }
        for (int j = 4 * strips; j <= row; j++) {
            int w = r - (row & 3) + (j & 3);
            double c = f[r + 4 * j];
            for (int k = 0; k < 4 * p; k += 4) {
                c -= l[lR + k] * f[w + k];
            }
            f[r + 4 * j] = c;
        }
    }
}
