// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.sparse;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * All addresses of a factorisation, fixed once a topology.
 *
 * <p>A front of {@code n} rows is stored in <em>strips</em> of four rows: strip {@code I} holds
 * rows {@code 4I..4I+3}, columns {@code 0..4I+3}, column by column, so that the entry {@code (i,
 * j)} of the lower triangle lies at {@code 8 I (I + 1) + 4 j + i % 4}. A 4 x 4 tile is then 16
 * neighbouring numbers, and a row of tiles is one stream. Rows are padded with zeros to a multiple
 * of four. The factor keeps only the pivot columns, in strips of the same kind, {@code width}
 * columns each.
 *
 * <p>Fronts live in an arena while their parent may need them; places are handed out first fit, so
 * the arena stays about as large as the biggest few fronts and in the nearest cache.
 */
final class FrontPlan {
    /** Rows (and columns) of a tile. */
    static final int TILE = 4;

    /** A place above the diagonal of the first tile, which nothing reads. */
    static final int UNREAD = 4;

    /** Rows of the whole system. */
    final int dimension;

    /** Per front: pivot rows. */
    final int[] pivots;

    /** Per front: strips of four rows, padding included. */
    final int[] strips;

    /** Per front: pivot columns kept in the factor, a multiple of four. */
    final int[] width;

    /** Per front: its first pivot in elimination order. */
    final int[] firstPivot;

    /** Per front: start in the arena. */
    final int[] front;

    /** Per front: start in the factor. */
    final int[] factor;

    /** Per front: start of its row list in {@link #rows}; it has four entries a strip. */
    final int[] rowStart;

    /** Place of each row of each front in elimination order; {@code dimension} for padding. */
    final int[] rows;

    /** The same rows by their number in the caller's vectors; padding is not used. */
    final int[] callerRows;

    /** Per front, and one more: start of its range in {@link #entries}. */
    final int[] entryStart;

    /** Caller's value number {@code e} goes to this place of its front; {@link #UNREAD} if none. */
    final int[] entries;

    /** Per front, and one more: start of its range in {@link #children}. */
    final int[] childStart;

    /** Fronts whose updates a front takes. */
    final int[] children;

    /** Per front, and one more: start of its range in {@link #liftFrom} and {@link #liftTo}. */
    final int[] liftStart;

    /** Address in a front of each entry of its update. */
    final int[] liftFrom;

    /** Address in the parent front to which that entry is added. */
    final int[] liftTo;

    /** Per front: number of border rows. */
    final int[] borderRows;

    /** Caller's row number for each place in elimination order. */
    final int[] callerRow;

    final int arenaSize;
    final int factorSize;

    FrontPlan(BlockPattern pattern, List<Fronts.Front> fronts, BlockLayout layout) {
        int count = fronts.size();
        pivots = new int[count];
        borderRows = new int[count];
        strips = new int[count];
        width = new int[count];
        firstPivot = new int[count];
        factor = new int[count];
        rowStart = new int[count];
        liftStart = new int[count + 1];
        dimension = layout.dimension();
        callerRow = new int[dimension];
        int[] place = placeBlocks(pattern, fronts, layout);
        factorSize = sizeFronts(pattern, fronts);
        rows = new int[count == 0 ? 0 : rowStart[count - 1] + TILE * strips[count - 1]];
        listRows(pattern, fronts, place);
        callerRows = new int[rows.length];
        for (int i = 0; i < rows.length; i++) {
            callerRows[i] = rows[i] == dimension ? 0 : callerRow[rows[i]];
        }
        childStart = new int[count + 1];
        children = listChildren(fronts);
        liftFrom = new int[liftStart[count]];
        liftTo = new int[liftStart[count]];
        listLifts(fronts);
        FrontArena arena = new FrontArena(this, fronts);
        front = arena.starts();
        arenaSize = arena.size();
        entryStart = new int[count + 1];
        entries = layout.entries(fronts, place, entryStart, firstPivot, this);
    }

    /** Address of entry (i, j), i >= j, relative to the start of its front. */
    static int address(int i, int j) {
        int strip = i / TILE;
        return 8 * strip * (strip + 1) + TILE * j + i % TILE;
    }

