// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.solve;

import foldwright.mechanics.joint.Rows;
import java.util.Arrays;

/** Where the row blocks of a mechanism stand, as flat numbers: inner loops need no joint object. */
final class BlockTable {
    /** Blocks. */
    final int count;

    /** Per block: rows, and the first of them. */
    final int[] size;

    final int[] row;

    /** Per block, and one more: start of its bodies in {@link #body}. */
    final int[] first;

    final int[] body;

    /** Per body of each block: first entry of the Jacobian, row-major, six columns. */
    final int[] at;

    /** Per row: its block. */
    final int[] block;

    /** With one Jacobian after the other. */
    BlockTable(Rows[] rows, int rowCount) {
        count = rows.length;
        size = new int[count];
        row = new int[count];
        first = new int[count + 1];
        block = new int[rowCount];
        for (int r = 0; r < count; r++) {
            size[r] = rows[r].size();
            row[r] = rows[r].rowAt();
            first[r + 1] = first[r] + rows[r].count();
            for (int i = 0; i < size[r]; i++) {
                block[row[r] + i] = r;
            }
        }
        body = new int[first[count]];
        at = new int[body.length];
        int next = 0;
        for (int r = 0; r < count; r++) {
            for (int k = first[r]; k < first[r + 1]; k++) {
                body[k] = rows[r].body(k - first[r]);
                at[k] = next;
                next += 6 * size[r];
            }
        }
    }

    /** Numbers in all Jacobians. */
    int entries() {
        int sum = 0;
        for (int r = 0; r < count; r++) {
            sum += 6 * size[r] * (first[r + 1] - first[r]);
        }
        return sum;
    }

    /** Sorts items by their keys, which are not below 0; items of equal keys keep their order. */
    static void sort(int[] items, int[] keys) {
        long[] both = new long[items.length];
        for (int i = 0; i < both.length; i++) {
            both[i] = (long) keys[i] << 32 | i;
        }
        Arrays.sort(both);
        int[] before = items.clone();
        for (int i = 0; i < both.length; i++) {
            items[i] = before[(int) both[i]];
        }
    }
}
