// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import java.util.Arrays;

/** An unchanging row of numbers. */
public final class Series {
    private final double[] values;

    private Series(double[] values) {
        this.values = values;
    }

    /** A copy of the given values. */
    public static Series of(double... values) {
        return new Series(values.clone());
    }

    public int size() {
        return values.length;
    }

    public double at(int index) {
        return values[index];
    }

    public double first() {
        return values[0];
    }

    public double last() {
        return values[values.length - 1];
    }

    /**
     * The smallest value; positive infinity when empty. Values that are not numbers are skipped.
     */
    public double min() {
        double least = Double.POSITIVE_INFINITY;
        for (double v : values) {
            if (v < least) {
                least = v;
            }
        }
        return least;
    }

    /** The largest value; negative infinity when empty. Values that are not numbers are skipped. */
    public double max() {
        double most = Double.NEGATIVE_INFINITY;
        for (double v : values) {
            if (v > most) {
                most = v;
            }
        }
        return most;
    }

    /** Index of the smallest value, the first of equals; -1 when empty. */
    public int argMin() {
        int at = -1;
        for (int i = 0; i < values.length; i++) {
            if (at < 0 && !Double.isNaN(values[i]) || at >= 0 && values[i] < values[at]) {
                at = i;
            }
        }
        return at;
    }

    /**
     * The value at {@code x} by straight lines between the points of {@code grid}, which rises;
     * ends are held outside.
     */
    public double over(Series grid, double x) {
        int n = grid.size();
        if (x <= grid.at(0)) {
            return values[0];
        }
        if (x >= grid.at(n - 1)) {
            return values[n - 1];
        }
        int hi = Arrays.binarySearch(grid.values, x);
        if (hi >= 0) {
            return values[hi];
        }
        hi = -hi - 1;
        double part = (x - grid.at(hi - 1)) / (grid.at(hi) - grid.at(hi - 1));
        return values[hi - 1] + part * (values[hi] - values[hi - 1]);
    }

    public double[] toArray() {
        return values.clone();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Series s && Arrays.equals(values, s.values);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(values);
    }

    @Override
    public String toString() {
        return Arrays.toString(values);
    }
}