    /**
     * Start of a strip in the factor of a front: strips of pivot rows end at the diagonal, the
     * others have {@code width} columns.
     */
    static int factorStrip(int strip, int width) {
        int pivotStrips = width / TILE;
        return strip < pivotStrips
                ? frontSize(strip)
                : frontSize(pivotStrips) + (strip - pivotStrips) * TILE * width;
    }

    /** Doubles that a front of so many strips occupies. */
    static int frontSize(int strips) {
        return 8 * strips * (strips + 1);
    }

    int fronts() {
        return pivots.length;
    }

    /** Row of a front that holds a given place in elimination order. */
    int rowIn(int f, int place) {
        if (place < firstPivot[f] + pivots[f]) {
            return place - firstPivot[f];
        }
        int from = rowStart[f] + pivots[f];
        return Arrays.binarySearch(rows, from, from + borderRows[f], place) - rowStart[f];
    }

    private int[] placeBlocks(BlockPattern pattern, List<Fronts.Front> fronts, BlockLayout layout) {
        int[] place = new int[pattern.blocks()];
        int next = 0;
        for (Fronts.Front f : fronts) {
            for (int block : f.pivots) {
                place[block] = next;
                for (int r = 0; r < pattern.size(block); r++) {
                    callerRow[next++] = layout.offset(block) + r;
                }
            }
        }
        return place;
    }

    private int sizeFronts(BlockPattern pattern, List<Fronts.Front> fronts) {
        int first = 0;
        int rowCount = 0;
        int kept = 0;
        for (int f = 0; f < fronts.size(); f++) {
            pivots[f] = scalars(pattern, fronts.get(f).pivots);
            borderRows[f] = scalars(pattern, fronts.get(f).border);
            strips[f] = (pivots[f] + borderRows[f] + TILE - 1) / TILE;
            width[f] = TILE * ((pivots[f] + TILE - 1) / TILE);
            firstPivot[f] = first;
            rowStart[f] = rowCount;
            factor[f] = kept;
            first += pivots[f];
            rowCount += TILE * strips[f];
            kept += factorStrip(strips[f], width[f]);
            liftStart[f + 1] = liftStart[f] + borderRows[f] * (borderRows[f] + 1) / 2;
        }
        return kept;
    }

    private static int scalars(BlockPattern pattern, int[] blocks) {
        int sum = 0;
        for (int b : blocks) {
            sum += pattern.size(b);
        }
        return sum;
    }

    private void listRows(BlockPattern pattern, List<Fronts.Front> fronts, int[] place) {
        Arrays.fill(rows, dimension);
        for (int f = 0; f < fronts.size(); f++) {
            int at = rowStart[f];
            for (int p = 0; p < pivots[f]; p++) {
                rows[at++] = firstPivot[f] + p;
            }
            for (int block : fronts.get(f).border) {
                for (int r = 0; r < pattern.size(block); r++) {
                    rows[at++] = place[block] + r;
                }
            }
        }
    }

    private int[] listChildren(List<Fronts.Front> fronts) {
        List<Integer> all = new ArrayList<>();
        for (int f = 0; f < fronts.size(); f++) {
            childStart[f] = all.size();
            for (int c : fronts.get(f).children) {
                all.add(c);
            }
        }
        childStart[fronts.size()] = all.size();
        return BlockPattern.numbers(all);
    }

    private void listLifts(List<Fronts.Front> fronts) {
        for (int f = 0; f < fronts.size(); f++) {
            for (int c : fronts.get(f).children) {
                listLift(c, f);
            }
        }
    }

    private void listLift(int child, int parent) {
        int p = pivots[child];
        int[] target = new int[borderRows[child]];
        for (int r = 0; r < target.length; r++) {
            target[r] = rowIn(parent, rows[rowStart[child] + p + r]);
        }
        int at = liftStart[child];
        for (int i = 0; i < target.length; i++) {
            for (int j = 0; j <= i; j++) {
                liftFrom[at] = address(p + i, p + j);
                liftTo[at++] = address(target[i], target[j]);
            }
        }
    }
}
