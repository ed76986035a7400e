// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

/**
 * Where things stand on a sheet of a size. Two drawings exist: one made at 1920 x 1080 and scaled,
 * and a denser one made at 1280 x 720 for pictures less than 1600 px wide. Each place is given in
 * both: {@code of(large, small)}. Cards and scale keep their distance from the right edge, rules
 * from the bottom; the table takes what is left.
 */
public final class Layout {
    /** Smallest text [px]. */
    public static final double LEAST_TYPE = 13;

    public final int width;
    public final int height;
    public final boolean small;

    /** Pixels a unit of the drawing in use. */
    public final double unit;

    /** Pixels a unit of the large drawing: for line widths and marks. */
    public final double u;

    private final double textScale;
    private final double extraX;
    private final double extraY;

    /**
     * A layout.
     *
     * @param textScale the user's choice, 1 as drawn
     */
    public Layout(int width, int height, double textScale) {
        this.width = width;
        this.height = height;
        this.textScale = textScale;
        small = width < 1600;
        unit =
                small
                        ? Math.min(width / 1280.0, height / 720.0)
                        : Math.min(width / 1920.0, height / 1080.0);
        u = small ? unit * 2 / 3 : unit;
        extraX = width - unit * (small ? 1280 : 1920);
        extraY = height - unit * (small ? 720 : 1080);
    }

    /** Whether this is the layout of a size and a text scale. */
    boolean is(int wide, int high, double scale) {
        return width == wide && height == high && textScale == scale;
    }

    /** A length. */
    public double of(double large, double smallValue) {
        return unit * (small ? smallValue : large);
    }

    /** A place from the left edge. */
    public double left(double large, double smallValue) {
        return of(large, smallValue);
    }

    /** A place that keeps its distance from the right edge, given by its x on the drawing. */
    public double right(double large, double smallValue) {
        return of(large, smallValue) + extraX;
    }

    /** A place that keeps its distance from the bottom, given by its y on the drawing. */
    public double bottom(double large, double smallValue) {
        return of(large, smallValue) + extraY;
    }

    /** A type size, never below the least. */
    public float type(double large, double smallValue) {
        return (float) Math.max(LEAST_TYPE, of(large, smallValue) * textScale);
    }

    // ---- the zones

    /** The upright axis of the height scale. */
    public double scaleX() {
        return right(1064, 709);
    }

    public double scaleTop() {
        return of(317, 211);
    }

    /** Lowest place of the flat end of the scale. */
    public double scaleFlat() {
        return bottom(747, 497);
    }

    /** Pixels of ribbon for a margin of one. */
    public double ribbonStep() {
        return of(16, 10.6);
    }

    public double plotLeft() {
        return right(1212, 804);
    }

    public double plotRight() {
        return right(1444, 960);
    }

    /** Lowest place a drawn point with its label may take on the table. */
    public double tableBottom() {
        return bottom(905, 604);
    }

    public double tableTop() {
        return of(112, 84);
    }

    public double tableLeft() {
        return of(46, 30);
    }

    public double tableRight() {
        return right(1000, 652);
    }

    public double rulesTop() {
        return bottom(921, 614);
    }

    public double cardsLeft() {
        return right(1500, 1000);
    }

    public double cardsRight() {
        return right(1880, 1253);
    }
}
