// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.linkage;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.machine.part.Point;

/**
 * A point on the deck.
 *
 * @param at place in the deck frame: origin midway between the fixed deck pins
 */
@Kind(value = "A point on the deck.", word = "deck")
public record OnDeck(
        @Key(
                        value =
                                "Place in the deck frame: origin midway between the fixed deck pins",
                        example = "[\"150 mm\", \"0 mm\", \"20 mm\"]")
                Point at)
        implements Anchor {
    /** Checks every value against its key. */
    public OnDeck {
        Keys.check(OnDeck.class, at);
    }
}
