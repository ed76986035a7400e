// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

/**
 * Where the tool works, from the carriage origin.
 *
 * @param x along the bridge [m]
 * @param y along the rails [m]
 * @param z upwards [m]
 */
public record ToolPoint(double x, double y, double z) {
    public ToolPoint {
        Checks.finite("tool x", x);
        Checks.finite("tool y", y);
        Checks.finite("tool z", z);
    }
}
