// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.bearing;

import foldwright.elements.table.Table;
import java.util.List;

/**
 * e and Y of deep groove ball bearings over F_a/C0, joined by straight lines (ISO 281; table {@code
 * bearings_ey_factors.csv}). Below the first and beyond the last row its values hold.
 *
 * @param threshold e: F_a/F_r up to which the axial load does not count [1]
 * @param factor Y [1]
 */
record AxialFactors(double threshold, double factor) {
    private record Row(double ratio, AxialFactors factors) {}

    /** Factors at F_a/C0. */
    static AxialFactors at(double ratio) {
        List<Row> rows = Shipped.ROWS;
        Row above = rows.get(0);
        Row below = above;
        for (Row row : rows) {
            below = above;
            above = row;
            if (row.ratio() >= ratio) {
                break;
            }
        }
        double width = above.ratio() - below.ratio();
        double share = width > 0 ? Math.min(1, Math.max(0, (ratio - below.ratio()) / width)) : 0;
        AxialFactors a = below.factors();
        AxialFactors b = above.factors();
        return new AxialFactors(
                a.threshold + share * (b.threshold - a.threshold),
                a.factor + share * (b.factor - a.factor));
    }

    /** Largest F_a/C0 of the table. */
    static double greatestRatio() {
        return Shipped.ROWS.get(Shipped.ROWS.size() - 1).ratio();
    }

    /** Read when the first factor is asked for. */
    private static final class Shipped {
        private static final List<Row> ROWS =
                Table.shipped("bearings_ey_factors.csv").rows().stream()
                        .map(
                                row ->
                                        new Row(
                                                row.number("Fa_over_C0", Table.ONE),
                                                new AxialFactors(
                                                        row.number("e", Table.ONE),
                                                        row.number("Y_with_X_0.56", Table.ONE))))
                        .toList();
    }
}
