// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.gantry;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.machine.part.Material;
import foldwright.machine.part.Section;
import foldwright.machine.part.Spot;
import foldwright.quantity.Dimension;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The cross member.
 *
 * @param mass its mass without the carriage [kg]
 * @param massCentre its centre of mass from its middle
 * @param yawInertia moment of inertia about the vertical through its centre of mass; left out: that
 *     of an even bar as long as the span [kg·m²]
 * @param section cross-section of its beam; left out: rigid
 * @param material material of its beam
 * @param guide rail and blocks of the carriage
 * @param travel travel of the carriage, in x
 */
@Kind("The cross member.")
public record Bridge(
        @Key(
                        value = "Its mass without the carriage",
                        is = Dimension.MASS,
                        range = "(0 kg, 200 kg]",
                        example = "0.50 kg")
                double mass,
        @Key(value = "Its centre of mass from its middle", orElse = "[\"0 mm\", \"0 mm\"]")
                Spot massCentre,
        @Key(
                        value =
                                "Moment of inertia about the vertical through its centre of mass; left out: that of an even bar as long as the span",
                        is = Dimension.INERTIA,
                        range = "(0 g*cm2, 1000000000 g*cm2]")
                OptionalDouble yawInertia,
        @Key("Cross-section of its beam; left out: rigid") Optional<Section> section,
        @Key(value = "Material of its beam", example = "aluminium 6082-T6")
                Optional<Material> material,
        @Key("Rail and blocks of the carriage") Guide guide,
        @Key("Travel of the carriage, in x") Reach travel) {
    /** Checks every value against its key. */
    public Bridge {
        Keys.check(Bridge.class, mass, massCentre, yawInertia, section, material, guide, travel);
    }
}
