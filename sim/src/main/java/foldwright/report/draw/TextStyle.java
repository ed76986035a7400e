// SPDX-License-Identifier: Apache-2.0
package foldwright.report.draw;

import java.util.Objects;
import java.util.Optional;

/**
 * How a text is drawn.
 *
 * @param face type face
 * @param size height of the em
 * @param colour colour of the letters
 * @param align which point of the text stands at x; y is the base line
 * @param halo colour of a rim two units wide that parts the letters from what lies below
 */
public record TextStyle(Face face, double size, Colour colour, Align align, Optional<Colour> halo) {
    public TextStyle {
        Objects.requireNonNull(face, "face");
        Objects.requireNonNull(colour, "colour");
        Objects.requireNonNull(align, "align");
        Objects.requireNonNull(halo, "halo");
    }

    public static TextStyle of(Face face, double size, Colour colour) {
        return new TextStyle(face, size, colour, Align.START, Optional.empty());
    }

    public TextStyle aligned(Align other) {
        return new TextStyle(face, size, colour, other, halo);
    }

    public TextStyle coloured(Colour other) {
        return new TextStyle(face, size, other, align, halo);
    }

    public TextStyle haloed(Colour rim) {
        return new TextStyle(face, size, colour, align, Optional.of(rim));
    }

    /** Width of a text in this style. */
    public double width(String text) {
        return FontMetrics.of(face).width(text, size);
    }
}
