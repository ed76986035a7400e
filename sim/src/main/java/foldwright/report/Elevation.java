// SPDX-License-Identifier: Apache-2.0
package foldwright.report;

import foldwright.machine.Machine;
import foldwright.machine.Tool;
import foldwright.machine.linkage.ArmAngle;
import foldwright.machine.linkage.Opening;
import foldwright.machine.linkage.PinHeight;
import java.util.Optional;

/**
 * What a side view to scale needs of a machine [all lengths m].
 *
 * @param base outer length, height of the base pins above the table, inset of the fixed pins
 * @param deck the same of the deck: outer length, top above its pins, inset; underside below pins
 * @param linkage stages, arm length and depth
 * @param flat height of the deck pins when folded
 * @param top height of the deck pins when open
 * @param tool how far the tool hangs below the underside, if there is one
 */
record Elevation(
        Base base, Deck deck, Linkage linkage, double flat, double top, Optional<Double> tool) {

    record Base(double length, double pinHeight, double inset) {}

    record Deck(double length, double topAbovePins, double inset, double underside) {}

    record Linkage(int stages, double arm, double depth) {}

    static Elevation of(Machine m) {
        return new Elevation(
                new Base(m.base().length(), m.base().pinHeight(), m.base().pinInset()),
                new Deck(
                        m.deck().length(),
                        m.deck().topAbovePins(),
                        m.deck().pinInset(),
                        m.deck().undersideBelowPins()),
                new Linkage(
                        m.lift().stages(),
                        m.lift().arm().length(),
                        m.lift().arm().section().depth()),
                height(m, m.lift().travel().fold().low()),
                height(m, m.lift().travel().fold().high()),
                m.tool().map(Tool::reach));
    }

    /** Height of the deck pins above the base pins at an opening [m]. */
    static double height(Machine m, Opening opening) {
        if (opening instanceof ArmAngle a) {
            return m.lift().stages() * m.lift().arm().length() * Math.sin(a.angle());
        }
        return ((PinHeight) opening).height();
    }
}
