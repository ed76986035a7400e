// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.spring;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;
import java.util.OptionalDouble;

/**
 * Equal helper springs.
 *
 * @param name what they are called
 * @param law the spring itself
 * @param place where they are, and how many
 * @param contact whether the ends are fastened
 * @param guideDiameter diameter of the rod or sleeve that guides it [m]
 */
@Kind("Equal helper springs.")
public record HelperSpring(
        @Key(value = "What they are called", example = "lifting coils") String name,
        @Key("The spring itself") SpringLaw law,
        @Key("Where they are, and how many") SpringPlacement place,
        @Key(value = "Whether the ends are fastened", orElse = "touching") Contact contact,
        @Key(
                        value = "Diameter of the rod or sleeve that guides it",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 500 mm]",
                        example = "24 mm")
                OptionalDouble guideDiameter) {
    /** Checks every value against its key. */
    public HelperSpring {
        Keys.check(HelperSpring.class, name, law, place, contact, guideDiameter);
        if (law.turns() != place.turns()) {
            throw new IllegalArgumentException(
                    law.turns()
                            ? "HelperSpring: a torsion spring cannot stand there; allowed: place of"
                                    + " kind \"pins\""
                            : "HelperSpring: only a torsion spring goes to pins; allowed: place of"
                                    + " kind \"upright\", \"foot\" or \"points\"");
        }
    }

    /** How many springs there are. */
    public int count() {
        return place.count();
    }
}
