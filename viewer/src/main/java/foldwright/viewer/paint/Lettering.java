// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.paint;

import foldwright.report.draw.Face;

/**
 * How a line of text looks.
 *
 * @param em size [px]
 * @param colour 0xRRGGBB
 * @param halo colour of a rim that parts it from what lies below, or -1 for none
 */
public record Lettering(Face typeface, float em, int colour, int halo) {
    public Lettering(Face typeface, float em, int colour) {
        this(typeface, em, colour, -1);
    }

    /** The same with another colour. */
    public Lettering in(int other) {
        return new Lettering(typeface, em, other, halo);
    }
}
