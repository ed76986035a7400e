// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.linkage;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.machine.part.Point;
import foldwright.quantity.Dimension;

/**
 * The latch that keeps the folded machine shut.
 *
 * @param at where it holds the deck, in the deck frame
 * @param allowedForce upward force it may carry [N]
 * @param reach how far above the folded height it still catches the deck [m]
 */
@Kind("The latch that keeps the folded machine shut.")
public record Latch(
        @Key("Where it holds the deck, in the deck frame") Point at,
        @Key(
                        value = "Upward force it may carry",
                        is = Dimension.FORCE,
                        range = "(0 N, 10000 N]",
                        example = "60 N")
                double allowedForce,
        @Key(
                        value = "How far above the folded height it still catches the deck",
                        is = Dimension.LENGTH,
                        range = "[0 mm, 50 mm]",
                        orElse = "0.5 mm",
                        example = "1 mm")
                double reach) {
    /** Checks every value against its key. */
    public Latch {
        Keys.check(Latch.class, at, allowedForce, reach);
    }
}
