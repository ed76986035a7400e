// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

/**
 * What one motor must give and can give at one pose.
 *
 * @param needed torque in the sense of the motion [N·m]; negative when the load drives the motor
 * @param speed of the motor for the asked deck speed, positive [rad/s]
 * @param available pull-out torque at that speed [N·m]
 */
public record MotorLoad(double needed, double speed, double available) {
    /**
     * Available over needed, whichever way the motor must push; infinite when nothing is needed.
     */
    public double margin() {
        return needed == 0 ? Double.POSITIVE_INFINITY : available / Math.abs(needed);
    }
}
