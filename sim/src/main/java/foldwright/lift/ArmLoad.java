// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

/**
 * What one arm carries at one pose.
 *
 * @param arm name of the arm, see {@link LiftNames}
 * @param bending largest bending moment in the plane of the arm, at its centre pin [N·m]
 * @param axial largest force along the arm, positive in compression [N]
 * @param stress largest normal stress: bending over the section with the pin hole taken out, plus
 *     axial [Pa]
 */
public record ArmLoad(String arm, double bending, double axial, double stress) {}
