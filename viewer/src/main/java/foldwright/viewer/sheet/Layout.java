// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

/**
 * Where things stand on a sheet of a size. Two drawings exist: one made at 1920 x 1080 and scaled,
 * and a denser one made at 1280 x 720 for pictures less than 1600 px wide. Each place is given in
 * both: {@code of(large, small)}. Cards and scale keep their distance from the right edge, rules
 * from the bottom; the table takes what is left.
 *
 * <p>Letters below {@link #LEAST_TYPE} cannot be read, so on sheets too small for the denser
 * drawing nothing shrinks: things are left out. Machine, height scale, legend and the answer to the
 * open question stay; the plot goes where it has no room, the other questions and the rules always.
 */
public final class Layout {
    /** Smallest text [px]. */
    public static final double LEAST_TYPE = 13;

    public final int width;
    public final int height;
    public final boolean small;

    /** Whether most is left out. */
    public final boolean little;

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
        double large = Math.min(width / 1920.0, height / 1080.0);
        double dense = Math.min(width / 1280.0, height / 720.0);
        small = width < 1600 || large < 0.8;
        little = small && dense < 0.95;
        unit = little ? 1 : small ? dense : large;
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

    /** Whether there is room for plots beside the height scale. */
    public boolean plots() {
        return !little || width >= 800 && height >= 440;
    }

    /** The upright axis of the height scale. */
    public double scaleX() {
        return little ? width - (plots() ? 265 : 204) : right(1064, 709);
    }

    /** Upper end of the height scale. */
    public double scaleTop() {
        return little ? (plots() ? 186 : 132) : of(317, 211);
    }

    /** Lowest place of the flat end of the scale. */
    public double scaleFlat() {
        return little ? rulesTop() - (plots() ? 58 : 44) : bottom(747, 497);
    }

    /** Pixels of ribbon for a margin of one. */
    public double ribbonStep() {
        return of(16, 10.6);
    }

    public double plotLeft() {
        return little ? scaleX() + 95 : right(1212, 804);
    }

    public double plotRight() {
        return little ? width - 14 : right(1444, 960);
    }

    /** Lowest place a drawn point with its label may take on the table. */
    public double tableBottom() {
        return little ? rulesTop() - 8 : bottom(905, 604);
    }

    public double tableTop() {
        return of(112, 84);
    }

    public double tableLeft() {
        return little ? 20 : of(46, 30);
    }

    public double tableRight() {
        return little ? scaleX() - 57 : right(1000, 652);
    }

    public double rulesTop() {
        return little ? height - 58 : bottom(921, 614);
    }

    public double cardsLeft() {
        return little ? width + 10 : right(1500, 1000);
    }

    public double cardsRight() {
        return little ? width - 14 : right(1880, 1253);
    }
}
