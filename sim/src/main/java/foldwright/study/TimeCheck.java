// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.lift.RiseCommand;
import foldwright.machine.Machine;
import java.util.List;
import java.util.Optional;

/** Is the machine unfolded in the time allowed? Only where the file states one. */
final class TimeCheck {
    /** A time is kept or it is not; the limit holds by itself. */
    private static final double RULE = 1;

    private final Machine machine;

    TimeCheck(Machine machine) {
        this.machine = machine;
    }

    Optional<Check> check() {
        if (machine.limits().unfoldTime().isEmpty()) {
            return Optional.empty();
        }
        double time = RiseCommand.unfolding(machine).end();
        Outcome outcome =
                Outcome.of(
                        Amount.of(time, Shown.SECOND),
                        Amount.of(machine.limits().unfoldTime().getAsDouble(), Shown.SECOND),
                        RULE,
                        Place.anywhere("from flat to the top"));
        String finding =
                "Unfolding takes "
                        + outcome.required().text()
                        + " as asked, with its ramps; "
                        + outcome.available().text()
                        + " is allowed.";
        return Optional.of(
                new Check(
                        "fold.time",
                        Question.FOLD,
                        new Check.Text("Time to unfold", finding),
                        outcome,
                        Grounds.of(card(time)),
                        List.of(),
                        Optional.empty()));
    }

    private HandCard card(double time) {
        double travel = Bench.top(machine) - Bench.flat(machine);
        return Hand.card(
                "mean speed of the deck",
                "v = h/t",
                Numerals.with(travel, Shown.MILLIMETRE)
                        + "/"
                        + Numerals.with(time, Shown.SECOND)
                        + " = "
                        + Numerals.with(travel / time, Shown.MILLIMETRE_PER_SECOND),
                "The rise asked for, without an opening latch; a run in time (fold) shows whether the"
                        + " motor follows");
    }
}
