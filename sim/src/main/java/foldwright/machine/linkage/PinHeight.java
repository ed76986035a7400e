// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.linkage;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;

/**
 * The height of the deck pins above the base pins.
 *
 * @param height height of the deck pins above the base pins [m]
 */
@Kind(value = "The height of the deck pins above the base pins.", word = "height")
public record PinHeight(
        @Key(
                        value = "Height of the deck pins above the base pins",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 20 m]")
                double height)
        implements Opening {
    /** Checks every value against its key. */
    public PinHeight {
        Keys.check(PinHeight.class, height);
    }
}
