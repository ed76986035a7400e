// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

/**
 * What the blocks of one rail give together to what they carry.
 *
 * @param side force across the rail: of a leg rail on the bridge in +x, of the bridge on the
 *     carriage in +y [N]
 * @param yaw moment about the middle of the blocks, positive counter-clockwise seen from above,
 *     pairs of side forces included [N m]
 */
public record RailLoad(double side, double yaw) {
    /** No load. */
    public static final RailLoad NONE = new RailLoad(0, 0);

    /** Of a leg rail at the kernel's place. */
    static RailLoad leg(GantryKernel k, GuideBlock.Rail rail) {
        BridgeGuide guide = k.model.bridgeGuide();
        double turned = k.bridge.yaw - guide.squareness();
        double middle =
                k.bridge.x - k.model.bridge().centreX() + k.model.bridge().centreY() * k.bridge.yaw;
        double side = 0;
        double yaw = 0;
        for (GuideBlock b : guide.blocks()) {
            if (b.rail() == rail) {
                double x = middle - b.along() * turned;
                double force = -b.lateralStiffness() * beyond(x, b.lateralPlay());
                side += force;
                yaw -= b.along() * force + b.yawStiffness() * beyond(turned, b.yawPlay());
            }
        }
        return new RailLoad(side, yaw);
    }

    /** How far a place lies beyond its play, with its sign. */
    private static double beyond(double value, double free) {
        return Math.signum(value) * Math.max(0, Math.abs(value) - free);
    }
}
