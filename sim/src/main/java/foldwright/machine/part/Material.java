// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.part;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;
import java.util.OptionalDouble;

/**
 * A material by its numbers; in a file also by its name in the table of materials.
 *
 * @param name what the material is called in texts and lists
 * @param youngsModulus elastic modulus [Pa]
 * @param shearModulus shear modulus [Pa]
 * @param density mass density [kg/m³]
 * @param strength yield strength, for a plastic its strength [Pa]
 */
@Kind("A material by its numbers; in a file also by its name in the table of materials.")
public record Material(
        @Key(value = "What the material is called in texts and lists", orElse = "given by numbers")
                String name,
        @Key(
                        value = "Elastic modulus",
                        is = Dimension.STRESS,
                        range = "(0 GPa, 1200 GPa]",
                        example = "70 GPa")
                double youngsModulus,
        @Key(
                        value = "Shear modulus",
                        is = Dimension.STRESS,
                        range = "(0 GPa, 600 GPa]",
                        example = "26 GPa")
                double shearModulus,
        @Key(
                        value = "Mass density",
                        is = Dimension.DENSITY,
                        range = "(0 kg/m3, 25000 kg/m3]",
                        example = "2700 kg/m3")
                double density,
        @Key(
                        value = "Yield strength, for a plastic its strength",
                        is = Dimension.STRESS,
                        range = "(0 MPa, 5000 MPa]",
                        example = "250 MPa")
                OptionalDouble strength) {
    /** Checks every value against its key. */
    public Material {
        Keys.check(Material.class, name, youngsModulus, shearModulus, density, strength);
    }
}
