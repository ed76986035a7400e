// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.linkage;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.machine.part.Point;

/**
 * A point on the base.
 *
 * @param at place in the base frame: origin midway between the fixed base pins
 */
@Kind(value = "A point on the base.", word = "base")
public record OnBase(
        @Key(
                        value =
                                "Place in the base frame: origin midway between the fixed base pins",
                        example = "[\"0 mm\", \"100 mm\", \"0 mm\"]")
                Point at)
        implements Anchor {
    /** Checks every value against its key. */
    public OnBase {
        Keys.check(OnBase.class, at);
    }
}
