// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.gantry;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;
import java.util.OptionalDouble;

/**
 * A block of a rail.
 *
 * @param ballLength length over which its balls carry [m]
 * @param lateralStiffness sideways stiffness [N/m]
 * @param yawStiffness its own stiffness against yaw; left out: none counted [N·m/rad]
 * @param clearance sideways clearance, from stop to stop [m]
 * @param staticMoment static yaw moment it may carry [N·m]
 * @param staticRating static load rating [N]
 */
@Kind("A block of a rail.")
public record Block(
        @Key(
                        value = "Length over which its balls carry",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 500 mm]",
                        example = "10 mm")
                double ballLength,
        @Key(
                        value = "Sideways stiffness",
                        is = Dimension.STIFFNESS,
                        range = "(0 N/mm, 10000000 N/mm]",
                        example = "8000 N/mm")
                double lateralStiffness,
        @Key(
                        value = "Its own stiffness against yaw; left out: none counted",
                        is = Dimension.TORSION_STIFFNESS,
                        range = "(0 N*m/rad, 10000000 N*m/rad]",
                        example = "300 N*m/rad")
                OptionalDouble yawStiffness,
        @Key(
                        value = "Sideways clearance, from stop to stop",
                        is = Dimension.LENGTH,
                        range = "[0 mm, 5 mm]",
                        orElse = "0 mm",
                        example = "4 um")
                double clearance,
        @Key(
                        value = "Static yaw moment it may carry",
                        is = Dimension.TORQUE,
                        range = "(0 N*m, 100000 N*m]",
                        example = "5.1 N*m")
                OptionalDouble staticMoment,
        @Key(
                        value = "Static load rating",
                        is = Dimension.FORCE,
                        range = "(0 N, 10000000 N]",
                        example = "2500 N")
                OptionalDouble staticRating) {
    /** Checks every value against its key. */
    public Block {
        Keys.check(
                Block.class,
                ballLength,
                lateralStiffness,
                yawStiffness,
                clearance,
                staticMoment,
                staticRating);
    }
}
