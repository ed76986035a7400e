// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

/**
 * A quantity with a sign along a way, a time or a height, with symmetric bounds.
 *
 * @param caption title, second line and unit
 * @param along what it runs along
 * @param values with sign [SI of the unit]
 * @param allowed largest size allowed [SI of the unit]; not a number when there is none
 * @param minus what minus means, e.g. "front"
 * @param plus what plus means, e.g. "back"
 */
public record SignedCurve(
        HeightPlot.Caption caption,
        Along along,
        Series values,
        double allowed,
        String minus,
        String plus)
        implements Plot {
    /**
     * A way along which the quantity is told.
     *
     * @param word what moves along it, or what it is, e.g. "carriage"
     * @param places rising [SI]
     */
    public record Along(String word, Series places) {}

    /** Index of the largest size, the first among equals. */
    public int worst() {
        int worst = 0;
        for (int i = 1; i < values.size(); i++) {
            if (Sizes.larger(Math.abs(values.at(i)), Math.abs(values.at(worst)))) {
                worst = i;
            }
        }
        return worst;
    }
}
