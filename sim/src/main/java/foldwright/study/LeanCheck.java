// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.machine.Machine;
import java.util.List;
import java.util.Optional;

/**
 * Lean of the deck under the asked acceleration, from a pull test: force of the moving mass over
 * the sideways stiffness the maker measured. Exists only where that stiffness and a gantry are
 * given.
 */
final class LeanCheck {
    private final Machine machine;

    LeanCheck(Machine machine) {
        this.machine = machine;
    }

    Optional<Check> check() {
        return PulledLean.of(machine).map(this::withChanges);
    }

    private Check withChanges(PulledLean lean) {
        Check check = check(lean);
        boolean enough = check.verdict() != Verdict.TIGHT && check.verdict() != Verdict.FAILS;
        return enough
                ? check
                : check.with(
                        new Remedies(machine, check.outcome(), LeanCheck::after).find(changes()));
    }

    private static Outcome after(Machine changed) {
        return new LeanCheck(changed).outcome(PulledLean.of(changed).orElseThrow());
    }

    private static List<Change> changes() {
        return List.of(
                GantryChanges.lighterCarriage(),
                GantryChanges.slower("three quarters of the acceleration", 0.75),
                GantryChanges.slower("half the acceleration", 0.5),
                new Change(
                        "twice as stiff in the pull test, by bracing",
                        m ->
                                Edit.with(
                                        m,
                                        "measured.lateralStiffness",
                                        2 * PulledLean.of(m).orElseThrow().stiffness())));
    }

    private Outcome outcome(PulledLean lean) {
        return Outcome.of(
                Amount.of(lean.way(), Shown.MILLIMETRE),
                Amount.of(machine.limits().lean().orElse(Double.NaN), Shown.MILLIMETRE),
                Place.at(
                        Bench.top(machine),
                        "at "
                                + Numerals.with(
                                        lean.acceleration(), Shown.METRE_PER_SECOND_SQUARED)));
    }

    private Check check(PulledLean lean) {
        Outcome outcome = outcome(lean);
        String finding =
                "When bridge and carriage start, the deck leans "
                        + outcome.required().text()
                        + " at the top; "
                        + (machine.limits().lean().isPresent()
                                ? outcome.available().text() + " is allowed."
                                : "no limit is given.");
        HandCard card =
                Hand.card(
                        "lean under steady acceleration",
                        "s = m a/k",
                        Numerals.with(lean.mass(), Shown.KILOGRAM)
                                + " × "
                                + Numerals.with(lean.acceleration(), Shown.METRE_PER_SECOND_SQUARED)
                                + " / "
                                + Numerals.with(lean.stiffness(), Shown.NEWTON_PER_MILLIMETRE)
                                + " = "
                                + outcome.required().text(),
                        "Newton's second law and a spring");
        return new Check(
                "lean.pull",
                Question.LEAN,
                new Check.Text("Lean from the pull test", finding),
                outcome,
                new Grounds(
                        Optional.empty(),
                        card,
                        Assumptions.under(machine, "measured.lateralStiffness"),
                        List.of(),
                        List.of(
                                "Steady lean only: the sway after a sudden start is up to"
                                        + " twice as large. Play of the pins is not in the"
                                        + " measured stiffness when the pull test began"
                                        + " loaded.")),
                List.of(),
                Optional.empty());
    }
}
