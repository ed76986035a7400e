// SPDX-License-Identifier: Apache-2.0
package foldwright.report.draw;

/** A rectangle: left upper corner and size. */
public record Box(double x, double y, double width, double height) {
    public double right() {
        return x + width;
    }

    public double bottom() {
        return y + height;
    }
}
