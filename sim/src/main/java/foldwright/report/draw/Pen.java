// SPDX-License-Identifier: Apache-2.0
package foldwright.report.draw;

import java.util.Objects;

/**
 * How a line is drawn. Joints and ends are round.
 *
 * @param colour colour
 * @param width thickness
 * @param dash pattern
 */
public record Pen(Colour colour, double width, Dash dash) {
    public Pen {
        Objects.requireNonNull(colour, "colour");
        Objects.requireNonNull(dash, "dash");
    }

    public static Pen of(Colour colour, double width) {
        return new Pen(colour, width, Dash.SOLID);
    }

    public Pen dashed(Dash other) {
        return new Pen(colour, width, other);
    }
}
