// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.drive;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.machine.part.Teeth;
import foldwright.quantity.Dimension;
import java.util.OptionalDouble;

/**
 * A toothed belt from the motor to all screws.
 *
 * @param teeth teeth of the motor pulley and of each screw pulley
 * @param efficiency efficiency [1]
 * @param stiffness torsional stiffness of the belt, seen at a screw [N·m/rad]
 * @param pitch tooth pitch of the belt [m]
 * @param width width of the belt [m]
 */
@Kind(value = "A toothed belt from the motor to all screws.", word = "belt")
public record BeltReduction(
        @Key(value = "Teeth of the motor pulley and of each screw pulley", example = "16:48")
                Teeth teeth,
        @Key(value = "Efficiency", range = "(0, 1]", orElse = "0.95", example = "0.95")
                double efficiency,
        @Key(
                        value = "Torsional stiffness of the belt, seen at a screw",
                        is = Dimension.TORSION_STIFFNESS,
                        range = "(0 N*m/rad, 1000000 N*m/rad]",
                        example = "60 N*m/rad")
                OptionalDouble stiffness,
        @Key(
                        value = "Tooth pitch of the belt",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 25 mm]",
                        orElse = "2 mm",
                        example = "2 mm")
                double pitch,
        @Key(
                        value = "Width of the belt",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 200 mm]",
                        orElse = "9 mm",
                        example = "9 mm")
                double width)
        implements Transmission {
    /** Checks every value against its key. */
    public BeltReduction {
        Keys.check(BeltReduction.class, teeth, efficiency, stiffness, pitch, width);
    }
}
