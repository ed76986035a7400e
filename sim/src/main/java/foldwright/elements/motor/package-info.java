// SPDX-License-Identifier: Apache-2.0

/**
 * Hybrid stepper motors: electrical model, torque over speed, load angle and step loss, frames and
 * typical data.
 *
 * <p>{@link foldwright.elements.motor.HybridStepper} is what is bought; with a {@link
 * foldwright.elements.motor.StepperDrive} it gives a {@link foldwright.elements.motor.PullOut}
 * curve; {@link foldwright.elements.motor.LoadAngle} is the torque over rotor lag that a time run
 * integrates.
 */
package foldwright.elements.motor;
