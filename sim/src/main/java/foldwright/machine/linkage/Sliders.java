// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.linkage;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import java.util.Optional;

/**
 * The sliding ends.
 *
 * @param base slider ends in the base
 * @param deck slider ends in the deck; left out: as in the base
 * @param deckFixed which end of the deck has the fixed pins
 */
@Kind("The sliding ends.")
public record Sliders(
        @Key("Slider ends in the base") SliderEnd base,
        @Key("Slider ends in the deck; left out: as in the base") Optional<SliderEnd> deck,
        @Key(value = "Which end of the deck has the fixed pins", orElse = "over-fixed-end")
                DeckEnd deckFixed) {
    /** Checks every value against its key. */
    public Sliders {
        Keys.check(Sliders.class, base, deck, deckFixed);
    }

    /** The slider ends in the deck. */
    public SliderEnd atDeck() {
        return deck.orElse(base);
    }
}
