// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.limits;

/** Directions of acceleration of the tool. */
public enum Heading {
    RIGHT(1, 0, "+x"),
    LEFT(-1, 0, "-x"),
    BACK(0, 1, "+y"),
    FRONT(0, -1, "-y"),
    BACK_RIGHT(Math.sqrt(0.5), Math.sqrt(0.5), "+x +y"),
    BACK_LEFT(-Math.sqrt(0.5), Math.sqrt(0.5), "-x +y"),
    FRONT_RIGHT(Math.sqrt(0.5), -Math.sqrt(0.5), "+x -y"),
    FRONT_LEFT(-Math.sqrt(0.5), -Math.sqrt(0.5), "-x -y");

    private final double x;
    private final double y;
    private final String word;

    Heading(double x, double y, String word) {
        this.x = x;
        this.y = y;
        this.word = word;
    }

    /** Share along the bridge [1]. */
    public double x() {
        return x;
    }

    /** Share along the rails [1]. */
    public double y() {
        return y;
    }

    /** As it stands in files. */
    public String word() {
        return word;
    }

    /** As it is shown to people, with true minus signs. */
    public String signed() {
        return word.replace('-', '\u2212');
    }
}
