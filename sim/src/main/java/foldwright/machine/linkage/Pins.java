// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.linkage;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import java.util.List;

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
        if (special.stream().map(SpecialPin::place).distinct().count() < special.size()) {
            throw new IllegalArgumentException("Pins: a place has two special pins");
        }
    }
}
