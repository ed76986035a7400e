// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

/**
 * A quantity without sign over the work area, cell by cell.
 *
 * @param caption title, second line and unit
 * @param x middles of the columns, along the bridge [m]
 * @param y middles of the rows, along the rails [m]
 * @param values row after row [SI of the unit]; not a number where nothing was
 * @param limit allowed at most [SI of the unit]; not a number when there is none
 */
public record AreaPlot(HeightPlot.Caption caption, Series x, Series y, Series values, double limit)
        implements Plot {
    public AreaPlot {
        if (x.size() * y.size() != values.size()) {
            throw new IllegalArgumentException(
                    values.size() + " values for " + x.size() + " by " + y.size() + " cells");
        }
    }

    /** Value of a cell [SI of the unit]. */
    public double at(int column, int row) {
        return values.at(row * x.size() + column);
    }
}
