// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.column;

import foldwright.elements.Domain;

/**
 * A straight round shaft under central thrust.
 *
 * <p>Shigley 9th ed. Eqs. 4-43, 4-44, 4-48 pp. 182-185. Not covered: eccentric load, a bent shaft
 * (rolled screws are straight within about 0.8 mm a metre as delivered), side load. Keep below half
 * to 80 % of the critical load (screw makers' advice).
 *
 * @param diameter solid diameter, of a screw its root d3 [m]
 * @param length free length between the ends [m]
 * @param youngsModulus E [Pa]
 * @param yieldStrength S_y [Pa]
 */
public record RoundColumn(
        double diameter, double length, double youngsModulus, double yieldStrength) {

    public RoundColumn {
        Domain.positive("column diameter", diameter, "m");
        Domain.positive("column length", length, "m");
        Domain.positive("Young's modulus", youngsModulus, "Pa");
        Domain.positive("yield strength", yieldStrength, "Pa");
    }

    /** Radius of gyration d/4 [m]. */
    public double radiusOfGyration() {
        return diameter / 4;
    }

    /** Cross-section [m²]. */
    public double area() {
        return Math.PI * diameter * diameter / 4;
    }

    /**
     * Critical load by Euler above the transition slenderness (2 pi^2 C E/S_y)^(1/2), by Johnson's
     * parabola below.
     *
     * @param endConstant C, see {@link EndFixity} [1]
     */
    public CriticalLoad criticalLoad(double endConstant) {
        Domain.positive("end constant", endConstant, "1");
        double slenderness = length / radiusOfGyration();
        double transition = transition(endConstant, youngsModulus, yieldStrength);
        if (slenderness > transition) {
            double force =
                    area()
                            * endConstant
                            * Math.PI
                            * Math.PI
                            * youngsModulus
                            / (slenderness * slenderness);
            return new CriticalLoad(force, slenderness, transition, CriticalLoad.Curve.EULER);
        }
        double drop = yieldStrength * slenderness / (2 * Math.PI);
        double force = area() * (yieldStrength - drop * drop / (endConstant * youngsModulus));
        return new CriticalLoad(force, slenderness, transition, CriticalLoad.Curve.JOHNSON);
    }

    /** Slenderness (2 pi^2 C E/S_y)^(1/2) where Euler and Johnson meet, Eq. 4-44 [1]. */
    public static double transition(
            double endConstant, double youngsModulus, double yieldStrength) {
        return Math.PI * Math.sqrt(2 * endConstant * youngsModulus / yieldStrength);
    }

    /**
     * Smallest diameter that carries a critical load, by the curve that its own slenderness asks
     * for: Euler (64 P L^2/(pi^3 C E))^(1/4), Johnson 2 (P/(pi S_y) + S_y L^2/(pi^2 C E))^(1/2)
     * (Shigley 9th ed. Example 4-17).
     *
     * @param force critical load, design factor included [N]
     * @param length free length [m]
     * @param endConstant C [1]
     * @return diameter [m]
     */
    public static double diameterFor(
            double force,
            double length,
            double endConstant,
            double youngsModulus,
            double yieldStrength) {
        double pi2 = Math.PI * Math.PI;
        double euler =
                Math.pow(
                        64
                                * force
                                * length
                                * length
                                / (pi2 * Math.PI * endConstant * youngsModulus),
                        0.25);
        if (4 * length / euler > transition(endConstant, youngsModulus, yieldStrength)) {
            return euler;
        }
        double squash = force / (Math.PI * yieldStrength);
        double bend = yieldStrength * length * length / (pi2 * endConstant * youngsModulus);
        return 2 * Math.sqrt(squash + bend);
    }
}
