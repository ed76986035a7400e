// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.route;

/**
 * Where bridge and carriage are, by the origins of their frames.
 *
 * @param bridgeX bridge centre across the rails [m, base frame]
 * @param bridgeY bridge centre along the rails [m, base frame]
 * @param bridgeYaw skew, counter-clockwise seen from above [rad]
 * @param carriageX carriage origin across the rails [m, base frame]
 * @param carriageY carriage origin along the rails [m, base frame]
 * @param carriageYaw [rad]
 */
public record Pose(
        double bridgeX,
        double bridgeY,
        double bridgeYaw,
        double carriageX,
        double carriageY,
        double carriageYaw) {

    /** Square machine: carriage at x along the bridge, bridge at y along the rails [m]. */
    public static Pose at(double x, double y) {
        return new Pose(0, y, 0, x, y, 0);
    }

    /** Bridge turned by a skew about its centre, the carriage with it [m, rad]. */
    public static Pose skewed(double x, double y, double skew) {
        return new Pose(0, y, skew, x * Math.cos(skew), y + x * Math.sin(skew), skew);
    }
}
