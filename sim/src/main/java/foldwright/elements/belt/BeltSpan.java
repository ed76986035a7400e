// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.belt;

import foldwright.elements.Domain;

/**
 * A free straight length of belt: stretch and sound. Linear in strain; glass-fibre belts stiffen a
 * little with load (a straight line still fits with R² above 0.94: Wang et al., Robotics 7(4) 2018,
 * 75, abstract).
 */
public final class BeltSpan {
    private BeltSpan() {}

    /** EA/L [N/m]. */
    public static double stiffness(double stretchStiffness, double length) {
        return stretchStiffness / Domain.positive("span length", length, "m");
    }

    /**
     * First frequency of a plucked span, (1/2L)(T/m)^(1/2) [Hz]; bending stiffness raises it on
     * spans shorter than some 20 belt thicknesses (common practice, no source).
     *
     * @param tension T [N]
     * @param length L [m]
     * @param linearMass m [kg/m]
     */
    public static double pluckedFrequency(double tension, double length, double linearMass) {
        return Math.sqrt(tension / linearMass) / (2 * length);
    }

    /** Tension of a span that sounds at {@code frequency} [Hz], 4 m L^2 f^2 [N]. */
    public static double tensionOf(double frequency, double length, double linearMass) {
        return 4 * linearMass * length * length * frequency * frequency;
    }
}
