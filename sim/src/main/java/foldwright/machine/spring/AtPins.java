// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.spring;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.machine.linkage.PinPlace;
import foldwright.quantity.Dimension;
import java.util.List;

/**
 * Torsion springs at pins, on both sides of the lift, between the arm and what holds the pin; at
 * the centre between the two arms.
 *
 * @param at at which pins
 * @param freeAngle arm angle above horizontal at which they let go [rad]
 */
@Kind(
        value =
                "Torsion springs at pins, on both sides of the lift, between the arm and what holds the pin; at the centre between the two arms.",
        word = "pins")
public record AtPins(
        @Key(
                        value = "At which pins",
                        range = "[1, 6]",
                        example = "[\"base-fixed\", \"base-slider\"]")
                List<PinPlace> at,
        @Key(
                        value = "Arm angle above horizontal at which they let go",
                        is = Dimension.ANGLE,
                        range = "(0 deg, 360 deg]",
                        example = "50 deg")
                double freeAngle)
        implements SpringPlacement {
    /** Checks every value against its key and copies the lists. */
    public AtPins {
        Keys.check(AtPins.class, at, freeAngle);
        at = List.copyOf(at);
    }

    @Override
    public int count() {
        return 2 * at.size();
    }

    @Override
    public boolean turns() {
        return true;
    }
}
