// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.part;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;
import java.util.Optional;

/**
 * A part that has weight, with its centre of mass.
 *
 * @param name what the part is
 * @param mass its mass [kg]
 * @param at its centre of mass in the deck frame; left out: above the middle of the deck pins
 * @param moves what it moves with; a machine with a gantry section states moving parts there
 */
@Kind("A part that has weight, with its centre of mass.")
public record PointMass(
        @Key(value = "What the part is", example = "rails") String name,
        @Key(value = "Its mass", is = Dimension.MASS, range = "[0 kg, 500 kg]", example = "0.55 kg")
                double mass,
        @Key(
                        value =
                                "Its centre of mass in the deck frame; left out: above the middle of the deck pins",
                        example = "[\"90 mm\", \"0 mm\", \"10 mm\"]")
                Optional<Point> at,
        @Key(
                        value =
                                "What it moves with; a machine with a gantry section states moving parts there",
                        orElse = "with-deck")
                Carrier moves) {
    /** Checks every value against its key. */
    public PointMass {
        Keys.check(PointMass.class, name, mass, at, moves);
    }
}
