// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.elements.spring.CoilStress;
import foldwright.elements.spring.WireGrade;
import foldwright.machine.spring.Coil;
import foldwright.machine.spring.ConicalCoil;
import foldwright.machine.spring.HelperSpring;
import foldwright.machine.spring.TorsionCoil;

/**
 * Stress of the wire of a helper spring and what it may carry.
 *
 * <p>Coils: shear stress K 8 F D/(pi d^3), allowed 0.45 of the tensile strength of hard drawn wire
 * before set removal; cones at their largest coil that is still free. Torsion springs: bending
 * stress K_i 32 M/(pi d^3). Budynas, Nisbett, Shigley's Mechanical Engineering Design, 9th ed.,
 * Eqs. 10-5, 10-7, 10-43, 10-44 and Table 10-6. Springs known by their rate alone have no wire to
 * judge.
 */
final class SpringWire {
    private final HelperSpring spring;
    private final double allowed;

    SpringWire(HelperSpring spring) {
        this.spring = spring;
        allowed = allowed(spring);
    }

    private static double allowed(HelperSpring spring) {
        try {
            if (spring.law() instanceof Coil c) {
                return WireGrade.get(c.grade()).shearLimit(c.wire());
            }
            if (spring.law() instanceof ConicalCoil c) {
                return WireGrade.get(c.grade()).shearLimit(c.wire());
            }
            return spring.law() instanceof TorsionCoil t
                    ? WireGrade.get(t.grade()).bendingLimit(t.wire())
                    : Double.NaN;
        } catch (IllegalArgumentException e) {
            // The grade is not made in this diameter: nobody states what it may carry.
            return Double.NaN;
        }
    }

    /** What the wire may carry [Pa]; not a number where it is not known. */
    double allowed() {
        return allowed;
    }

    /** Stress under a force [N] or moment [N·m]; not a number where the wire is not known [Pa]. */
    double stress(double load) {
        double size = Math.abs(load);
        if (spring.law() instanceof Coil c) {
            return CoilStress.corrected(size, c.meanDiameter(), c.wire());
        }
        if (spring.law() instanceof ConicalCoil c) {
            return SpringLaws.conical(c).correctedStress(size);
        }
        return spring.law() instanceof TorsionCoil t
                ? SpringLaws.torsion(t).stress(size)
                : Double.NaN;
    }
}
