// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.machine.linkage.Arm;
import foldwright.machine.part.Section;

/**
 * What is left of an arm's section where its centre pin passes through: the hole takes its diameter
 * out of the middle of the depth, so I = I₀ - b d³/12 and A = A₀ - b d with b the material that the
 * hole crosses (a solid bar's width, a tube's two walls).
 *
 * @param modulus section modulus 2 I/h [m³]
 * @param area [m²]
 */
public record NetSection(double modulus, double area) {
    /**
     * The section of an arm with a hole.
     *
     * @param hole diameter [m]
     */
    public static NetSection of(Arm arm, double hole) {
        Section s = arm.section();
        double across = s.drilledWidth();
        double moment = s.inPlaneMoment() - across * hole * hole * hole / 12;
        return new NetSection(moment / (s.depth() / 2), s.area() - across * hole);
    }

    /** Largest normal stress under a bending moment [N·m] and a force along the arm [N], in Pa. */
    public double stress(double bending, double axial) {
        return Math.abs(bending) / modulus + Math.abs(axial) / area;
    }
}
