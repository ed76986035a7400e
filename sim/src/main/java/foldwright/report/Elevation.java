// SPDX-License-Identifier: Apache-2.0
package foldwright.report;

import foldwright.machine.Machine;
import foldwright.machine.Tool;
import foldwright.machine.linkage.FoldGeometry;
import foldwright.machine.linkage.PinHeight;
import java.util.Optional;

/**
 * What a side view to scale needs of a machine [all lengths m].
 *
 * @param base outer length, height of the base pins above the table, inset of the fixed pins
 * @param deck the same of the deck: outer length, top above its pins, inset; underside below pins
 * @param linkage geometry, stages and depth of an arm
 * @param flat height of the deck pins when folded
 * @param top height of the deck pins when open
 * @param tool how far the tool hangs below the underside, if there is one
 */
record Elevation(
        Base base, Deck deck, Linkage linkage, double flat, double top, Optional<Double> tool) {

    record Base(double length, double pinHeight, double inset) {}

    record Deck(double length, double topAbovePins, double inset, double underside) {}

    record Linkage(FoldGeometry geometry, int stages, double depth) {
        /** Angle of the lowest arms at a height of the deck pins [rad]. */
        double angle(double height) {
            return geometry.angle(new PinHeight(height));
        }
    }

    static Elevation of(Machine m) {
        FoldGeometry geometry = new FoldGeometry(m.lift());
        return new Elevation(
                new Base(m.base().length(), m.base().pinHeight(), m.base().pinInset()),
                new Deck(
                        m.deck().length(),
                        m.deck().topAbovePins(),
                        m.deck().pinInset(),
                        m.deck().undersideBelowPins()),
                new Linkage(geometry, m.lift().stages(), m.lift().arm().section().depth()),
                geometry.height(m.lift().travel().fold().low()),
                geometry.height(m.lift().travel().fold().high()),
                m.tool().map(Tool::reach));
    }
}
