// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.linkage;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;
import java.util.List;

/**
 * The scissor linkage: stages stacked on each other, with two sides a width apart.
 *
 * @param stages how many crosses stand on each other
 * @param width distance between the middle planes of the two sides [m]
 * @param arm the arm all stages are made of
 * @param pins the pins the arms turn on
 * @param sliders the sliding ends in base and deck
 * @param crossBars bars that join the two sides
 * @param travel how far it folds and where it works
 */
@Kind("The scissor linkage: stages stacked on each other, with two sides a width apart.")
public record Lift(
        @Key(value = "How many crosses stand on each other", range = "[1, 12]", example = "2")
                int stages,
        @Key(
                        value = "Distance between the middle planes of the two sides",
                        is = Dimension.LENGTH,
                        range = "(0 mm, 5 m]",
                        example = "280 mm")
                double width,
        @Key("The arm all stages are made of") Arm arm,
        @Key("The pins the arms turn on") Pins pins,
        @Key("The sliding ends in base and deck") Sliders sliders,
        @Key(value = "Bars that join the two sides", range = "[0, 40]") List<CrossBar> crossBars,
        @Key("How far it folds and where it works") Travel travel) {
    /** Checks every value against its key and copies the lists. */
    public Lift {
        Keys.check(Lift.class, stages, width, arm, pins, sliders, crossBars, travel);
        crossBars = List.copyOf(crossBars);
    }

    /** The pins at a place: the special ones given for it, or else the usual ones. */
    public Pin pinAt(PinPlace place) {
        return pins.special().stream()
                .filter(special -> special.place() == place)
                .map(SpecialPin::pin)
                .findFirst()
                .orElse(pins.usual());
    }

    /** Number of arms: two for each stage and side. */
    public int arms() {
        return 4 * stages;
    }

    /** Number of pins, both sides: two below, one in each cross, two at each stage's top. */
    public int pinCount() {
        return 2 * (3 * stages + 2);
    }
}
