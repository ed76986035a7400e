// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.lift.ArmLoad;
import foldwright.lift.CurvePoint;
import foldwright.lift.ForceCurve;
import foldwright.lift.PartShares;
import foldwright.lift.PinLoad;
import foldwright.lift.ScrewLoad;
import foldwright.machine.Machine;
import foldwright.machine.linkage.BallBearing;
import foldwright.machine.linkage.Bush;
import foldwright.machine.linkage.PinPlace;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/** Load used over load allowed of pins, arms, screws and nuts. */
final class RatingChecks {
    /**
     * Buckling load over load: one screw maker asks to stay under 80 % of the Euler load, another
     * halves it; the careful one is taken.
     */
    private static final double BUCKLING = 2;

    /** Whirling speed over speed: 80 % of the first critical speed, common practice, no source. */
    private static final double WHIRLING = 1.25;

    private final Machine machine;
    private final ForceCurve curve;
    private final List<CurvePoint> points;
    private final RatingSums sums;
    private final Runs runs;

    RatingChecks(Machine machine, ForceCurve curve, Runs runs) {
        this.runs = runs;
        this.machine = machine;
        this.curve = curve;
        sums = new RatingSums(machine);
        points = Stream.concat(curve.raising().stream(), curve.lowering().stream()).toList();
    }

    List<Check> checks() {
        List<Check> out = new ArrayList<>();
        if (points.isEmpty()) {
            return out;
        }
        arms().ifPresent(out::add);
        pins().ifPresent(out::add);
        out.add(buckling());
        out.add(whirling());
        nut().ifPresent(out::add);
        return out;
    }

    private Optional<CurvePoint> most(ToDoubleFunction<CurvePoint> load) {
        return points.stream().max(Comparator.comparingDouble(load));
    }

    private Place place(CurvePoint p, String what) {
        String words =
                Places.of(curve, Bench.flat(machine), Bench.top(machine), p.height()).words();
        return Place.at(p.height(), words.isEmpty() ? what : what + ", " + words);
    }

    private Check check(String id, Check.Text text, Outcome outcome, HandCard card) {
        return new Check(
                id, Question.ORDER, text, outcome, Grounds.of(card), List.of(), Optional.empty());
    }

    private Check check(
            String id, Check.Text text, Outcome outcome, HandCard card, Optional<Split> split) {
        Grounds grounds = Grounds.of(card, split);
        return new Check(id, Question.ORDER, text, outcome, grounds, List.of(), Optional.empty());
    }

    private Optional<PartShares> shares(CurvePoint at) {
        return runs.shares(machine, at.height(), at.at().direction());
    }

    /** What is allowed, in words that follow what is; nothing where the file does not say. */
    private static String allowed(Outcome outcome) {
        return Double.isFinite(outcome.available().si())
                ? " of " + outcome.available().text() + " allowed"
                : "";
    }

    /** Where and which way, in words that follow the part. */
    private static String when(CurvePoint p) {
        return " at "
                + Numerals.fixed(Shown.MILLIMETRE.fromSi(p.height()), 0)
                + " mm, "
                + p.at().direction().label();
    }

    private Optional<Check> arms() {
        OptionalDouble strength = machine.lift().arm().material().strength();
        Optional<CurvePoint> at =
                most(p -> p.parts().arms().isEmpty() ? 0 : p.parts().worstArm().stress());
        if (at.isEmpty() || at.get().parts().arms().isEmpty()) {
            return Optional.empty();
        }
        ArmLoad arm = at.get().parts().worstArm();
        Outcome outcome =
                Outcome.of(
                        Amount.of(arm.stress(), Shown.MEGAPASCAL),
                        Amount.of(strength.orElse(Double.NaN), Shown.MEGAPASCAL),
                        place(at.get(), arm.arm()));
        String finding =
                "The arm most bent carries "
                        + Numerals.with(arm.bending(), Shown.NEWTON_METRE)
                        + " at its centre pin, "
                        + outcome.required().text()
                        + allowed(outcome)
                        + ".";
        Optional<Split> split =
                shares(at.get())
                        .flatMap(s -> s.arm(arm.arm()))
                        .map(
                                s ->
                                        Split.of(
                                                "bending of the " + arm.arm() + when(at.get()),
                                                s,
                                                Shown.NEWTON_METRE));
        Check.Text text = new Check.Text("Arms bending", finding);
        return Optional.of(check("order.arms", text, outcome, sums.arm(arm), split));
    }

