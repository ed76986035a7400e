// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.replay;

import foldwright.gantry.route.Travel;

/** Largest tool error, and how often the tool was there, over a grid of the travel. */
public final class ErrorMap {
    /** Cells along each axis. */
    public static final int CELLS = 64;

    private final double x0;
    private final double y0;
    private final double perX;
    private final double perY;
    private final float[] largest = new float[CELLS * CELLS];
    private final int[] visits = new int[CELLS * CELLS];

    ErrorMap(Travel travel) {
        x0 = travel.xMin();
        y0 = travel.yMin();
        perX = CELLS / (travel.xMax() - travel.xMin());
        perY = CELLS / (travel.yMax() - travel.yMin());
    }

    void add(double x, double y, double error) {
        int i = Math.max(0, Math.min(CELLS - 1, (int) ((x - x0) * perX)));
        int j = Math.max(0, Math.min(CELLS - 1, (int) ((y - y0) * perY)));
        int cell = j * CELLS + i;
        float e = (float) error;
        if (e > largest[cell]) {
            largest[cell] = e;
        }
        visits[cell]++;
    }

    /** Largest tool error in a cell, column along the bridge, row along the rails [m]. */
    public double largest(int column, int row) {
        return largest[row * CELLS + column];
    }

    /** Looks (every fourth step) in a cell. */
    public int visits(int column, int row) {
        return visits[row * CELLS + column];
    }

    /** Middle of a column along the bridge [m]. */
    public double columnX(int column) {
        return x0 + (column + 0.5) / perX;
    }

    /** Middle of a row along the rails [m]. */
    public double rowY(int row) {
        return y0 + (row + 0.5) / perY;
    }
}
