// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.text;

/**
 * A piece of text as drawn: its ink lies inside the box (cap height above the baseline, a descender
 * below).
 *
 * @param layer texts of different layers may cover each other (the help over the sheet)
 * @param x left [px from the left]
 * @param y top [px from above]
 */
public record TextBox(String text, int layer, float x, float y, float width, float height) {
    /** Whether two boxes of one layer share more than half a pixel both ways. */
    public boolean overlaps(TextBox other) {
        return layer == other.layer
                && meet(x, width, other.x, other.width)
                && meet(y, height, other.y, other.height);
    }

    /** Whether two stretches share more than half a pixel. */
    public static boolean meet(float a, float aLength, float b, float bLength) {
        return Math.min(a + aLength, b + bLength) - Math.max(a, b) > 0.5f;
    }
}
