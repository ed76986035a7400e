// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.gantry;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.machine.part.Spot;

/**
 * A point where a belt is fastened.
 *
 * @param name what it is called
 * @param on what it is fixed to
 * @param at its place: in the gantry frame, or from the middle of bridge or carriage
 */
@Kind(value = "A point where a belt is fastened.", word = "anchor")
public record BeltAnchor(
        @Key(value = "What it is called", example = "carriage left") String name,
        @Key(value = "What it is fixed to", example = "carriage") RouteBody on,
        @Key(
                        value =
                                "Its place: in the gantry frame, or from the middle of bridge or carriage",
                        example = "[\"-12 mm\", \"0 mm\"]")
                Spot at)
        implements RouteItem {
    /** Checks every value against its key. */
    public BeltAnchor {
        Keys.check(BeltAnchor.class, name, on, at);
    }
}
