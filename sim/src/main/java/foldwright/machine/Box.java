// SPDX-License-Identifier: Apache-2.0
package foldwright.machine;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;

/**
 * What the folded machine must go into.
 *
 * @param name what it is
 * @param length inner length along the scissor [m]
 * @param width inner width [m]
 * @param height inner height [m]
 * @param gap room to leave on every side [m]
 */
@Kind("What the folded machine must go into.")
public record Box(
        @Key(value = "What it is", example = "drawer") String name,
        @Key(
                        value = "Inner length along the scissor",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 10 m]",
                        example = "450 mm")
                double length,
        @Key(
                        value = "Inner width",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 10 m]",
                        example = "360 mm")
                double width,
        @Key(
                        value = "Inner height",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 10 m]",
                        example = "110 mm")
                double height,
        @Key(
                        value = "Room to leave on every side",
                        is = Dimension.LENGTH,
                        range = "[0 mm, 500 mm]",
                        orElse = "0 mm",
                        example = "2 mm")
                double gap) {
    /** Checks every value against its key. */
    public Box {
        Keys.check(Box.class, name, length, width, height, gap);
    }
}
