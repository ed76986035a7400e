// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.paint;

/** Which point of a line of text lies at the given x. */
public enum Align {
    LEFT(0),
    CENTRE(0.5f),
    RIGHT(1);

    /** Share of the width that lies left of the place. */
    public final float share;

    Align(float share) {
        this.share = share;
    }
}
