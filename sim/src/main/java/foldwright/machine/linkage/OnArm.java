// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.linkage;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;

/**
 * A point on the line between the end pins of an arm.
 *
 * @param stage stage, counted from below
 * @param arm which arm of the cross
 * @param side which side of the lift
 * @param along distance from its lower pin [m]
 */
@Kind(value = "A point on the line between the end pins of an arm.", word = "arm")
public record OnArm(
        @Key(value = "Stage, counted from below", range = "[1, 12]", example = "1") int stage,
        @Key(value = "Which arm of the cross", example = "from-fixed-end") ArmName arm,
        @Key(value = "Which side of the lift", example = "front") Side side,
        @Key(
                        value = "Distance from its lower pin",
                        is = Dimension.LENGTH,
                        range = "[-1 m, 5 m]",
                        example = "60 mm")
                double along)
        implements Anchor {
    /** Checks every value against its key. */
    public OnArm {
        Keys.check(OnArm.class, stage, arm, side, along);
    }
}
