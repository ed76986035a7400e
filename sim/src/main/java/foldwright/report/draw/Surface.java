// SPDX-License-Identifier: Apache-2.0
package foldwright.report.draw;

/**
 * A flat place to draw on. Later drawing covers earlier drawing. Text is set without kerning and
 * other OpenType features, so that {@link TextStyle#width} is what is drawn.
 */
public interface Surface {
    /** The colours of this surface. */
    Palette palette();

    /** Draws the contours of a path as lines. */
    void stroke(Path path, Pen pen);

    /** Fills the contours of a path (non-zero rule). */
    void fill(Path path, Fill fill);

    void strokeCircle(double x, double y, double radius, Pen pen);

    void fillCircle(double x, double y, double radius, Fill fill);

    /** Draws one line of text; y is its base line. */
    void text(double x, double y, String text, TextStyle style);

    /** Keeps what follows inside the box, until {@link #unclip}; not nested. */
    void clip(Box box);

    void unclip();
}
