// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.spring;

/**
 * Stress factors of a wound round wire. C = D/d is the spring index; useful from 4 to 12, a
 * manufacturer's usual range.
 */
public final class CoilStress {
    private CoilStress() {}

    /**
     * K_W = (4C-1)/(4C-4) + 0.615/C, curvature and direct shear (Wahl; Shigley 9th ed. Eq. 10-4).
     */
    public static double wahl(double index) {
        return (4 * index - 1) / (4 * index - 4) + 0.615 / index;
    }

    /**
     * K_B = (4C+2)/(4C-3) (Bergstraesser; Shigley 9th ed. Eq. 10-5), identical to the factor
     * (w+0.5)/(w-0.75) of EN 13906-1.
     */
    public static double bergstraesser(double index) {
        return (4 * index + 2) / (4 * index - 3);
    }

    /** Inner-fibre bending factor of a torsion spring, (4C^2-C-1)/(4C(C-1)) (Shigley Eq. 10-43). */
    public static double innerBending(double index) {
        return (4 * index * index - index - 1) / (4 * index * (index - 1));
    }

    /** Torsion stress without factor, 8 F D/(pi d^3) [Pa]. */
    public static double uncorrected(double force, double meanDiameter, double wireDiameter) {
        double d = wireDiameter;
        return 8 * force * meanDiameter / (Math.PI * d * d * d);
    }

    /** Torsion stress with the Bergstraesser factor [Pa]. */
    public static double corrected(double force, double meanDiameter, double wireDiameter) {
        return bergstraesser(meanDiameter / wireDiameter)
                * uncorrected(force, meanDiameter, wireDiameter);
    }
}
