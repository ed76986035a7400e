// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.linkage;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.machine.part.Material;
import foldwright.machine.part.Section;

/**
 * A bar that joins the two sides.
 *
 * @param at at which pins
 * @param stage at which stage, counted from below
 * @param section its cross-section
 * @param material its material
 */
@Kind("A bar that joins the two sides.")
public record CrossBar(
        @Key(value = "At which pins", example = "base-slider") PinPlace at,
        @Key(
                        value = "At which stage, counted from below",
                        range = "[1, 12]",
                        orElse = "1",
                        example = "1")
                int stage,
        @Key("Its cross-section") Section section,
        @Key(value = "Its material", example = "steel, carbon, general") Material material) {
    /** Checks every value against its key. */
    public CrossBar {
        Keys.check(CrossBar.class, at, stage, section, material);
    }
}
