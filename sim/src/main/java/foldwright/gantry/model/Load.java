// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

/**
 * What acts on a gantry in steady acceleration.
 *
 * @param ax acceleration of the carriage along the bridge [m/s2]
 * @param ay acceleration of bridge and carriage along the rails [m/s2]
 * @param carriageFriction against motion in +x; reverse the sign for motion in -x [N]
 * @param railFriction of both rails together against motion in +y [N]
 * @param toolX force of the process on the tool [N]
 * @param toolY [N]
 */
public record Load(
        double ax,
        double ay,
        double carriageFriction,
        double railFriction,
        double toolX,
        double toolY) {
    /** At rest. */
    public static final Load NONE = new Load(0, 0, 0, 0, 0, 0);

    public Load {
        Checks.finite("ax", ax);
        Checks.finite("ay", ay);
        Checks.finite("carriage friction", carriageFriction);
        Checks.finite("rail friction", railFriction);
        Checks.finite("tool force x", toolX);
        Checks.finite("tool force y", toolY);
    }

    /** Acceleration alone [m/s2]. */
    public static Load accelerating(double ax, double ay) {
        return new Load(ax, ay, 0, 0, 0, 0);
    }
}
