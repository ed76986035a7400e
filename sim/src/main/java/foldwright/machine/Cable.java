// SPDX-License-Identifier: Apache-2.0
package foldwright.machine;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.machine.linkage.Anchor;
import foldwright.quantity.Dimension;
import java.util.List;

/**
 * A cable from base to deck or tool.
 *
 * @param name what it is
 * @param thickness its thickness [m]
 * @param bendRadius smallest bend radius [m]
 * @param clips where it is clipped, in order
 * @param allowance length to add at both ends together [m]
 */
@Kind("A cable from base to deck or tool.")
public record Cable(
        @Key(value = "What it is", example = "head cable") String name,
        @Key(
                        value = "Its thickness",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 100 mm]",
                        example = "6 mm")
                double thickness,
        @Key(
                        value = "Smallest bend radius",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 1 m]",
                        example = "25 mm")
                double bendRadius,
        @Key(value = "Where it is clipped, in order", range = "[2, 40]") List<Anchor> clips,
        @Key(
                        value = "Length to add at both ends together",
                        is = Dimension.LENGTH,
                        range = "[0 mm, 5 m]",
                        orElse = "100 mm",
                        example = "100 mm")
                double allowance) {
    /** Checks every value against its key and copies the lists. */
    public Cable {
        Keys.check(Cable.class, name, thickness, bendRadius, clips, allowance);
        clips = List.copyOf(clips);
    }
}
