// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.bearing;

import foldwright.elements.Domain;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Hertz contact of two curved elastic bodies at a point: the full elliptic solution.
 *
 * <p>With S the sum of the four principal curvatures, F their difference over S, K and E the
 * complete elliptic integrals of m = 1 - 1/kappa^2, and 1/E' = (1-nu1^2)/E1 + (1-nu2^2)/E2,
 *
 * <pre>
 *   F = ((kappa^2+1) E - 2 K)/((kappa^2-1) E)            gives kappa = a/b
 *   delta = delta* [3Q/(2 S E')]^(2/3) S/2,  delta* = (2K/pi)(pi/(2 kappa^2 E))^(1/3)
 *   a = (2 kappa^2 E/pi)^(1/3) [3Q/(2 S E')]^(1/3),  b = a/kappa,  p = 3Q/(2 pi a b)
 * </pre>
 *
 * (T. A. Harris, <i>Rolling Bearing Analysis</i>, 3rd ed. 1991, ch. 5; K. L. Johnson, <i>Contact
 * Mechanics</i>, 1985, ch. 4; both from memory). Smooth, frictionless, contact small against the
 * bodies, no yield: up to about 4200 MPa for bearing steel (ISO 76).
 */
public final class PointContact {
    private static final double CIRCLE = 1e-9;
    private static final double LONGEST = Math.log(1e4);

    private final double curvatureSum;
    private final double modulus;
    private final double kappa;
    private final double approachFactor;
    private final double axisFactor;

    private PointContact(double curvatureSum, double curvatureDifference, double modulus) {
        this.curvatureSum = Domain.positive("curvature sum", curvatureSum, "1/m");
        this.modulus = Domain.positive("contact modulus", modulus, "Pa");
        this.kappa = axisRatio(Math.abs(curvatureDifference));
        double m = 1 - 1 / (kappa * kappa);
        double second = EllipticIntegrals.second(m);
        double k2e = kappa * kappa * second;
        this.approachFactor =
                2 * EllipticIntegrals.first(m) / Math.PI * Math.cbrt(Math.PI / (2 * k2e));
        this.axisFactor = Math.cbrt(2 * k2e / Math.PI);
    }

    /**
     * Contact of a ball with a groove whose profile wraps around it.
     *
     * @param ballDiameter D [m]
     * @param conformity f, groove radius over ball diameter, above 0.5 [1]
     * @param raceCurvature of the groove's path along the rolling direction: positive on an inner
     *     race, negative on an outer one, 0 on a straight rail [1/m]
     * @param steel elastic constants of both bodies
     */
    public static PointContact ballInGroove(
            double ballDiameter, double conformity, double raceCurvature, Elastic steel) {
        Domain.positive("ball diameter", ballDiameter, "m");
        Domain.within("groove conformity", conformity, 0.5, 1, "1");
        double ball = 2 / ballDiameter;
        double groove = -1 / (conformity * ballDiameter);
        double sum = 2 * ball + raceCurvature + groove;
        double difference = (raceCurvature - groove) / sum;
        return new PointContact(sum, difference, modulus(steel, steel));
    }

    /**
     * Contact of two spheres, or of a sphere with a flat.
     *
     * @param radius of the first [m]
     * @param otherRadius of the second, infinite for a flat, negative for a hollow [m]
     */
    public static PointContact spheres(
            double radius, double otherRadius, Elastic first, Elastic second) {
        return new PointContact(2 / radius + 2 / otherRadius, 0, modulus(first, second));
    }

    private static double modulus(Elastic a, Elastic b) {
        return 1 / (a.compliance() + b.compliance());
    }

    /**
     * Elastic constants of a contact partner.
     *
     * @param youngsModulus E [Pa]
     * @param poissonsRatio nu [1]
     */
    public record Elastic(double youngsModulus, double poissonsRatio) {
        /** Bearing steel, 206 GPa and 0.3. */
        public static final Elastic STEEL = new Elastic(206e9, 0.3);

        public Elastic {
            Domain.positive("Young's modulus", youngsModulus, "Pa");
            Domain.within("Poisson's ratio", poissonsRatio, 0, 0.5, "1");
        }

        private double compliance() {
            return (1 - poissonsRatio * poissonsRatio) / youngsModulus;
        }
    }

    private static double axisRatio(double difference) {
        if (difference < CIRCLE) {
            return 1;
        }
        double low = 1e-4;
        if (curvatureDifference(Math.exp(low)) > difference) {
            return 1;
        }
        return Math.exp(
                new BrentSolver(1e-15, 1e-14)
                        .solve(
                                200,
                                x -> curvatureDifference(Math.exp(x)) - difference,
                                low,
                                LONGEST));
    }

    private static double curvatureDifference(double kappa) {
        double m = 1 - 1 / (kappa * kappa);
        double first = EllipticIntegrals.first(m);
        double second = EllipticIntegrals.second(m);
        double k2 = kappa * kappa;
        return ((k2 + 1) * second - 2 * first) / ((k2 - 1) * second);
    }

    /** kappa = a/b, long over short half axis of the contact ellipse [1]. */
    public double axisRatio() {
        return kappa;
    }

    /** Approach of the bodies under load Q [m]. */
    public double approach(double load) {
        double base = 1.5 * load / (curvatureSum * modulus);
        return approachFactor * Math.cbrt(base * base) * curvatureSum / 2;
    }

    /** K of Q = K delta^1.5 [N/m^1.5]. */
    public double stiffnessConstant() {
        return Math.pow(approach(1), -1.5);
    }

    /** Long half axis a of the ellipse [m]. */
    public double longHalfAxis(double load) {
        return axisFactor * Math.cbrt(1.5 * load / (curvatureSum * modulus));
    }

    /** Short half axis b of the ellipse [m]. */
    public double shortHalfAxis(double load) {
        return longHalfAxis(load) / kappa;
    }

    /** Pressure in the middle, 3Q/(2 pi a b) [Pa]. */
    public double peakPressure(double load) {
        return 1.5 * load / (Math.PI * longHalfAxis(load) * shortHalfAxis(load));
    }
}
