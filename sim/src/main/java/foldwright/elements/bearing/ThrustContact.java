// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.bearing;

import foldwright.elements.Domain;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Angular-contact bearing under pure thrust, its contact angle growing with the load (T. A. Harris,
 * <i>Rolling Bearing Analysis</i>, 3rd ed. 1991, ch. 6, from memory):
 *
 * <pre>
 *   F_a/(Z D^2 K) = sin(alpha) (cos(alpha0)/cos(alpha) - 1)^1.5
 *   delta_a = (f_i + f_o - 1) D sin(alpha - alpha0)/cos(alpha)
 * </pre>
 *
 * @param balls Z
 * @param ballDiameter D [m]
 * @param conformitySum f_i + f_o [1]
 * @param freeAngle alpha0, contact angle without load [rad]
 * @param constant K: load of a ball over D^2 at a relative approach of 1 [Pa]
 */
public record ThrustContact(
        int balls, double ballDiameter, double conformitySum, double freeAngle, double constant) {

    public ThrustContact {
        Domain.atLeast("balls", balls, 1);
        Domain.positive("ball diameter", ballDiameter, "m");
        Domain.within("sum of conformities", conformitySum, 1.0001, 2, "1");
        Domain.within("free contact angle", freeAngle, 1e-3, Math.toRadians(80), "rad");
        Domain.positive("load constant", constant, "Pa");
    }

    /**
     * The load constant from the Hertz contacts of the bearing instead of a chart: K = K_n (B
     * D)^1.5/D^2 with Q = K_n delta_n^1.5 and B = f_i + f_o - 1, at the free contact angle.
     */
    public static ThrustContact of(BallGeometry geometry) {
        double sum = 2 * geometry.conformity();
        double reach = (sum - 1) * geometry.ballDiameter();
        double normal = Math.pow(geometry.normalApproach(1), -1.5);
        double d = geometry.ballDiameter();
        double constant = normal * Math.pow(reach, 1.5) / (d * d);
        return new ThrustContact(geometry.balls(), d, sum, geometry.contactAngle(), constant);
    }

    /** Contact angle under thrust F_a [rad]. */
    public double angle(double thrust) {
        double wanted = thrust / (balls * ballDiameter * ballDiameter * constant);
        double c0 = Math.cos(freeAngle);
        return new BrentSolver(1e-14)
                .solve(
                        200,
                        a ->
                                Math.sin(a) * Math.pow(Math.max(0, c0 / Math.cos(a) - 1), 1.5)
                                        - wanted,
                        freeAngle,
                        Math.toRadians(89.9));
    }

    /** Axial deflection under thrust F_a [m]. */
    public double deflection(double thrust) {
        double a = angle(thrust);
        return (conformitySum - 1) * ballDiameter * Math.sin(a - freeAngle) / Math.cos(a);
    }
}
