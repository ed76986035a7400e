// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.spring;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.machine.keys.NameTable;
import foldwright.quantity.Dimension;
import java.util.OptionalDouble;

/**
 * A torsion spring by the torque it gives when the machine is folded flat.
 *
 * @param torqueAtFlat torque of one spring when folded flat [N·m]
 * @param wire wire diameter, for the stress [m]
 * @param meanDiameter mean coil diameter, for the stress [m]
 * @param activeCoils active coils, for the stress [1]
 * @param grade grade of its wire, for the stress
 */
@Kind(
        value = "A torsion spring by the torque it gives when the machine is folded flat.",
        word = "torsion-at-flat")
public record TorsionAtFlat(
        @Key(
                        value = "Torque of one spring when folded flat",
                        is = Dimension.TORQUE,
                        range = "(0 N*m, 1000 N*m]",
                        example = "1.10 N*m")
                double torqueAtFlat,
        @Key(
                        value = "Wire diameter, for the stress",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 50 mm]",
                        example = "2.5 mm")
                OptionalDouble wire,
        @Key(
                        value = "Mean coil diameter, for the stress",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 500 mm]",
                        example = "16 mm")
                OptionalDouble meanDiameter,
        @Key(value = "Active coils, for the stress", range = "(0, 500]", example = "5")
                OptionalDouble activeCoils,
        @Key(
                        value = "Grade of its wire, for the stress",
                        names = NameTable.WIRE_GRADES,
                        orElse = "hard drawn A227",
                        example = "music wire A228")
                String grade)
        implements SpringLaw {
    /** Checks every value against its key. */
    public TorsionAtFlat {
        Keys.check(TorsionAtFlat.class, torqueAtFlat, wire, meanDiameter, activeCoils, grade);
    }

    @Override
    public boolean turns() {
        return true;
    }
}
