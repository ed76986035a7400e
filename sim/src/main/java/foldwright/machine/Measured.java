// SPDX-License-Identifier: Apache-2.0
package foldwright.machine;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;
import java.util.OptionalDouble;

/**
 * Values measured on the built machine; each replaces the computed one.
 *
 * @param lateralStiffness stiffness against a sideways pull at the deck with the lift open [N/m]
 */
@Kind("Values measured on the built machine; each replaces the computed one.")
public record Measured(
        @Key(
                        value = "Stiffness against a sideways pull at the deck with the lift open",
                        is = Dimension.STIFFNESS,
                        range = "(0 N/mm, 1000000 N/mm]",
                        example = "22 N/mm")
                OptionalDouble lateralStiffness) {
    /** Checks every value against its key. */
    public Measured {
        Keys.check(Measured.class, lateralStiffness);
    }
}
