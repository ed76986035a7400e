// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.linkage;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.machine.part.Material;
import foldwright.machine.part.Section;
import foldwright.quantity.Dimension;
import java.util.OptionalDouble;

/**
 * An arm of the scissor.
 *
 * @param length distance between its end pins [m]
 * @param section its cross-section
 * @param material its material
 * @param centrePin place of the centre pin, as a share of the length from the lower end [1]
 * @param planes whether arms of neighbouring stages lie in one plane and meet when folded
 * @param mass mass of one arm with its share of the pins; left out: from section, material and
 *     length [kg]
 * @param gap gap between the two arms of a cross [m]
 */
@Kind("An arm of the scissor.")
public record Arm(
        @Key(
                        value = "Distance between its end pins",
                        is = Dimension.LENGTH,
                        range = "(5 mm, 5 m]",
                        example = "190 mm")
                double length,
        @Key("Its cross-section") Section section,
        @Key(value = "Its material", example = "aluminium 6082-T6") Material material,
        @Key(
                        value =
                                "Place of the centre pin, as a share of the length from the lower end",
                        range = "[0.2, 0.8]",
                        orElse = "50 %",
                        example = "50 %")
                double centrePin,
        @Key(
                        value =
                                "Whether arms of neighbouring stages lie in one plane and meet when folded",
                        orElse = "shared")
                ArmPlanes planes,
        @Key(
                        value =
                                "Mass of one arm with its share of the pins; left out: from section, material and length",
                        is = Dimension.MASS,
                        range = "(0 kg, 100 kg]",
                        example = "0.1125 kg")
                OptionalDouble mass,
        @Key(
                        value = "Gap between the two arms of a cross",
                        is = Dimension.LENGTH,
                        range = "[0 mm, 500 mm]",
                        example = "2 mm")
                OptionalDouble gap) {
    /** Checks every value against its key. */
    public Arm {
        Keys.check(Arm.class, length, section, material, centrePin, planes, mass, gap);
    }

    /**
     * Mass of one arm: as given, or else section times density times length plus one depth [kg].
     */
    public double massEach() {
        return mass.orElse(section.area() * material.density() * (length + section.depth()));
    }
}
