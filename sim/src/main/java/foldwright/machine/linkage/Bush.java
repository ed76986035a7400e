// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.linkage;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;
import java.util.OptionalDouble;

/**
 * A plain bush.
 *
 * @param friction friction coefficient [1]
 * @param clearance diametral clearance [m]
 * @param length length of the bush [m]
 * @param allowedPressure bearing pressure it may carry [Pa]
 * @param material what it is made of, for the order list
 */
@Kind(value = "A plain bush.", word = "bush")
public record Bush(
        @Key(value = "Friction coefficient", range = "[0, 1]", example = "0.10") double friction,
        @Key(
                        value = "Diametral clearance",
                        is = Dimension.LENGTH,
                        range = "[0 mm, 5 mm]",
                        orElse = "0 mm",
                        example = "0.03 mm")
                double clearance,
        @Key(
                        value = "Length of the bush",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 200 mm]",
                        example = "8 mm")
                double length,
        @Key(
                        value = "Bearing pressure it may carry",
                        is = Dimension.STRESS,
                        range = "(0 MPa, 1000 MPa]",
                        example = "14 MPa")
                OptionalDouble allowedPressure,
        @Key(
                        value = "What it is made of, for the order list",
                        orElse = "bronze",
                        example = "bronze")
                String material)
        implements Bearing {
    /** Checks every value against its key. */
    public Bush {
        Keys.check(Bush.class, friction, clearance, length, allowedPressure, material);
    }
}
