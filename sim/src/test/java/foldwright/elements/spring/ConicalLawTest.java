// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.spring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;

class ConicalLawTest extends SpringLawContract {
    private static final double MM = 1e-3;
    private static final double SHEAR = 81.5e9;

    @Provide
    Arbitrary<ConicalSpring> springs() {
        return Combinators.combine(
                        number(0.4, 3),
                        number(4, 12),
                        number(1.02, 4),
                        number(2, 15),
                        number(1.3, 4))
                .as(
                        (wire, index, taper, coils, stretch) ->
                                new ConicalSpring(
                                        wire * MM,
                                        wire * index * MM,
                                        wire * index * taper * MM,
                                        coils,
                                        wire * coils * stretch * MM,
                                        2 * wire * MM,
                                        SHEAR));
    }

    @Provide
    @Override
    Arbitrary<SpringLaw> laws() {
        return Combinators.combine(springs(), Arbitraries.of(Attachment.values()))
                .as(ConicalSpring::law);
    }

    @Override
    SpringLaw oneLaw() {
        return taper().law(Attachment.TOUCHING);
    }

    private static ConicalSpring taper() {
        return new ConicalSpring(1.2 * MM, 10 * MM, 22 * MM, 6, 40 * MM, 2.4 * MM, SHEAR);
    }

    @Override
    List<Double> kinks(SpringLaw law) {
        ConicalLaw cone = (ConicalLaw) law;
        return List.of(cone.touchLength(), cone.stopLength());
    }

    @Property(tries = 600, seed = "20261125")
    void forceInvertsTheDeflection(
            @ForAll("springs") ConicalSpring spring,
            @ForAll @Scale(4) @DoubleRange(min = 0.01, max = 0.98) double share) {
        double force = spring.closingForce() * share;
        double length = spring.freeLength() - spring.deflection(force);
        ConicalLaw law = spring.law(Attachment.TOUCHING);
        if (length > law.stopLength()) {
            // close to the last coil a small error of the length is a large one of the force
            double conditioning = law.stiffness(length) * spring.travel() / force;
            assertThat(law.force(length))
                    .isCloseTo(force, within(1e-13 * (1 + conditioning) * force * 10));
        }
    }

    /** Independent of the closed form: the wire in slices, each stopped by its share of travel. */
    @Property(tries = 600, seed = "20261125")
    void deflectionIsThatOfASlicedWire(
            @ForAll("springs") ConicalSpring spring,
            @ForAll @Scale(4) @DoubleRange(min = 0.01, max = 1.1) double share) {
        double force = spring.closingForce() * share;
        int slices = 2_000;
        double wire = SHEAR * Math.pow(spring.wireDiameter(), 4);
        double coilsEach = spring.activeCoils() / slices;
        double travelEach = spring.travel() / slices;
        double sum = 0;
        for (int i = 0; i < slices; i++) {
            double d =
                    spring.smallDiameter()
                            + (i + 0.5)
                                    / slices
                                    * (spring.largeDiameter() - spring.smallDiameter());
            sum += Math.min(8 * force * d * d * d * coilsEach / wire, travelEach);
        }
        // one slice may be counted closed too early: 1/slices of the travel
        assertThat(spring.deflection(force)).isCloseTo(sum, within(spring.travel() / slices));
    }

    @Property(tries = 600, seed = "20261125")
    void tangentIsContinuousWhereTheFirstCoilCloses(@ForAll("springs") ConicalSpring spring) {
        ConicalLaw law = spring.law(Attachment.TOUCHING);
        double before = law.stiffness(law.touchLength() + 1e-12);
        double after = law.stiffness(law.touchLength() - 1e-12);
        assertThat(after).isCloseTo(before, within(1e-6 * before));
    }

    @Example
    void nearlyCylindricalConeIsTheCylinder() {
        // limit D1 -> D2 of the rate: G d^4/(8 D^3 n)
        ConicalSpring cone =
                new ConicalSpring(1 * MM, 9.9999 * MM, 10.0001 * MM, 8, 50 * MM, 0, SHEAR);
        CylindricalSpring cylinder =
                CylindricalSpring.wound(
                        1 * MM, 10 * MM, 8, EndCoils.SQUARED_GROUND, 60 * MM, SHEAR);
        assertThat(cone.initialRate()).isCloseTo(cylinder.rate(), within(1e-6 * cylinder.rate()));
    }

    @Example
    void allTravelIsUsedAtTheClosingForce() {
        ConicalSpring spring = taper();
        assertThat(spring.deflection(spring.closingForce()))
                .isCloseTo(spring.travel(), within(1e-12));
        assertThat(spring.freeCoils(spring.closingForce())).isCloseTo(0, within(1e-9));
        assertThat(spring.freeCoils(1)).isEqualTo(6);
        assertThat(spring.freeLength() - spring.solidLength())
                .isCloseTo(spring.travel(), within(1e-15));
    }
}
