// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.part;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;

/**
 * A section of any form, by its numbers.
 *
 * @param area area of material [m²]
 * @param inPlaneMoment second moment of area for bending in the plane of the scissor, for a bridge
 *     upwards [m⁴]
 * @param acrossMoment second moment of area for bending across that plane [m⁴]
 * @param torsionConstant torsion constant [m⁴]
 * @param depth outer size in the plane of the scissor, for a bridge upwards [m]
 * @param width outer size across that plane [m]
 */
@Kind(value = "A section of any form, by its numbers.", word = "numbers")
public record SectionByNumbers(
        @Key(
                        value = "Area of material",
                        is = Dimension.AREA,
                        range = "(0 mm2, 1 m2]",
                        example = "96 mm2")
                double area,
        @Key(
                        value =
                                "Second moment of area for bending in the plane of the scissor, for a bridge upwards",
                        is = Dimension.SECOND_MOMENT,
                        range = "(0 mm4, 1 m4]",
                        example = "2048 mm4")
                double inPlaneMoment,
        @Key(
                        value = "Second moment of area for bending across that plane",
                        is = Dimension.SECOND_MOMENT,
                        range = "(0 mm4, 1 m4]",
                        example = "288 mm4")
                double acrossMoment,
        @Key(
                        value = "Torsion constant",
                        is = Dimension.SECOND_MOMENT,
                        range = "(0 mm4, 1 m4]",
                        example = "880 mm4")
                double torsionConstant,
        @Key(
                        value = "Outer size in the plane of the scissor, for a bridge upwards",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 1 m]",
                        example = "16 mm")
                double depth,
        @Key(
                        value = "Outer size across that plane",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 1 m]",
                        example = "6 mm")
                double width)
        implements Section {
    /** Checks every value against its key. */
    public SectionByNumbers {
        Keys.check(
                SectionByNumbers.class,
                area,
                inPlaneMoment,
                acrossMoment,
                torsionConstant,
                depth,
                width);
    }

    @Override
    public double drilledWidth() {
        return Math.min(width, area / depth);
    }
}
