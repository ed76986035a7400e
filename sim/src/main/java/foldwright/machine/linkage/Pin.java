// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.linkage;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;
import java.util.OptionalDouble;

/**
 * A pin with its bearing.
 *
 * @param diameter diameter of the pin, for a ball bearing its bore [m]
 * @param bearing what it turns in
 * @param spacing length over which the pin is held against tilting [m]
 * @param stiffness radial stiffness of pin, bearing and boss [N/m]
 * @param tiltStiffness stiffness against tilting of the arm on the pin [N·m/rad]
 * @param preload side force with which the joint is set free of play [N]
 */
@Kind("A pin with its bearing.")
public record Pin(
        @Key(
                        value = "Diameter of the pin, for a ball bearing its bore",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 100 mm]",
                        example = "6 mm")
                double diameter,
        @Key("What it turns in") Bearing bearing,
        @Key(
                        value = "Length over which the pin is held against tilting",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 500 mm]",
                        example = "14 mm")
                double spacing,
        @Key(
                        value = "Radial stiffness of pin, bearing and boss",
                        is = Dimension.STIFFNESS,
                        range = "(0 N/mm, 10000000 N/mm]",
                        example = "20000 N/mm")
                OptionalDouble stiffness,
        @Key(
                        value = "Stiffness against tilting of the arm on the pin",
                        is = Dimension.TORSION_STIFFNESS,
                        range = "(0 N*m/rad, 10000000 N*m/rad]",
                        example = "900 N*m/rad")
                OptionalDouble tiltStiffness,
        @Key(
                        value = "Side force with which the joint is set free of play",
                        is = Dimension.FORCE,
                        range = "[0 N, 5000 N]",
                        orElse = "0 N",
                        example = "5 N")
                double preload) {
    /** Checks every value against its key. */
    public Pin {
        Keys.check(Pin.class, diameter, bearing, spacing, stiffness, tiltStiffness, preload);
    }

    /** Radius on which friction acts [m]. */
    public double radius() {
        return diameter / 2;
    }
}
