// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.lift.SpringStroke;
import foldwright.machine.Machine;
import java.util.List;
import java.util.Optional;

/**
 * Springs of one kind where the travel works them most, and checks on them.
 *
 * @param machine the machine
 * @param stroke how far they are worked
 */
record WorkedSpring(Machine machine, SpringStroke stroke) {
    /** Heights nearer than this to an end of the travel are that end [m]. */
    private static final double SAME = 1e-6;

    String name() {
        return stroke.spring().name();
    }

    /** E.g. "12.4 N", or "1.10 N·m" where it turns. */
    String load() {
        return Numerals.with(stroke.most(), turns() ? Shown.NEWTON_METRE : Shown.NEWTON);
    }

    boolean turns() {
        return stroke.spring().law().turns();
    }

    /** Where it is worked most. */
    Place place() {
        double height = stroke.shortestAt();
        if (Math.abs(height - Bench.flat(machine)) < SAME) {
            return Place.at(height, "lying flat");
        }
        boolean top = Math.abs(height - Bench.top(machine)) < SAME;
        return Place.at(height, top ? "at the top" : "where they are shortest");
    }

    /** E.g. "Lying flat", to begin a sentence. */
    String where() {
        String words = place().words();
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    /** The load as a fact: nothing is given to judge the spring by. */
    Check loadOnly() {
        Outcome outcome =
                Outcome.of(
                        Amount.of(stroke.most(), turns() ? Shown.NEWTON_METRE : Shown.NEWTON),
                        Amount.of(Double.NaN, turns() ? Shown.NEWTON_METRE : Shown.NEWTON),
                        SpringStrength.OWN_LIMIT,
                        place());
        return check(
                Question.ORDER,
                "survive.spring",
                "Load of the springs: " + name(),
                where() + " each spring of the " + name() + " gives " + load() + ".",
                outcome,
                Hand.card(
                        "load of one spring",
                        "as the machine file states its law",
                        outcome.required().text(),
                        "Machine file"),
                List.of(
                        "The strength of the "
                                + name()
                                + " is not judged: the machine file gives no wire and coils."));
    }

    /** A check on these springs that answers a question. */
    Check check(
            Question question,
            String id,
            String title,
            String finding,
            Outcome outcome,
            HandCard hand,
            List<String> limits) {
        return new Check(
                id,
                question,
                new Check.Text(title, Sentences.of(finding)),
                outcome,
                new Grounds(Optional.empty(), hand, List.of(), List.of(), limits),
                List.of(),
                Optional.empty());
    }
}
