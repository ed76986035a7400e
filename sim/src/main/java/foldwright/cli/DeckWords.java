// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import foldwright.machine.Machine;
import foldwright.machine.Measured;
import foldwright.study.Numerals;
import foldwright.study.Shown;
import java.util.OptionalDouble;

/** What the gantry's numbers leave out of the lift below it. */
final class DeckWords {
    private DeckWords() {}

    /** That the deck counts as fixed and, where a pull test was made, by how much it leans. */
    static String fixed(Machine machine) {
        if (machine.gantryOnDeck().isEmpty()) {
            return "";
        }
        OptionalDouble pulled =
                machine.measured().map(Measured::lateralStiffness).orElse(OptionalDouble.empty());
        String out = "The deck counts as fixed: its lean on the lift is not in these numbers";
        if (pulled.isEmpty()) {
            return out + "; a pull test (measured.lateralStiffness) would tell it.";
        }
        var gantry = machine.gantryOnDeck().get();
        double acceleration = gantry.moves().acceleration();
        double lean = gantry.movingMass() * acceleration / pulled.getAsDouble();
        return out
                + ". By the pull test it leans "
                + Numerals.with(lean, Shown.MILLIMETRE)
                + " at the top when bridge and carriage start at "
                + Numerals.with(acceleration, Shown.METRE_PER_SECOND_SQUARED)
                + ", and sways by up to twice that.";
    }
}
