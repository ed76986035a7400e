// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.session;

import foldwright.viewer.scene.GantryMotion;
import foldwright.viewer.scene.Lean;
import foldwright.viewer.sheet.SheetPainter;
import java.util.List;

/**
 * How the machine is drawn off its ideal place.
 *
 * @param place of the gantry, null where there is none
 * @param lean of the deck
 * @param factor by how much it is drawn larger; 1 is true
 * @param marks ghost of the ideal place and words
 */
record StrayView(GantryMotion.Place place, Lean lean, double factor, SheetPainter.Stray marks) {
    /** Stands for the factor that draws an error well visible. */
    static final double FITTING = 0;

    /** The same with a note at the foot of the table, where nothing is off its place. */
    StrayView noted(String note) {
        return marks.title().isEmpty()
                ? new StrayView(place, lean, factor, new SheetPainter.Stray(List.of(), "", note))
                : this;
    }

    /** Everything in its ideal place. */
    static StrayView none(GantryMotion.Place place) {
        return new StrayView(place, Lean.NONE, 1, SheetPainter.Stray.NONE);
    }
}
