// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.beam;

import foldwright.elements.Domain;
import foldwright.elements.beam.Section.Bending;
import java.util.Objects;

/**
 * A straight beam of one section, Euler-Bernoulli bending and St Venant torsion: small deflections,
 * length over some ten heights, load along an axis of symmetry, shear deflection left out.
 *
 * @param section cross-section
 * @param length between support and load, or between supports [m]
 * @param youngsModulus E; the creep modulus for loads that stay on plastics [Pa]
 * @param shearModulus G [Pa]
 */
public record Beam(Section section, double length, double youngsModulus, double shearModulus) {
    public Beam {
        Objects.requireNonNull(section, "section");
        Domain.positive("beam length", length, "m");
        Domain.positive("Young's modulus", youngsModulus, "Pa");
        Domain.positive("shear modulus", shearModulus, "Pa");
    }

    /** E I [N·m²]. */
    public double bendingStiffness(Bending bending) {
        return youngsModulus * section.secondMoment(bending);
    }

    /** Force a metre at the tip of a cantilever, 3 E I/L^3 [N/m]. */
    public double tipStiffness(Bending bending) {
        return 3 * bendingStiffness(bending) / (length * length * length);
    }

    /** Tip deflection of a cantilever, F L^3/(3 E I) [m]. */
    public double tipDeflection(double force, Bending bending) {
        return force / tipStiffness(bending);
    }

    /** Tip slope of a cantilever, F L^2/(2 E I) [rad]. */
    public double tipSlope(double force, Bending bending) {
        return force * length * length / (2 * bendingStiffness(bending));
    }

    /** Stress at the root of a cantilever, F L c/I [Pa]. */
    public double rootStress(double force, Bending bending) {
        return section.bendingStress(force * length, bending);
    }

    /** Tip deflection of a cantilever under an even load q [N/m], q L^4/(8 E I) [m]. */
    public double tipDeflectionUnderEvenLoad(double loadPerLength, Bending bending) {
        return loadPerLength * Math.pow(length, 4) / (8 * bendingStiffness(bending));
    }

    /** Middle deflection of a beam on two simple supports, F L^3/(48 E I) [m]. */
    public double middleDeflection(double force, Bending bending) {
        return force * length * length * length / (48 * bendingStiffness(bending));
    }

    /** Angle of twist over the length, T L/(G J) [rad]. */
    public double twist(double torque) {
        return torque / torsionStiffness();
    }

    /** G J/L [N·m/rad]. */
    public double torsionStiffness() {
        return shearModulus * section.torsionConstant() / length;
    }
}
