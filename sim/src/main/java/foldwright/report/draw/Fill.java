// SPDX-License-Identifier: Apache-2.0
package foldwright.report.draw;

import foldwright.study.Verdict;
import java.util.List;

/** How an area is filled. */
public sealed interface Fill {
    /** One colour; opacity from 0 to 1. */
    record Flat(Colour colour, double opacity) implements Fill {}

    /**
     * The area of a verdict: tint plus the verdict's texture, 6 units a tile, fixed to the surface
     * (holds plain, tight dots of 2.1, fails stripes of 2.2 rising at 45 degrees).
     */
    record Texture(Verdict verdict) implements Fill {}

    /** Stripes of 45 degrees in one colour on nothing, for what has two meanings at once. */
    record Stripes(Colour colour) implements Fill {}

    /** Colours from {@code from} to {@code to} along x in even steps, held outside. */
    record Ramp(List<Colour> stops, double from, double to) implements Fill {
        public Ramp {
            stops = List.copyOf(stops);
        }
    }

    static Fill of(Colour colour) {
        return new Flat(colour, 1);
    }
}
