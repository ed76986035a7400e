// SPDX-License-Identifier: Apache-2.0
package foldwright.run;

import java.util.Arrays;
import java.util.List;

/**
 * Columns of a run [SI], rows in order of time. Times never fall; a time may stand twice where
 * something jumps.
 */
public final class RunTable {
    private final List<RunColumn> columns;
    private final List<String> sections;
    private final double[][] values;
    private final int[] place = new int[RunColumn.values().length];
    private final int rows;

    /**
     * Takes the rows over.
     *
     * @param columns of each row, time among them
     * @param rows one array a row, in the order of the columns [SI]
     */
    public RunTable(List<RunColumn> columns, List<double[]> rows) {
        this(columns, List.of(), rows);
    }

    /**
     * With the tension of each section of belt behind the columns.
     *
     * @param sections names of the sections
     */
    public RunTable(List<RunColumn> columns, List<String> sections, List<double[]> rows) {
        this.columns = List.copyOf(columns);
        this.sections = List.copyOf(sections);
        this.rows = rows.size();
        Arrays.fill(place, -1);
        values = new double[columns.size() + sections.size()][rows.size()];
        for (int c = 0; c < values.length; c++) {
            if (c < columns.size()) {
                place[columns.get(c).ordinal()] = c;
            }
            for (int r = 0; r < this.rows; r++) {
                values[c][r] = rows.get(r)[c];
            }
        }
        if (place[RunColumn.TIME.ordinal()] < 0 || this.rows == 0) {
            throw new IllegalArgumentException("a run needs the column time and a row");
        }
        for (int r = 1; r < this.rows; r++) {
            if (!(time(r) >= time(r - 1))) {
                throw new IllegalArgumentException(
                        "row " + r + ": time " + time(r) + " s; allowed: not before the row above");
            }
        }
    }

    public List<RunColumn> columns() {
        return columns;
    }

    public int rows() {
        return rows;
    }

    /** Whether the run has a column. */
    public boolean has(RunColumn column) {
        return place[column.ordinal()] >= 0;
    }

    /** A cell [SI]; not a number where the run has no such column. */
    public double at(RunColumn column, int row) {
        int c = place[column.ordinal()];
        return c < 0 ? Double.NaN : values[c][row];
    }

    public double time(int row) {
        return at(RunColumn.TIME, row);
    }

    public double start() {
        return time(0);
    }

    public double end() {
        return time(rows - 1);
    }

    /** The last row whose time is not after this one; the first row for earlier times. */
    public int row(double time) {
        int low = 0;
        int high = rows - 1;
        while (low < high) {
            int mid = (low + high + 1) >>> 1;
            if (time(mid) <= time) {
                low = mid;
            } else {
                high = mid - 1;
            }
        }
        return low;
    }

    /** A value between rows, evenly; held at both ends [SI]. */
    public double at(RunColumn column, double time) {
        int r = row(time);
        if (r + 1 >= rows || time <= time(r)) {
            return at(column, r);
        }
        double share = (time - time(r)) / (time(r + 1) - time(r));
        double here = at(column, r);
        return here + share * (at(column, r + 1) - here);
    }

    /** Sections of belt whose tension is known. */
    public List<String> sections() {
        return sections;
    }

    /** Tension of a section in a row [N]. */
    public double tension(int section, int row) {
        return values[columns.size() + section][row];
    }

    /** The largest size of a column [SI]; 0 where there is none. */
    public double largest(RunColumn column) {
        double most = 0;
        for (int r = 0; r < rows && has(column); r++) {
            double size = Math.abs(at(column, r));
            most = size > most ? size : most;
        }
        return most;
    }
}
