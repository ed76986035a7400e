// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import java.util.Objects;

/**
 * Something the curve shows that a maker should know by name, with the heights where it holds.
 *
 * @param kind what it is
 * @param part which part it concerns, e.g. "stage 1", "front spring"; empty for the whole lift
 * @param from lowest pivot height where it holds [m]
 * @param to highest pivot height where it holds, equal to {@code from} for an instant [m]
 * @param value the number that goes with it, in the unit of the kind
 * @param sentence one plain sentence with numbers
 */
public record Finding(
        Kind kind, String part, double from, double to, double value, String sentence) {

    /** Kinds of findings; each says the unit of {@code value}. */
    public enum Kind {
        /** Friction in the pins holds a stage however hard it is driven; lock height [m]. */
        PINS_LOCK,
        /** A slider guide jams under an offset push; friction above which it locks [1]. */
        GUIDE_JAMS,
        /** The motor cannot move the lift; lowest margin [1]. */
        STALLS,
        /** Springs lift the deck with the latch open; latch force [N]. */
        POPS_OPEN,
        /** The force on the nut changes sides; force slope [N/m]. */
        NUT_LOAD_REVERSES,
        /** A touched spring lets go; its free length [m]. */
        SPRING_LETS_GO,
        /** A spring is pressed to solid; force [N]. */
        SPRING_SOLID,
        /** A screw is loaded above the share of its buckling load that is allowed; ratio [1]. */
        SCREW_BUCKLES,
        /** A screw turns faster than the share of its whirling speed allowed; ratio [1]. */
        SCREW_WHIRLS,
        /** No balance was found at a height that is not explained by a lock; residual [N]. */
        NOT_SOLVED
    }

    public Finding {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(sentence, "sentence");
    }
}
