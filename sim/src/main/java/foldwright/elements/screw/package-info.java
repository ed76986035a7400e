// SPDX-License-Identifier: Apache-2.0

/**
 * Lead screws: torque, efficiency, self-locking and stress of a power thread, nut pressure, collar
 * friction, and the trapezoidal sizes by designation.
 *
 * <p>Start at {@link foldwright.elements.screw.ScrewThread}; {@link
 * foldwright.elements.screw.TrapezoidalThread} finds one by name. Buckling and whirling of the
 * shaft are in {@code foldwright.elements.column}.
 */
package foldwright.elements.screw;
