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
                && Math.min(x + width, other.x + other.width) - Math.max(x, other.x) > 0.5f
                && Math.min(y + height, other.y + other.height) - Math.max(y, other.y) > 0.5f;
    }
}
