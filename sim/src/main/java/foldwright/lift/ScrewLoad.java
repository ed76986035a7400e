// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

/**
 * What the most loaded screw carries at one pose.
 *
 * @param force along the screw at its nut, positive when the screw pushes the lift up [N]
 * @param torque that turns the screw in the sense of the motion, collar included [N·m]; negative
 *     when the load turns it and the motor must brake
 * @param speed of the screw, positive [rad/s]
 * @param freeLength between the supports that hold it against buckling at this pose [m]
 * @param bucklingLoad axial compression at which that length buckles [N]
 * @param whirlSpeed speed at which that length whirls [rad/s]
 * @param nutPressure mean pressure on the thread flanks in the nut [Pa]
 */
public record ScrewLoad(
        double force,
        double torque,
        double speed,
        double freeLength,
        double bucklingLoad,
        double whirlSpeed,
        double nutPressure) {}
