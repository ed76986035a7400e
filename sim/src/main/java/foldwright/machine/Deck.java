// SPDX-License-Identifier: Apache-2.0
package foldwright.machine;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.machine.part.PointMass;
import foldwright.quantity.Dimension;
import java.util.List;

/**
 * The deck, which the lift raises. Its frame: origin midway between the fixed deck pins, axes as
 * the base.
 *
 * @param length outer length along the scissor [m]
 * @param width outer width [m]
 * @param pinInset distance from the end of the deck to the fixed pins [m]
 * @param topAbovePins highest point of all it carries, above the deck pins [m]
 * @param undersideBelowPins lowest point of deck and gantry between the sides, below the deck pins
 *     [m]
 * @param masses all that is fixed to the deck; bridge and carriage are stated in the gantry section
 */
@Kind(
        "The deck, which the lift raises. Its frame: origin midway between the fixed deck pins, axes as the base.")
public record Deck(
        @Key(
                        value = "Outer length along the scissor",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 10 m]",
                        example = "400 mm")
                double length,
        @Key(
                        value = "Outer width",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 10 m]",
                        example = "340 mm")
                double width,
        @Key(
                        value = "Distance from the end of the deck to the fixed pins",
                        is = Dimension.LENGTH,
                        range = "[-2 m, 5 m]",
                        example = "40 mm")
                double pinInset,
        @Key(
                        value = "Highest point of all it carries, above the deck pins",
                        is = Dimension.LENGTH,
                        range = "[0 mm, 5 m]",
                        example = "38 mm")
                double topAbovePins,
        @Key(
                        value =
                                "Lowest point of deck and gantry between the sides, below the deck pins",
                        is = Dimension.LENGTH,
                        range = "[-1 m, 1 m]",
                        orElse = "0 mm",
                        example = "6 mm")
                double undersideBelowPins,
        @Key(
                        value =
                                "All that is fixed to the deck; bridge and carriage are stated in the gantry section",
                        range = "[1, 60]")
                List<PointMass> masses) {
    /** Checks every value against its key and copies the lists. */
    public Deck {
        Keys.check(Deck.class, length, width, pinInset, topAbovePins, undersideBelowPins, masses);
        masses = List.copyOf(masses);
    }

    /** Mass of all that is listed here [kg]. */
    public double mass() {
        return masses.stream().mapToDouble(PointMass::mass).sum();
    }
}
