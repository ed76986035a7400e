// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.drive;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.machine.linkage.Anchor;
import foldwright.quantity.Dimension;
import java.util.Optional;

/**
 * One screw: where it is, and how far it is out of step.
 *
 * @param y where it lies across the machine, midway between the sides being 0 [m]
 * @param phaseError how far it is turned ahead of the others [rad]
 * @param from where its bearing is; left out: on the base at pin height, where the nut comes to the
 *     end of the screw when folded flat
 * @param to where its nut is; left out: on the slider ends of the base
 */
@Kind("One screw: where it is, and how far it is out of step.")
public record ScrewLine(
        @Key(
                        value =
                                "Where it lies across the machine, midway between the sides being 0",
                        is = Dimension.LENGTH,
                        range = "[-5 m, 5 m]",
                        example = "130 mm")
                double y,
        @Key(
                        value = "How far it is turned ahead of the others",
                        is = Dimension.ANGLE,
                        range = "[-100 rev, 100 rev]",
                        orElse = "0 rev",
                        example = "0.5 rev")
                double phaseError,
        @Key(
                        "Where its bearing is; left out: on the base at pin height, where the nut comes to the end of the screw when folded flat")
                Optional<Anchor> from,
        @Key("Where its nut is; left out: on the slider ends of the base") Optional<Anchor> to) {
    /** Checks every value against its key. */
    public ScrewLine {
        Keys.check(ScrewLine.class, y, phaseError, from, to);
    }
}
