// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

/**
 * What the most loaded screw carries at one pose.
 *
 * @param force on its nut in the raising sense: positive when the screw pushes or pulls the lift
 *     up, negative when it holds it down [N]
 * @param torque that turns the screw in the sense of the motion, collar included [N·m]; negative
 *     when the load turns it and the motor must brake
 * @param speed of the screw, positive [rad/s]
 * @param freeLength from bearing to nut at this pose [m]
 * @param bucklingLoad compression at which that length buckles, Euler or Johnson with the
 *     recommended end constants; infinite while the screw is pulled [N]
 * @param whirlSpeed speed at which the whole screw whirls without load [rad/s]
 * @param nutPressure mean pressure on the thread flanks in the nut [Pa]
 */
public record ScrewLoad(
        double force,
        double torque,
        double speed,
        double freeLength,
        double bucklingLoad,
        double whirlSpeed,
        double nutPressure) {
    /** Compression over buckling load, zero while pulled [1]. */
    public double bucklingUse() {
        return Math.abs(force) / bucklingLoad;
    }
}
