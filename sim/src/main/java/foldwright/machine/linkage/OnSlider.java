// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.linkage;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.machine.part.Point;

/**
 * A point that moves with the slider ends.
 *
 * @param level which slider ends
 * @param at place from midway between the two slider pins
 */
@Kind(value = "A point that moves with the slider ends.", word = "slider")
public record OnSlider(
        @Key(value = "Which slider ends", orElse = "base") SliderLevel level,
        @Key(
                        value = "Place from midway between the two slider pins",
                        example = "[\"0 mm\", \"0 mm\", \"0 mm\"]")
                Point at)
        implements Anchor {
    /** Checks every value against its key. */
    public OnSlider {
        Keys.check(OnSlider.class, level, at);
    }
}
