// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.bearing;

import foldwright.elements.Domain;
import foldwright.elements.bearing.PointContact.Elastic;

/**
 * Inside of a ball bearing, for its stiffness. Catalogues rarely tell it: groove conformity 0.51 to
 * 0.53 is usual.
 *
 * <p>Contact angle held constant; races rigid apart from the contacts.
 *
 * @param balls Z
 * @param ballDiameter D [m]
 * @param conformity f, groove radius over ball diameter, of both races [1]
 * @param pitchDiameter d_m of the ball centres [m]
 * @param contactAngle alpha, 0 for a radial bearing [rad]
 * @param steel elastic constants of balls and races
 */
public record BallGeometry(
        int balls,
        double ballDiameter,
        double conformity,
        double pitchDiameter,
        double contactAngle,
        Elastic steel) {

    /** Share of the radial load on the fullest ball times Z, zero clearance (4.37 of Stribeck). */
    public static final double STRIBECK = 4.37;

    public BallGeometry {
        Domain.atLeast("balls", balls, 1);
        Domain.positive("ball diameter", ballDiameter, "m");
        Domain.within("groove conformity", conformity, 0.5, 1, "1");
        Domain.positive("pitch diameter", pitchDiameter, "m");
        Domain.within("contact angle", contactAngle, 0, Math.toRadians(89), "rad");
    }

    /** Contact of a ball with the inner race. */
    public PointContact innerContact() {
        double gamma = gamma();
        double race = 2 * gamma / (ballDiameter * (1 - gamma));
        return PointContact.ballInGroove(ballDiameter, conformity, race, steel);
    }

    /** Contact of a ball with the outer race. */
    public PointContact outerContact() {
        double gamma = gamma();
        double race = -2 * gamma / (ballDiameter * (1 + gamma));
        return PointContact.ballInGroove(ballDiameter, conformity, race, steel);
    }

    private double gamma() {
        return ballDiameter * Math.cos(contactAngle) / pitchDiameter;
    }

    /** Approach of the races along the contact normal under a ball load, both contacts [m]. */
    public double normalApproach(double ballLoad) {
        return innerContact().approach(ballLoad) + outerContact().approach(ballLoad);
    }

    /** Ball load under a central thrust, F_a/(Z sin alpha) [N]. */
    public double ballLoadOfThrust(double thrust) {
        return thrust / (balls * Math.sin(contactAngle));
    }

    /**
     * Load of the fullest ball under a radial load at zero clearance, 4.37 F_r/(Z cos alpha) [N].
     */
    public double fullestBall(double radialLoad) {
        return STRIBECK * radialLoad / (balls * Math.cos(contactAngle));
    }

    /** Axial approach under thrust, normal approach over sin alpha [m]. */
    public double axialDeflection(double thrust) {
        return normalApproach(ballLoadOfThrust(thrust)) / Math.sin(contactAngle);
    }

    /**
     * Radial deflection at zero clearance, normal approach of the fullest ball over cos alpha [m].
     */
    public double radialDeflection(double radialLoad) {
        return normalApproach(fullestBall(radialLoad)) / Math.cos(contactAngle);
    }

    /** Slope of the radial load over deflection, 1.5 times load over deflection [N/m]. */
    public double radialStiffness(double radialLoad) {
        return 1.5 * radialLoad / radialDeflection(radialLoad);
    }

    /**
     * Palmgren's short form, 4.36e-4 Q^(2/3)/D^(1/3) (N, mm) for both races together along the
     * normal (quoted in Harris, constant from memory); within 5 % of the full solution at
     * conformity 0.52 [m].
     */
    public static double palmgrenApproach(double ballLoad, double ballDiameter) {
        double mm = 4.36e-4 * Math.cbrt(ballLoad * ballLoad) / Math.cbrt(ballDiameter * 1e3);
        return mm * 1e-3;
    }
}
