// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.spring;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.machine.keys.NameTable;
import foldwright.quantity.Dimension;

/**
 * A torsion spring by its wire.
 *
 * @param wire wire diameter [m]
 * @param meanDiameter mean coil diameter [m]
 * @param activeCoils active coils [1]
 * @param grade grade of its wire
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
                        value = "Grade of its wire",
                        names = NameTable.WIRE_GRADES,
                        orElse = "hard drawn A227",
                        example = "music wire A228")
                String grade)
        implements SpringLaw {
    /** Checks every value against its key. */
    public TorsionCoil {
        Keys.check(TorsionCoil.class, wire, meanDiameter, activeCoils, grade);
    }

    @Override
    public boolean turns() {
        return true;
    }
}
