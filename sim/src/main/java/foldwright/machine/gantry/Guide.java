// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.gantry;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;
import foldwright.quantity.Printed;
import java.util.OptionalDouble;

/**
 * A rail with its blocks.
 *
 * @param size width of the rail [m]
 * @param length length of the rail [m]
 * @param blocks blocks on one rail
 * @param spacing distance between the outer blocks, middle to middle; 0 for one block [m]
 * @param block the block
 * @param preload how the blocks are fitted
 * @param friction friction of all blocks of one rail together, seals included [N]
 */
@Kind("A rail with its blocks.")
public record Guide(
        @Key(
                        value = "Width of the rail",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 100 mm]",
                        example = "9 mm")
                double size,
        @Key(
                        value = "Length of the rail",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 5 m]",
                        example = "260 mm")
                OptionalDouble length,
        @Key(value = "Blocks on one rail", range = "[1, 4]", example = "2") int blocks,
        @Key(
                        value =
                                "Distance between the outer blocks, middle to middle; 0 for one block",
                        is = Dimension.LENGTH,
                        range = "[0 mm, 2 m]",
                        orElse = "0 mm",
                        example = "50 mm")
                double spacing,
        @Key("The block") Block block,
        @Key(value = "How the blocks are fitted", orElse = "clearance") Preload preload,
        @Key(
                        value = "Friction of all blocks of one rail together, seals included",
                        is = Dimension.FORCE,
                        range = "[0 N, 1000 N]",
                        example = "1.5 N")
                double friction) {
    /** Checks every value against its key. */
    public Guide {
        Keys.check(Guide.class, size, length, blocks, spacing, block, preload, friction);
        if ((blocks == 1) != (spacing == 0)) {
            throw new IllegalArgumentException(
                    blocks == 1
                            ? "Guide: one block with spacing "
                                    + Printed.given(Dimension.LENGTH, spacing)
                                    + "; allowed: spacing 0 mm, or more blocks"
                            : "Guide: "
                                    + blocks
                                    + " blocks with spacing 0 mm; allowed: more, middle to middle"
                                    + " of the outer ones");
        }
    }
}
