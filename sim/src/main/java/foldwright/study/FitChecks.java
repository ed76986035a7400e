// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.machine.Box;
import foldwright.machine.Machine;
import foldwright.machine.Tool;
import foldwright.machine.WhenFolded;
import foldwright.machine.linkage.ArmPlanes;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Folded size against the box, arms against each other, the tool against the bed. */
final class FitChecks {
    /** Sizes fit or they do not; there is no reserve to ask for beyond the gap of the box. */
    private static final double FITS = 1;

    private final Machine machine;

    FitChecks(Machine machine) {
        this.machine = machine;
    }

    List<Check> checks() {
        List<Check> out = new ArrayList<>();
        machine.box().ifPresent(box -> box(out, box));
        arms().ifPresent(out::add);
        tool().ifPresent(out::add);
        return out;
    }

    private void box(List<Check> out, Box box) {
        Machine m = machine;
        double height = m.base().pinHeight() + Bench.flat(m) + m.deck().topAbovePins();
        String sum =
                Numerals.with(m.base().pinHeight(), Shown.MILLIMETRE)
                        + " + "
                        + Numerals.with(Bench.flat(m), Shown.MILLIMETRE)
                        + " + "
                        + Numerals.with(m.deck().topAbovePins(), Shown.MILLIMETRE);
        out.add(side(box, "height", height, box.height(), "base pins + flat + top", sum));
        double deckLeft = m.base().pinInset() - m.deck().pinInset();
        double left = Math.min(0, deckLeft);
        double right = Math.max(m.base().length(), deckLeft + m.deck().length());
        out.add(
                side(
                        box,
                        "length",
                        right - left,
                        box.length(),
                        "outer ends of base and deck",
                        spans(m.base().length(), deckLeft, deckLeft + m.deck().length())));
        double width = Math.max(m.base().width(), m.deck().width());
        out.add(
                side(
                        box,
                        "width",
                        width,
                        box.width(),
                        "the wider of base and deck",
                        "max("
                                + Numerals.with(m.base().width(), Shown.MILLIMETRE)
                                + ", "
                                + Numerals.with(m.deck().width(), Shown.MILLIMETRE)
                                + ")"));
    }

    /** Length over base (from 0) and deck, seen from the base's fixed end. */
    private static String spans(double base, double from, double to) {
        return "max("
                + Numerals.with(base, Shown.MILLIMETRE)
                + ", "
                + Numerals.with(to, Shown.MILLIMETRE)
                + ") - min(0 mm, "
                + Numerals.with(from, Shown.MILLIMETRE)
                + ")";
    }

    private Check side(
            Box box, String name, double size, double inside, String formula, String sum) {
        double room = inside - 2 * box.gap();
        if (name.equals("height")) {
            room = inside - box.gap();
        }
        Outcome outcome =
                Outcome.of(
                        Amount.of(size, Shown.MILLIMETRE),
                        Amount.of(room, Shown.MILLIMETRE),
                        FITS,
                        Place.anywhere(Numerals.with(room - size, Shown.MILLIMETRE) + " to spare"));
        String finding =
                "Folded, the "
                        + name
                        + " is "
                        + outcome.required().text()
                        + "; the "
                        + box.name()
                        + " has room for "
                        + outcome.available().text()
                        + "."
                        + (name.equals("length") ? crank() : "");
        return check(
                "fit." + name,
                new Check.Text("Folded " + name, finding),
                outcome,
                Hand.card(
                        "folded " + name,
                        formula,
                        sum + " = " + outcome.required().text(),
                        "Sizes of the machine file; what sticks out beyond base and deck is not"
                                + " counted"));
    }

    /** A crank stands out beyond the base, so it travels by itself. */
    private String crank() {
        return machine.drive().byHand() ? " The hand crank is not counted: take it off first." : "";
    }

    private Check check(String id, Check.Text text, Outcome outcome, HandCard card) {
        return new Check(
                id, Question.FIT, text, outcome, Grounds.of(card), List.of(), Optional.empty());
    }

    /** Arms of neighbouring stages in one plane meet when h cos θ falls below their depth. */
    private Optional<Check> arms() {
        var lift = machine.lift();
        if (lift.stages() < 2 || lift.arm().planes() != ArmPlanes.SHARED) {
            return Optional.empty();
        }
        double h = Bench.flat(machine) / lift.stages();
        double angle = Bench.angle(machine, Bench.flat(machine));
        double apart = h * Math.cos(angle);
        Outcome outcome =
                Outcome.of(
                        Amount.of(lift.arm().section().depth(), Shown.MILLIMETRE),
                        Amount.of(apart, Shown.MILLIMETRE),
                        FITS,
                        Place.at(Bench.flat(machine), "lying flat"));
        String finding =
                "Lying flat, arms of neighbouring stages are "
                        + outcome.available().text()
                        + " apart, centre to centre, and "
                        + outcome.required().text()
                        + " deep.";
        HandCard card =
                Hand.card(
                        "arms in one plane meet below",
                        "h cos θ = depth",
                        Numerals.with(h, Shown.MILLIMETRE)
                                + " × cos "
                                + Numerals.with(angle, Shown.DEGREE)
                                + " = "
                                + outcome.available().text(),
                        "Distance of parallel arms of two stages, own derivation");
        return Optional.of(
                check("fit.arms", new Check.Text("Arms meeting", finding), outcome, card));
    }

    private Optional<Check> tool() {
        if (machine.tool().isEmpty()
                || machine.tool().get().whenFolded() != WhenFolded.STAYS_ON
                || machine.base().bedHeight().isEmpty()) {
            return Optional.empty();
        }
        Tool tool = machine.tool().get();
        double pocket =
                machine.base().pinHeight()
                        + Bench.flat(machine)
                        - machine.deck().undersideBelowPins()
                        - machine.base().bedHeight().getAsDouble();
        Outcome outcome =
                Outcome.of(
                        Amount.of(tool.reach(), Shown.MILLIMETRE),
                        Amount.of(pocket, Shown.MILLIMETRE),
                        FITS,
                        Place.at(Bench.flat(machine), "lying flat"));
        String finding =
                "Folded with its tool on, "
                        + outcome.available().text()
                        + " are left between gantry and bed; the tool hangs "
                        + outcome.required().text()
                        + " down.";
        HandCard card =
                Hand.card(
                        "tool pocket when folded",
                        "base pins + flat - deck underside - bed",
                        Numerals.with(machine.base().pinHeight(), Shown.MILLIMETRE)
                                + " + "
                                + Numerals.with(Bench.flat(machine), Shown.MILLIMETRE)
                                + " - "
                                + Numerals.with(
                                        machine.deck().undersideBelowPins(), Shown.MILLIMETRE)
                                + " - "
                                + Numerals.with(
                                        machine.base().bedHeight().getAsDouble(), Shown.MILLIMETRE)
                                + " = "
                                + outcome.available().text(),
                        "Geometry");
        return Optional.of(
                check("fit.tool", new Check.Text("Tool pocket", finding), outcome, card));
    }
}
