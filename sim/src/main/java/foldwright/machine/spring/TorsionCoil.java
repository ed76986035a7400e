// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.spring;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.machine.part.Material;
import foldwright.quantity.Dimension;

/**
 * A torsion spring by its wire.
 *
 * @param wire wire diameter [m]
 * @param meanDiameter mean coil diameter [m]
 * @param activeCoils active coils [1]
 * @param material wire: a name from the table of materials, or numbers
 */
@Kind(value = "A torsion spring by its wire.", word = "torsion")
public record TorsionCoil(
        @Key(
                        value = "Wire diameter",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 50 mm]",
                        example = "1.6 mm")
                double wire,
        @Key(
                        value = "Mean coil diameter",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 500 mm]",
                        example = "30 mm")
                double meanDiameter,
        @Key(value = "Active coils", range = "(0, 500]", example = "15.5") double activeCoils,
        @Key(
                        value = "Wire: a name from the table of materials, or numbers",
                        orElse = "spring steel")
                Material material)
        implements SpringLaw {
    /** Checks every value against its key. */
    public TorsionCoil {
        Keys.check(TorsionCoil.class, wire, meanDiameter, activeCoils, material);
    }

    @Override
    public boolean turns() {
        return true;
    }
}
