// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.solve;

import foldwright.mechanics.joint.Rows;

/** Where the row blocks of a mechanism stand, as flat numbers: inner loops need no joint object. */
final class BlockTable {
    /** Blocks. */
    final int count;

    /** Per block: rows, first row, first entry of its Jacobian. */
    final int[] size;

    final int[] row;
    final int[] g;

    /** Per block, and one more: start of its bodies in {@link #body}. */
    final int[] first;

    final int[] body;

    /** Per row: its block. */
    final int[] block;

    BlockTable(Rows[] rows, int rowCount) {
        count = rows.length;
        size = new int[count];
        row = new int[count];
        g = new int[count];
        first = new int[count + 1];
        block = new int[rowCount];
        for (int r = 0; r < count; r++) {
            size[r] = rows[r].size();
            row[r] = rows[r].rowAt();
            g[r] = rows[r].gAt();
            first[r + 1] = first[r] + rows[r].count();
            for (int i = 0; i < size[r]; i++) {
                block[row[r] + i] = r;
            }
        }
        body = new int[first[count]];
        for (int r = 0; r < count; r++) {
            for (int k = 0; k < rows[r].count(); k++) {
                body[first[r] + k] = rows[r].body(k);
            }
        }
    }
}
