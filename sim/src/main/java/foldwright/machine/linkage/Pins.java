// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.linkage;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * The pins of the lift.
 *
 * @param usual the pins everywhere but at the places listed as special
 * @param special places with other pins
 */
@Kind("The pins of the lift.")
public record Pins(
        @Key("The pins everywhere but at the places listed as special") Pin usual,
        @Key(value = "Places with other pins", range = "[0, 6]") List<SpecialPin> special) {
    /** Checks every value against its key and copies the lists. */
    public Pins {
        Keys.check(Pins.class, usual, special);
        special = List.copyOf(special);
        Set<PinPlace> places = EnumSet.noneOf(PinPlace.class);
        for (SpecialPin pin : special) {
            if (!places.add(pin.place())) {
                throw new IllegalArgumentException(
                        "Pins: two special pins at "
                                + Keys.word(pin.place())
                                + "; allowed: one for each place");
            }
        }
    }
}
