// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import foldwright.machine.Machine;
import foldwright.study.Numerals;
import foldwright.study.PulledLean;
import foldwright.study.Shown;

/** What the gantry's numbers leave out of the lift below it. */
final class DeckWords {
    private DeckWords() {}

    /** That the deck counts as fixed and, where a pull test was made, by how much it leans. */
    static String fixed(Machine machine) {
        if (machine.gantryOnDeck().isEmpty()) {
            return "";
        }
        String out = "The deck counts as fixed: its lean on the lift is not in these numbers";
        return PulledLean.of(machine)
                .map(
                        lean ->
                                out
                                        + ". By the pull test it leans "
                                        + Numerals.with(lean.way(), Shown.MILLIMETRE)
                                        + " at the top when bridge and carriage start at "
                                        + Numerals.with(
                                                lean.acceleration(), Shown.METRE_PER_SECOND_SQUARED)
                                        + ", and sways by up to twice that.")
                .orElse(out + "; a pull test (measured.lateralStiffness) would tell it.");
    }
}
