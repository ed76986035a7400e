// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

/**
 * Loads of the blocks at one instant: the largest by size, and those of each leg rail.
 *
 * @param legSide side force of one block of the leg rails, yaw of spaced blocks included [N]
 * @param legYaw yaw moment of one block of the leg rails, where there is one block [N m]
 * @param carriageSide side force of one block of the carriage, yaw of a spaced pair included [N]
 * @param carriageYaw yaw moment of one block of the carriage, where there is one block [N m]
 * @param carriageTilt moment about the axes in the plane, mass times acceleration times height of
 *     the centre of mass above the blocks, shared by the blocks [N m]
 * @param left blocks of the left leg rail together, with signs
 * @param right blocks of the right leg rail together, with signs
 */
public record BlockLoads(
        double legSide,
        double legYaw,
        double carriageSide,
        double carriageYaw,
        double carriageTilt,
        RailLoad left,
        RailLoad right) {

    static BlockLoads of(GantryKernel k) {
        double legSide = 0;
        double legYaw = 0;
        BridgeGuide guide = k.model.bridgeGuide();
        for (GuideBlock b : guide.blocks()) {
            double x =
                    k.bridge.x
                            - k.model.bridge().centreX()
                            + (k.model.bridge().centreY() - b.along()) * k.bridge.yaw
                            + b.along() * guide.squareness();
            double yaw = k.bridge.yaw - guide.squareness();
            double moment = b.yawStiffness() * beyond(yaw, b.yawPlay());
            double force = b.lateralStiffness() * beyond(x, b.lateralPlay());
            legSide = Math.max(legSide, b.group().side(force, moment));
            legYaw = Math.max(legYaw, b.group().yaw(moment));
        }
        CarriageGuide c = k.model.carriageGuide();
        double side = Math.abs(k.carriageForce()) / c.blocks();
        double yaw = Math.abs(k.carriageMoment());
        boolean pair = c.blocks() > 1 && c.spacing() > 0;
        BodyMass mass = k.model.carriage();
        double tilt =
                mass.mass() * Math.hypot(k.carriage.ax, k.carriage.ay) * Math.abs(mass.centreZ());
        return new BlockLoads(
                legSide,
                legYaw,
                pair ? side + yaw / c.spacing() : side,
                pair ? 0 : yaw / c.blocks(),
                tilt / c.blocks(),
                RailLoad.leg(k, GuideBlock.Rail.LEFT),
                RailLoad.leg(k, GuideBlock.Rail.RIGHT));
    }

    private static double beyond(double value, double free) {
        return Math.max(0, Math.abs(value) - free);
    }
}
