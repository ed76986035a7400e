// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.machine.Machine;
import foldwright.machine.Measured;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

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
        var limits = machine.limits();
        OptionalDouble pulled =
                machine.measured().map(Measured::lateralStiffness).orElse(OptionalDouble.empty());
        if (pulled.isEmpty() || machine.gantryOnDeck().isEmpty()) {
            return Optional.empty();
        }
        var gantry = machine.gantryOnDeck().get();
        double mass = gantry.movingMass();
        double acceleration = gantry.moves().acceleration();
        double stiffness = pulled.getAsDouble();
        double lean = mass * acceleration / stiffness;
        Outcome outcome =
                Outcome.of(
                        Amount.of(lean, Shown.MILLIMETRE),
                        Amount.of(limits.lean().orElse(Double.NaN), Shown.MILLIMETRE),
                        Place.at(
                                Bench.top(machine),
                                "at "
                                        + Numerals.with(
                                                acceleration, Shown.METRE_PER_SECOND_SQUARED)));
        String finding =
                "When bridge and carriage start, the deck leans "
                        + outcome.required().text()
                        + " at the top; "
                        + (limits.lean().isPresent()
                                ? outcome.available().text() + " are allowed."
                                : "no limit is given.");
        HandCard card =
                Hand.card(
                        "lean under steady acceleration",
                        "s = m a/k",
                        Numerals.with(mass, Shown.KILOGRAM)
                                + " × "
                                + Numerals.with(acceleration, Shown.METRE_PER_SECOND_SQUARED)
                                + " / "
                                + Numerals.with(stiffness, Shown.NEWTON_PER_MILLIMETRE)
                                + " = "
                                + outcome.required().text(),
                        "Newton's second law and a spring");
        return Optional.of(
                new Check(
                        "lean.pull",
                        Question.LEAN,
                        new Check.Text("Lean from the pull test", finding),
                        outcome,
                        new Grounds(
                                List.of(),
                                card,
                                Assumptions.under(machine, "measured.lateralStiffness"),
                                List.of(),
                                List.of(
                                        "Steady lean only: the sway after a sudden start is up to"
                                                + " twice as large. Play of the pins is not in the"
                                                + " measured stiffness when the pull test began"
                                                + " loaded.")),
                        List.of(),
                        Optional.empty()));
    }
}
