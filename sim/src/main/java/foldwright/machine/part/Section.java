// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.part;

import foldwright.machine.keys.Kind;

/** Cross-section of an arm, bar or beam. */
@Kind("Cross-section of an arm, bar or beam.")
public sealed interface Section
        permits Rectangle, RectangularTube, Round, RoundTube, SectionByNumbers {

    /** Area of material [m²]. */
    double area();

    /** Outer size in the plane of the scissor, for a bridge upwards [m]. */
    double depth();

    /** Outer size across the plane of the scissor, for a bridge sideways [m]. */
    double width();

    /**
     * Material that a pin hole across the section takes away over each of its diameter's height: of
     * a solid bar its width, of a tube both walls [m].
     */
    double drilledWidth();

    /** Second moment of area for bending in the plane of the scissor, for a bridge upwards [m⁴]. */
    double inPlaneMoment();

    /** Second moment of area for bending across that plane [m⁴]. */
    double acrossMoment();
}
