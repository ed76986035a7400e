// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.rail;

import foldwright.elements.Domain;
import foldwright.elements.bearing.PointContact;
import foldwright.elements.bearing.PointContact.Elastic;

/**
 * Stiffness of a block from the Hertz contacts of its balls: two loaded rows whose contact lines
 * slant by an angle, each ball between a groove of the rail and one of the block. No preload; true
 * blocks differ by a factor of 2 (preload, bending of the block).
 *
 * @param ballsPerRow under load
 * @param ballDiameter D [m]
 * @param conformity groove radius over ball diameter [1]
 * @param contactAngle slant against the plane of the rail foot, 45 degrees as a rule [rad]
 * @param steel elastic constants
 */
public record BlockContact(
        int ballsPerRow,
        double ballDiameter,
        double conformity,
        double contactAngle,
        Elastic steel) {

    public BlockContact {
        Domain.atLeast("balls per row", ballsPerRow, 1);
        Domain.positive("ball diameter", ballDiameter, "m");
        Domain.within("contact angle", contactAngle, 0.01, Math.PI / 2, "rad");
    }

    /** Load of a ball under a vertical force, F/(2 n sin a) [N]. */
    public double ballLoad(double force) {
        return force / (2 * ballsPerRow * Math.sin(contactAngle));
    }

    /** Vertical deflection, both contacts of a ball over sin a [m]. */
    public double deflection(double force) {
        PointContact groove = PointContact.ballInGroove(ballDiameter, conformity, 0, steel);
        return 2 * groove.approach(ballLoad(force)) / Math.sin(contactAngle);
    }

    /** Load over deflection [N/m]. */
    public double secantStiffness(double force) {
        return force / deflection(force);
    }

    /** Slope of load over deflection, 1.5 times the secant [N/m]. */
    public double tangentStiffness(double force) {
        return 1.5 * secantStiffness(force);
    }
}
