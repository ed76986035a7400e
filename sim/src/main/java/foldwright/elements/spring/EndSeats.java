// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.spring;

/** How the seats of a compression spring guide it, with the buckling factor nu of EN 13906-1. */
public enum EndSeats {
    PARALLEL_PLATES(0.5),
    PLATE_AND_PIVOT(0.7),
    TWO_PIVOTS(1),
    ONE_END_FREE(2);

    private final double factor;

    EndSeats(double factor) {
        this.factor = factor;
    }

    /** nu: length of the buckling half-wave over the free length [1] (Shigley Table 10-2). */
    public double factor() {
        return factor;
    }
}
