// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.linkage;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;

/**
 * Pins of one place that differ from the usual ones.
 *
 * @param place where these pins are
 * @param pin the pins there
 */
@Kind("Pins of one place that differ from the usual ones.")
public record SpecialPin(
        @Key(value = "Where these pins are", example = "centre") PinPlace place,
        @Key("The pins there") Pin pin) {
    /** Checks every value against its key. */
    public SpecialPin {
        Keys.check(SpecialPin.class, place, pin);
    }
}
