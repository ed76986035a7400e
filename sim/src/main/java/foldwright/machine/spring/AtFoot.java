// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.spring;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;
import java.util.List;

/**
 * Lying along the scissor, pushing the slider ends or their cross bar of the base towards the fixed
 * end.
 *
 * @param at where each lies across the machine [m]
 * @param squeezeAtFlat how far each is squeezed when folded flat [m]
 */
@Kind(
        value =
                "Lying along the scissor, pushing the slider ends or their cross bar of the base towards the fixed end.",
        word = "foot")
public record AtFoot(
        @Key(
                        value = "Where each lies across the machine",
                        is = Dimension.LENGTH,
                        range = "[1, 64]",
                        each = "[-5 m, 5 m]",
                        example = "[\"-20 mm\", \"20 mm\"]")
                List<Double> at,
        @Key(
                        value = "How far each is squeezed when folded flat",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 1 m]",
                        example = "5 mm")
                double squeezeAtFlat)
        implements SpringPlacement {
    /** Checks every value against its key and copies the lists. */
    public AtFoot {
        Keys.check(AtFoot.class, at, squeezeAtFlat);
        at = List.copyOf(at);
    }

    @Override
    public int count() {
        return at.size();
    }
}
