// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.lift.HandLinkage;
import foldwright.lift.HandSum;
import foldwright.machine.Machine;
import foldwright.machine.linkage.PinPlace;
import foldwright.machine.linkage.SliderEnd;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Can pins or guides lock however hard they are driven? */
final class JamChecks {
    /** Flat stage height over locking height. Common practice, no source. */
    private static final double CLEAR_OF_LOCK = 3;

    private final Machine machine;

    JamChecks(Machine machine) {
        this.machine = machine;
    }

    List<Check> checks() {
        List<Check> out = new ArrayList<>();
        out.add(pins());
        guide("base", machine.lift().sliders().base()).ifPresent(out::add);
        return out;
    }

    private Check pins() {
        var pin = machine.lift().pinAt(PinPlace.CENTRE);
        HandSum lock = HandLinkage.lockHeight(pin.bearing().friction(), pin.radius());
        double stage = Bench.flat(machine) / machine.lift().stages();
        Outcome outcome =
                Outcome.of(
                        Amount.of(lock.value(), Shown.MILLIMETRE),
                        Amount.of(stage, Shown.MILLIMETRE),
                        CLEAR_OF_LOCK,
                        Place.at(Bench.flat(machine), "lying flat"));
        String finding =
                "Pin friction locks a stage below "
                        + outcome.required().text()
                        + " however hard it is driven; lying flat a stage is "
                        + outcome.available().text()
                        + " high.";
        return new Check(
                "fold.pins",
                Question.FOLD,
                new Check.Text("Pins locking", finding),
                outcome,
                new Grounds(
                        Optional.empty(),
                        Hand.card(lock),
                        Assumptions.under(machine, "lift.pins"),
                        List.of(),
                        List.of(lock.validity())),
                List.of(),
                Optional.empty());
    }

    /** Two contact points of a guide lock when the push runs outside both friction cones. */
    private Optional<Check> guide(String where, SliderEnd end) {
        if (end.pushOffset() == 0 || end.friction() == 0) {
            return Optional.empty();
        }
        double needed = 2 * end.friction() * Math.abs(end.pushOffset());
        Outcome outcome =
                Outcome.of(
                        Amount.of(needed, Shown.MILLIMETRE),
                        Amount.of(end.guideLength(), Shown.MILLIMETRE),
                        Verdict.RULE,
                        Place.anywhere("any height, guides in the " + where));
        String finding =
                "A push "
                        + Numerals.with(Math.abs(end.pushOffset()), Shown.MILLIMETRE)
                        + " off the guide jams one shorter than "
                        + outcome.required().text()
                        + "; this one is "
                        + outcome.available().text()
                        + " long.";
        return Optional.of(
                new Check(
                        "fold.guide",
                        Question.FOLD,
                        new Check.Text("Guides jamming", finding),
                        outcome,
                        Grounds.of(
                                Hand.card(
                                        "guide length at which an offset push jams",
                                        "s = 2 μ e",
                                        "2 × "
                                                + Numerals.number(end.friction())
                                                + " × "
                                                + Numerals.with(
                                                        Math.abs(end.pushOffset()),
                                                        Shown.MILLIMETRE)
                                                + " = "
                                                + outcome.required().text(),
                                        "Two-point contact of a drawer guide; bearing makers' 2:1 rule"
                                                + " is this at friction 0.25")),
                        List.of(),
                        Optional.empty()));
    }
}
