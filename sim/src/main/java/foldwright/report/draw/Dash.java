// SPDX-License-Identifier: Apache-2.0
package foldwright.report.draw;

import java.util.List;

/** Patterns of lines, in units at scale 1. */
public enum Dash {
    SOLID(),
    /** A saved variant. */
    DASHED(5, 4),
    /** The rule a margin should reach. */
    DOTTED(2, 3),
    /** Ends of a travel, a box to fit into: a line along which paper is folded. */
    FOLD(14, 4, 2, 4);

    private final List<Double> lengths;

    Dash(double... lengths) {
        this.lengths = java.util.Arrays.stream(lengths).boxed().toList();
    }

    /** Drawn and skipped lengths in turn; empty for a solid line. */
    public List<Double> lengths() {
        return lengths;
    }
}
