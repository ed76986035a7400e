// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.gantry;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.machine.part.Spot;
import foldwright.quantity.Dimension;
import java.util.Optional;

/**
 * A plain wheel.
 *
 * @param name what it is called
 * @param on what its axle is fixed to
 * @param at its axle: in the gantry frame, or from the middle of bridge or carriage
 * @param radius radius of the belt's cord on it [m]
 * @param sense which way the belt turns on it, going along the route, seen from above
 * @param spin inertia and drag; left out: none
 */
@Kind(value = "A plain wheel.", word = "plain")
public record PlainWheel(
        @Key(value = "What it is called", example = "back left idler") String name,
        @Key(value = "What its axle is fixed to", example = "frame") RouteBody on,
        @Key(
                        value =
                                "Its axle: in the gantry frame, or from the middle of bridge or carriage",
                        example = "[\"-150 mm\", \"0 mm\"]")
                Spot at,
        @Key(
                        value = "Radius of the belt's cord on it",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 500 mm]",
                        example = "6 mm")
                double radius,
        @Key(
                        value =
                                "Which way the belt turns on it, going along the route, seen from above",
                        example = "clockwise")
                Sense sense,
        @Key("Inertia and drag; left out: none") Optional<Spin> spin)
        implements Wheel {
    /** Checks every value against its key. */
    public PlainWheel {
        Keys.check(PlainWheel.class, name, on, at, radius, sense, spin);
    }

    @Override
    public double pitchRadius(BeltStrand belt) {
        return radius;
    }
}
