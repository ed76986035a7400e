// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.gantry;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.machine.part.Spot;
import java.util.Optional;

/**
 * A toothed wheel.
 *
 * @param name what it is called
 * @param on what its axle is fixed to
 * @param at its axle: in the gantry frame, or from the middle of bridge or carriage
 * @param teeth its teeth
 * @param sense which way the belt turns on it, going along the route, seen from above
 * @param turnedBy name of the motor or cross shaft that turns it; left out: it turns freely
 * @param spin inertia and drag; left out: none
 */
@Kind(value = "A toothed wheel.", word = "toothed")
public record ToothedWheel(
        @Key(value = "What it is called", example = "left motor") String name,
        @Key(value = "What its axle is fixed to", example = "frame") RouteBody on,
        @Key(
                        value =
                                "Its axle: in the gantry frame, or from the middle of bridge or carriage",
                        example = "[\"-150 mm\", \"0 mm\"]")
                Spot at,
        @Key(value = "Its teeth", range = "[6, 400]", example = "20") int teeth,
        @Key(
                        value =
                                "Which way the belt turns on it, going along the route, seen from above",
                        example = "clockwise")
                Sense sense,
        @Key(
                        value =
                                "Name of the motor or cross shaft that turns it; left out: it turns freely",
                        example = "left motor")
                Optional<String> turnedBy,
        @Key("Inertia and drag; left out: none") Optional<Spin> spin)
        implements Wheel {
    /** Checks every value against its key. */
    public ToothedWheel {
        Keys.check(ToothedWheel.class, name, on, at, teeth, sense, turnedBy, spin);
    }

    @Override
    public double pitchRadius(BeltStrand belt) {
        return teeth * belt.pitch() / (2 * Math.PI);
    }
}
