// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.sparse;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Where the caller writes: one dense row-major block for each diagonal and each coupling, grouped
 * by the front that reads it, so that gathering is one pass through memory.
 */
final class BlockLayout {
    private final BlockPattern pattern;
    private final int[] offset;
    private final int[] diagonal;
    private final int[][] lower;
    private final int[][] coupling;
    private final int valueCount;

    BlockLayout(BlockPattern pattern, List<Fronts.Front> fronts) {
        this.pattern = pattern;
        int n = pattern.blocks();
        offset = new int[n + 1];
        lower = new int[n][];
        coupling = new int[n][];
        for (int b = 0; b < n; b++) {
            offset[b + 1] = offset[b] + pattern.size(b);
            int[] all = pattern.neighbours(b);
            int before = 0;
            while (before < all.length && all[before] < b) {
                before++;
            }
            lower[b] = Arrays.copyOf(all, before);
            coupling[b] = new int[lower[b].length];
        }
        diagonal = new int[n];
        valueCount = place(fronts);
    }

    /** Row at which a block starts in the caller's vectors. */
    int offset(int block) {
        return offset[block];
    }

    int dimension() {
        return offset[offset.length - 1];
    }

    int valueCount() {
        return valueCount;
    }

    int diagonal(int block) {
        return diagonal[block];
    }

    /** Where the entry of row {@code row} of a block with itself stands. */
    int diagonalEntry(int block, int row) {
        int at = diagonal[block];
        int first = 0;
        for (int part : pattern.parts(block)) {
            if (row < first + part) {
                return at + (row - first) * (part + 1);
            }
            first += part;
            at += part * part;
        }
        throw new IllegalArgumentException("block " + block + " has no row " + row);
    }

    int coupling(int a, int b) {
        int at = a > b && b >= 0 && a < lower.length ? Arrays.binarySearch(lower[a], b) : -1;
        if (at < 0) {
            throw new IllegalArgumentException(
                    String.format(
                            Locale.ROOT,
                            "blocks %d and %d are not coupled in this order (rows of the later"
                                    + " block, columns of the earlier one)",
                            a,
                            b));
        }
        return coupling[a][at];
    }

    /** For every value, in the caller's order, its address in the front that reads it. */
    int[] entries(
            List<Fronts.Front> fronts, int[] place, int[] start, int[] firstPivot, FrontPlan plan) {
        int[] out = new int[valueCount];
        Arrays.fill(out, FrontPlan.UNREAD);
        for (int f = 0; f < fronts.size(); f++) {
            start[f] = f == 0 ? 0 : start[f];
            int end = start[f];
            for (int block : fronts.get(f).pivots) {
                end += mapDiagonal(out, block, place[block] - firstPivot[f]);
                for (int u : pattern.neighbours(block)) {
                    if (place[u] > place[block]) {
                        end += mapCoupling(out, block, u, plan, f, place);
                    }
                }
            }
            start[f + 1] = end;
        }
        return out;
    }

    private int place(List<Fronts.Front> fronts) {
        boolean[] gone = new boolean[pattern.blocks()];
        int next = 0;
        for (Fronts.Front f : fronts) {
            for (int block : f.pivots) {
                gone[block] = true;
                diagonal[block] = next;
                for (int part : pattern.parts(block)) {
                    next += part * part;
                }
                for (int u : pattern.neighbours(block)) {
                    if (!gone[u]) {
                        int a = Math.max(block, u);
                        coupling[a][Arrays.binarySearch(lower[a], Math.min(block, u))] = next;
                        next += pattern.size(block) * pattern.size(u);
                    }
                }
            }
        }
        return next;
    }

    private int mapDiagonal(int[] out, int block, int row) {
        int at = diagonal[block];
        int first = row;
        for (int part : pattern.parts(block)) {
            for (int i = 0; i < part; i++) {
                for (int j = 0; j <= i; j++) {
                    out[at + i * part + j] = FrontPlan.address(first + i, first + j);
                }
            }
            at += part * part;
            first += part;
        }
        return at - diagonal[block];
    }

    /** The pivot block gives the columns of the front, the later block its rows. */
    private int mapCoupling(int[] out, int pivot, int later, FrontPlan plan, int f, int[] place) {
        int rows = pattern.size(later);
        int columns = pattern.size(pivot);
        int row = plan.rowIn(f, place[later]);
        int column = plan.rowIn(f, place[pivot]);
        int base = later > pivot ? coupling(later, pivot) : coupling(pivot, later);
        for (int i = 0; i < rows; i++) {
            for (int j = 0; j < columns; j++) {
                int at = later > pivot ? base + i * columns + j : base + j * rows + i;
                out[at] = FrontPlan.address(row + i, column + j);
            }
        }
        return rows * columns;
    }
}
