// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.gantry;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;
import java.util.OptionalDouble;

/**
 * The two rails the bridge runs on.
 *
 * @param span distance between the two rails [m]
 * @param travel travel of the bridge, in y
 * @param guide rail and blocks of one side
 * @param floating which side gives way sideways so that the rails need not be parallel
 * @param yawStiffness stiffness against skew of one side, blocks and bracket together; left out:
 *     from the blocks [N·m/rad]
 * @param bracketStiffness stiffness against skew of one bracket between blocks and bridge [N·m/rad]
 */
@Kind("The two rails the bridge runs on.")
public record Legs(
        @Key(
                        value = "Distance between the two rails",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 5 m]",
                        example = "300 mm")
                double span,
        @Key("Travel of the bridge, in y") Reach travel,
        @Key("Rail and blocks of one side") Guide guide,
        @Key(
                        value =
                                "Which side gives way sideways so that the rails need not be parallel",
                        orElse = "none")
                Floating floating,
        @Key(
                        value =
                                "Stiffness against skew of one side, blocks and bracket together; left out: from the blocks",
                        is = Dimension.TORSION_STIFFNESS,
                        range = "(0 N*m/rad, 10000000 N*m/rad]",
                        example = "3600 N*m/rad")
                OptionalDouble yawStiffness,
        @Key(
                        value = "Stiffness against skew of one bracket between blocks and bridge",
                        is = Dimension.TORSION_STIFFNESS,
                        range = "(0 N*m/rad, 10000000 N*m/rad]",
                        example = "900 N*m/rad")
                OptionalDouble bracketStiffness) {
    /** Checks every value against its key. */
    public Legs {
        Keys.check(Legs.class, span, travel, guide, floating, yawStiffness, bracketStiffness);
    }
}