    private Optional<Check> pins() {
        Optional<CurvePoint> at =
                most(p -> p.parts().pins().isEmpty() ? 0 : p.parts().worstPin().force());
        if (at.isEmpty() || at.get().parts().pins().isEmpty()) {
            return Optional.empty();
        }
        PinLoad pin = at.get().parts().worstPin();
        var bearing = machine.lift().pinAt(PinPlace.CENTRE).bearing();
        String carries =
                "The " + pin.pin() + " carries " + Numerals.with(pin.force(), Shown.NEWTON);
        Optional<Split> split =
                shares(at.get())
                        .flatMap(s -> s.pin(pin.pin()))
                        .map(
                                s ->
                                        Split.of(
                                                "force on the " + pin.pin() + when(at.get()),
                                                s,
                                                Shown.NEWTON));
        if (bearing instanceof BallBearing ball) {
            double rating = ball.staticRating().orElse(Double.NaN) * ball.count();
            Outcome outcome =
                    Outcome.of(
                            Amount.of(pin.force(), Shown.NEWTON),
                            Amount.of(rating, Shown.NEWTON),
                            place(at.get(), pin.pin()));
            Check.Text text =
                    new Check.Text(
                            "Pin bearings", carries + allowed(outcome) + ", the most of all.");
            return Optional.of(check("order.pins", text, outcome, sums.bearings(pin, ball), split));
        }
        Bush bush = (Bush) bearing;
        Outcome outcome =
                Outcome.of(
                        Amount.of(pin.pressure(), Shown.MEGAPASCAL),
                        Amount.of(bush.allowedPressure().orElse(Double.NaN), Shown.MEGAPASCAL),
                        place(at.get(), pin.pin()));
        String pressure = outcome.required().text() + allowed(outcome) + " in its bush.";
        Check.Text text =
                new Check.Text("Pin pressure", carries + ", the most of all: " + pressure);
        return Optional.of(check("order.pins", text, outcome, sums.bush(pin, bush), split));
    }

    private Check buckling() {
        CurvePoint at = most(p -> p.screw().bucklingUse()).orElseThrow();
        ScrewLoad column = at.screw();
        double pushed = column.bucklingUse() == 0 ? 0 : Math.abs(column.force());
        Outcome outcome =
                Outcome.of(
                        Amount.of(pushed, Shown.NEWTON),
                        Amount.of(column.bucklingLoad(), Shown.NEWTON),
                        BUCKLING,
                        place(at, "screw"));
        String finding =
                pushed == 0
                        ? "The screw is only ever pulled; it cannot buckle."
                        : "The screw is pressed with "
                                + outcome.required().text()
                                + "; free over "
                                + Numerals.with(column.freeLength(), Shown.MILLIMETRE)
                                + " it would buckle at "
                                + outcome.available().text()
                                + ".";
        HandCard card = sums.buckling(column);
        return check("order.buckling", new Check.Text("Screw buckling", finding), outcome, card);
    }

    private Check whirling() {
        CurvePoint at = most(p -> p.screw().speed() / p.screw().whirlSpeed()).orElseThrow();
        Outcome outcome =
                Outcome.of(
                        Amount.of(at.screw().speed(), Shown.REVOLUTION_PER_SECOND),
                        Amount.of(at.screw().whirlSpeed(), Shown.REVOLUTION_PER_SECOND),
                        WHIRLING,
                        place(at, "screw"));
        String finding =
                "The screw turns at up to "
                        + outcome.required().text()
                        + "; it would whirl at "
                        + outcome.available().text()
                        + ".";
        HandCard card = sums.whirling();
        return check("order.whirling", new Check.Text("Screw whirling", finding), outcome, card);
    }

    private Optional<Check> nut() {
        OptionalDouble allowed = machine.drive().screw().nut().allowedPressure();
        CurvePoint at = most(p -> p.screw().nutPressure()).orElseThrow();
        Outcome outcome =
                Outcome.of(
                        Amount.of(at.screw().nutPressure(), Shown.MEGAPASCAL),
                        Amount.of(allowed.orElse(Double.NaN), Shown.MEGAPASCAL),
                        place(at, "nut"));
        String finding =
                "Pressure on the flanks of the nut is "
                        + outcome.required().text()
                        + allowed(outcome)
                        + ".";
        HandCard card = sums.nut(at.screw());
        return Optional.of(
                check("order.nut", new Check.Text("Nut pressure", finding), outcome, card));
    }
}
