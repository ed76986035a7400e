// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.spring;

import foldwright.elements.Domain;
import java.util.OptionalDouble;

/**
 * Cylindrical compression spring of round wire.
 *
 * <p>Rate G d^4/(8 D^3 n) (Shigley 9th ed. Eq. 10-9; EN 13906-1), small pitch angle, coils free of
 * the guide. Not covered: change of coil diameter under load, surge.
 *
 * @param wireDiameter d [m]
 * @param meanDiameter D [m]
 * @param activeCoils n [1]
 * @param totalCoils N_t, the dead ones at the ends included [1]
 * @param freeLength L0 [m]
 * @param solidLength length with all coils touching [m]
 * @param shearModulus G [Pa]
 */
public record CylindricalSpring(
        double wireDiameter,
        double meanDiameter,
        double activeCoils,
        double totalCoils,
        double freeLength,
        double solidLength,
        double shearModulus) {

    public CylindricalSpring {
        Domain.positive("wire diameter", wireDiameter, "m");
        Domain.positive("mean coil diameter", meanDiameter, "m");
        Domain.positive("active coils", activeCoils, "1");
        Domain.within("total coils", totalCoils, activeCoils, Double.MAX_VALUE, "1");
        Domain.positive("free length", freeLength, "m");
        Domain.positive("solid length", solidLength, "m");
        Domain.positive("shear modulus", shearModulus, "Pa");
        if (!(meanDiameter > wireDiameter)) {
            throw new IllegalArgumentException(
                    "mean coil diameter is "
                            + meanDiameter
                            + " m, allowed: above the wire diameter, "
                            + wireDiameter
                            + " m");
        }
        if (!(freeLength > solidLength)) {
            throw new IllegalArgumentException(
                    "free length is "
                            + freeLength
                            + " m, allowed: above the solid length, "
                            + solidLength
                            + " m");
        }
    }

    /**
     * A spring whose total coils and solid length follow from the form of its ends.
     *
     * @param wireDiameter d [m]
     * @param meanDiameter D [m]
     * @param activeCoils n [1]
     * @param ends form of the ends
     * @param freeLength L0 [m]
     * @param shearModulus G [Pa]
     */
    public static CylindricalSpring wound(
            double wireDiameter,
            double meanDiameter,
            double activeCoils,
            EndCoils ends,
            double freeLength,
            double shearModulus) {
        return new CylindricalSpring(
                wireDiameter,
                meanDiameter,
                activeCoils,
                ends.totalCoils(activeCoils),
                freeLength,
                ends.solidLength(wireDiameter, activeCoils),
                shearModulus);
    }

    /** R = G d^4/(8 D^3 n) [N/m]. */
    public double rate() {
        double d = wireDiameter;
        double m = meanDiameter;
        return shearModulus * d * d * d * d / (8 * m * m * m * activeCoils);
    }

    /** C = D/d [1]. */
    public double index() {
        return meanDiameter / wireDiameter;
    }

    /** Force with all coils touching [N]. */
    public double solidForce() {
        return rate() * (freeLength - solidLength);
    }

    /** Corrected shear stress, K_B 8 F D/(pi d^3) [Pa], for loads that come and go. */
    public double correctedStress(double force) {
        return CoilStress.corrected(force, meanDiameter, wireDiameter);
    }

    /** Uncorrected shear stress 8 F D/(pi d^3) [Pa], for static strength and solid length. */
    public double uncorrectedStress(double force) {
        return CoilStress.uncorrected(force, meanDiameter, wireDiameter);
    }

    /**
     * Deflection at which the spring bows out sideways [m],
     *
     * <pre>
     *   y_cr = L0 E/(2(E-G)) {1 - [1 - (2 pi^2 (E-G)/(2G+E))/(nu L0/D)^2]^(1/2)}
     * </pre>
     *
     * (Shigley 9th ed. Eq. 10-10; the form of EN 13906-1 is the same expression.)
     *
     * @param youngsModulus E of the wire [Pa]
     * @param seats how the ends are guided
     * @return empty if the spring is too stocky to buckle at any deflection
     */
    public OptionalDouble bucklingDeflection(double youngsModulus, EndSeats seats) {
        double e = youngsModulus;
        double g = shearModulus;
        double slenderness = seats.factor() * freeLength / meanDiameter;
        double bracket =
                1 - 2 * Math.PI * Math.PI * (e - g) / ((2 * g + e) * slenderness * slenderness);
        return bracket < 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(freeLength * e / (2 * (e - g)) * (1 - Math.sqrt(bracket)));
    }

    /** Longest free length that cannot buckle, (pi D/nu) [2(E-G)/(2G+E)]^(1/2) [m]. */
    public double longestStableLength(double youngsModulus, EndSeats seats) {
        double e = youngsModulus;
        double g = shearModulus;
        return Math.PI * meanDiameter / seats.factor() * Math.sqrt(2 * (e - g) / (2 * g + e));
    }

    /** Mass of the wire, ends included [kg]. */
    public double mass(double density) {
        double wire = Math.PI * meanDiameter * totalCoils;
        return density * wire * Math.PI * wireDiameter * wireDiameter / 4;
    }

    /** Force over length. */
    public LinearLaw law(Attachment attachment) {
        return new LinearLaw(rate(), freeLength, solidLength, attachment, SpringLaw.Measure.LENGTH);
    }
}
