// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.motor;

/**
 * Largest torque a stepper gives at a steady speed before it falls out of step.
 *
 * <p>Even in speed. Pure, allocation-free.
 */
public sealed interface PullOut permits ElectricalPullOut, MeasuredPullOut {
    /**
     * Pull-out torque [N·m], never negative.
     *
     * @param speed shaft speed of either sign [rad/s]
     */
    double torque(double speed);

    /** Speed beyond which the torque is zero or not known [rad/s]. */
    double fastest();
}
