// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.spring;

import foldwright.elements.Domain;

/**
 * Conical compression spring of constant pitch and round wire: its largest coil closes first, then
 * one after the other, so it stiffens.
 *
 * <p>The law and its source are in {@link ConicalLaw}. Lengths count the active coils only; end
 * coils add {@code endLength} to both free and solid length.
 *
 * @param wireDiameter d [m]
 * @param smallDiameter D1, mean diameter of the smallest active coil [m]
 * @param largeDiameter D2, mean diameter of the largest active coil [m]
 * @param activeCoils n_a [1]
 * @param activeLength L_a, free length of the active coils [m]
 * @param endLength height of the dead end coils, 2 d for squared and ground ends [m]
 * @param shearModulus G [Pa]
 */
public record ConicalSpring(
        double wireDiameter,
        double smallDiameter,
        double largeDiameter,
        double activeCoils,
        double activeLength,
        double endLength,
        double shearModulus) {

    public ConicalSpring {
        Domain.positive("wire diameter", wireDiameter, "m");
        Domain.positive("small mean diameter", smallDiameter, "m");
        Domain.positive("large mean diameter", largeDiameter, "m");
        Domain.positive("active coils", activeCoils, "1");
        Domain.positive("active length", activeLength, "m");
        Domain.notNegative("end length", endLength, "m");
        Domain.positive("shear modulus", shearModulus, "Pa");
        if (!(smallDiameter > wireDiameter && largeDiameter > smallDiameter)) {
            throw new IllegalArgumentException(
                    "wire, small and large mean diameter are "
                            + wireDiameter
                            + ", "
                            + smallDiameter
                            + ", "
                            + largeDiameter
                            + " m, allowed: growing in that order");
        }
        double solid =
                activeSolid(
                        wireDiameter,
                        (largeDiameter - smallDiameter) / (2 * activeCoils),
                        activeCoils);
        if (!(activeLength > solid)) {
            throw new IllegalArgumentException(
                    "active length is "
                            + activeLength
                            + " m, allowed: above its solid length, "
                            + solid
                            + " m");
        }
    }

    private static double activeSolid(double wire, double radiusStep, double coils) {
        return radiusStep >= wire ? 0 : coils * Math.sqrt(wire * wire - radiusStep * radiusStep);
    }

    /** Growth of the coil radius a turn, (D2 - D1)/(2 n_a) [m]. */
    public double radiusStep() {
        return (largeDiameter - smallDiameter) / (2 * activeCoils);
    }

    /** Whether the coils fit into one another, so that the active part closes to nothing. */
    public boolean telescopes() {
        return radiusStep() >= wireDiameter;
    }

    /** L_s, height of the closed active coils: 0 or n_a (d^2 - dr^2)^(1/2) [m]. */
    public double activeSolidLength() {
        return activeSolid(wireDiameter, radiusStep(), activeCoils);
    }

    /** T = L_a - L_s, deflection from free to solid [m]. */
    public double travel() {
        return activeLength - activeSolidLength();
    }

    /** Free length with end coils [m]. */
    public double freeLength() {
        return activeLength + endLength;
    }

    /** Solid length with end coils [m]. */
    public double solidLength() {
        return activeSolidLength() + endLength;
    }

    private double wireStiffness() {
        double d = wireDiameter;
        return shearModulus * d * d * d * d;
    }

    /** R = G d^4/[2 n_a (D1+D2)(D1^2+D2^2)] while no coil touches [N/m]. */
    public double initialRate() {
        double a = smallDiameter;
        double b = largeDiameter;
        return wireStiffness() / (2 * activeCoils * (a + b) * (a * a + b * b));
    }

    /** K = G d^4 T/(8 n_a): force times the cube of the diameter that closes under it [N·m³]. */
    double closingConstant() {
        return wireStiffness() * travel() / (8 * activeCoils);
    }

    /** P_T, force at which the largest coil closes [N]. */
    public double touchForce() {
        double b = largeDiameter;
        return closingConstant() / (b * b * b);
    }

    /** P_C, force at which the smallest coil closes [N]. */
    public double closingForce() {
        double a = smallDiameter;
        return closingConstant() / (a * a * a);
    }

    /** Largest mean diameter still free under that force [m]. */
    public double largestFreeDiameter(double force) {
        if (force <= touchForce()) {
            return largeDiameter;
        }
        return Math.max(smallDiameter, Math.cbrt(closingConstant() / force));
    }

    /** Coils still free under that force, n_f = n_a (D_f - D1)/(D2 - D1) [1]. */
    public double freeCoils(double force) {
        double share =
                (largestFreeDiameter(force) - smallDiameter) / (largeDiameter - smallDiameter);
        return activeCoils * share;
    }

    /** Deflection under a force [m]; all the travel from the closing force on. */
    public double deflection(double force) {
        if (force <= touchForce()) {
            return force / initialRate();
        }
        double u = largestFreeDiameter(force);
        double a = smallDiameter;
        double a4 = a * a * a * a;
        return travel() / (largeDiameter - a) * (largeDiameter - 0.75 * u - a4 / (4 * u * u * u));
    }

    /** Shear stress with the Bergstraesser factor at the largest coil still free [Pa]. */
    public double correctedStress(double force) {
        return CoilStress.corrected(force, largestFreeDiameter(force), wireDiameter);
    }

    /** Shear stress without factor at the largest coil still free [Pa]. */
    public double uncorrectedStress(double force) {
        return CoilStress.uncorrected(force, largestFreeDiameter(force), wireDiameter);
    }

    /** Force over length. */
    public ConicalLaw law(Attachment attachment) {
        return new ConicalLaw(this, attachment);
    }
}
