// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.spring;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.machine.part.Spot;
import foldwright.quantity.Dimension;
import java.util.List;

/**
 * Upright between base and deck.
 *
 * @param at where each stands, in the base frame
 * @param gapAtPins room for the spring less the height of the deck pins above the base pins: the
 *     spring has the height plus this length [m]
 */
@Kind(value = "Upright between base and deck.", word = "upright")
public record Upright(
        @Key(
                        value = "Where each stands, in the base frame",
                        range = "[1, 64]",
                        example = "[[\"40 mm\", \"-90 mm\"]]")
                List<Spot> at,
        @Key(
                        value =
                                "Room for the spring less the height of the deck pins above the base pins: the spring has the height plus this length",
                        is = Dimension.LENGTH,
                        range = "[-1 m, 1 m]",
                        example = "6 mm")
                double gapAtPins)
        implements SpringPlacement {
    /** Checks every value against its key and copies the lists. */
    public Upright {
        Keys.check(Upright.class, at, gapAtPins);
        at = List.copyOf(at);
    }

    @Override
    public int count() {
        return at.size();
    }
}
