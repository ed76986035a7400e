// SPDX-License-Identifier: Apache-2.0
package foldwright.report.draw;

/** Which point of a text stands at the given x. */
public enum Align {
    START(0),
    MIDDLE(0.5),
    END(1);

    private final double part;

    Align(double part) {
        this.part = part;
    }

    /** Part of the width that lies left of the point. */
    public double part() {
        return part;
    }
}
