// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.spring;

import foldwright.elements.Domain;
import java.util.Objects;

/**
 * Helical torsion spring of round wire, wound tighter as it is loaded.
 *
 * <p>Rate a turn E d^4/(10.186 D n) is the bending of the bare wire, E d^4/(10.8 D n) allows for
 * coil friction (Shigley 9th ed. Eqs. 10-48 to 10-51, from memory). Not covered: legs pressed out
 * of their plane.
 *
 * @param wireDiameter d [m]
 * @param meanDiameter D, unloaded [m]
 * @param bodyCoils turns of the body [1]
 * @param legLengths l1 + l2, lengths of both legs together; they bend along, 0 to leave out [m]
 * @param youngsModulus E [Pa]
 * @param rateForm bare wire or with coil friction
 */
public record TorsionSpring(
        double wireDiameter,
        double meanDiameter,
        double bodyCoils,
        double legLengths,
        double youngsModulus,
        RateForm rateForm) {

    /** Which of the two textbook rates is used. */
    public enum RateForm {
        /** 64/(2 pi) = 10.186: wire in pure bending. */
        BARE_WIRE(64 / (2 * Math.PI)),
        /** 10.8: measured, coil friction and curvature included. */
        WITH_COIL_FRICTION(10.8);

        private final double divisor;

        RateForm(double divisor) {
            this.divisor = divisor;
        }
    }

    public TorsionSpring {
        Domain.positive("wire diameter", wireDiameter, "m");
        Domain.positive("mean coil diameter", meanDiameter, "m");
        Domain.positive("body coils", bodyCoils, "1");
        Domain.notNegative("leg lengths", legLengths, "m");
        Domain.positive("Young's modulus", youngsModulus, "Pa");
        Objects.requireNonNull(rateForm, "rateForm");
        if (!(meanDiameter > wireDiameter)) {
            throw new IllegalArgumentException(
                    "mean coil diameter is "
                            + meanDiameter
                            + " m, allowed: above the wire diameter, "
                            + wireDiameter
                            + " m");
        }
    }

    /** N_a = N_b + (l1 + l2)/(3 pi D) [1]. */
    public double activeCoils() {
        return bodyCoils + legLengths / (3 * Math.PI * meanDiameter);
    }

    /** Moment a radian [N·m/rad]. */
    public double rate() {
        double d = wireDiameter;
        double perTurn =
                youngsModulus * d * d * d * d / (rateForm.divisor * meanDiameter * activeCoils());
        return perTurn / (2 * Math.PI);
    }

    /** C = D/d [1]. */
    public double index() {
        return meanDiameter / wireDiameter;
    }

    /** Bending stress at the inner fibre, K_i 32 M/(pi d^3) [Pa]. */
    public double stress(double moment) {
        double d = wireDiameter;
        return CoilStress.innerBending(index()) * 32 * moment / (Math.PI * d * d * d);
    }

    /** Mean diameter after winding in by an angle [rad], D N_b/(N_b + theta/2pi) [m]. */
    public double woundMeanDiameter(double angle) {
        return meanDiameter * bodyCoils / (bodyCoils + angle / (2 * Math.PI));
    }

    /** Room left between coil and mandrel after winding in by an angle, on the diameter [m]. */
    public double mandrelClearance(double angle, double mandrelDiameter) {
        return woundMeanDiameter(angle) - wireDiameter - mandrelDiameter;
    }

    /**
     * Moment over the angle between the legs.
     *
     * @param freeAngle angle without load [rad]
     * @param endAngle smallest angle of use, below {@code freeAngle} [rad]
     */
    public LinearLaw law(double freeAngle, double endAngle, Attachment attachment) {
        return new LinearLaw(rate(), freeAngle, endAngle, attachment, SpringLaw.Measure.ANGLE);
    }
}
