// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

/**
 * How often a value occurs in many drawn machines.
 *
 * @param caption title, second line and unit of the axis
 * @param edges edges of the classes, rising, one more than there are counts [SI of the unit]
 * @param counts machines in each class
 * @param limit the bound [SI of the unit]
 * @param side on which side of the bound it must not be
 */
public record Distribution(
        HeightPlot.Caption caption, Series edges, Series counts, double limit, Side side) {

    /** The forbidden side of a bound. */
    public enum Side {
        BELOW,
        ABOVE
    }

    public Distribution {
        if (edges.size() != counts.size() + 1) {
            throw new IllegalArgumentException(
                    "found " + edges.size() + " edges for " + counts.size() + " classes");
        }
    }
}
