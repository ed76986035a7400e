// SPDX-License-Identifier: Apache-2.0
package foldwright.report.plot;

import foldwright.report.draw.Face;
import foldwright.report.draw.Ground;
import foldwright.report.draw.Palette;
import foldwright.report.draw.TextStyle;

/** The sizes and faces of lettering in plots, on one palette. */
record Type(Palette palette) {
    TextStyle tick() {
        return TextStyle.of(Face.SANS, 13, palette.ground(Ground.INK2));
    }

    TextStyle label() {
        return TextStyle.of(Face.SANS, 13, palette.ground(Ground.INK));
    }

    TextStyle strong() {
        return TextStyle.of(Face.SANS_SEMIBOLD, 13, palette.ground(Ground.INK));
    }

    TextStyle title() {
        return TextStyle.of(Face.SANS_SEMIBOLD, 15, palette.ground(Ground.INK));
    }

    TextStyle subtitle() {
        return TextStyle.of(Face.SANS, 13, palette.ground(Ground.INK2));
    }

    TextStyle hint() {
        return TextStyle.of(Face.SANS_ITALIC, 13, palette.ground(Ground.INK2));
    }
}
