// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.linkage;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;

/**
 * A fixed stop of the lift.
 *
 * @param blocks which motion it blocks
 * @param at where it is met
 * @param stiffness stiffness, vertically at the deck [N/m]
 * @param damping damping, vertically at the deck [N·s/m]
 */
@Kind("A fixed stop of the lift.")
public record Stop(
        @Key(value = "Which motion it blocks", example = "rising") StopSide blocks,
        @Key(value = "Where it is met", example = "48 deg") Opening at,
        @Key(
                        value = "Stiffness, vertically at the deck",
                        is = Dimension.STIFFNESS,
                        range = "(0 N/mm, 1000000 N/mm]",
                        orElse = "500 N/mm",
                        example = "500 N/mm")
                double stiffness,
        @Key(
                        value = "Damping, vertically at the deck",
                        is = Dimension.DAMPING,
                        range = "[0 N*s/m, 1000000 N*s/m]",
                        orElse = "0 N*s/m",
                        example = "200 N*s/m")
                double damping) {
    /** Checks every value against its key. */
    public Stop {
        Keys.check(Stop.class, blocks, at, stiffness, damping);
    }
}
