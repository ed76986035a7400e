// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.lift.Cause;
import foldwright.lift.CurvePoint;
import foldwright.lift.Finding;
import foldwright.lift.ForceCurve;
import foldwright.lift.SpringStroke;
import foldwright.machine.Machine;
import foldwright.machine.linkage.Latch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Do the helper springs leave weight on the drive, can the latch hold what they lift, do they close
 * solid, does the nut change sides?
 */
final class SpringChecks {
    /**
     * Weight over spring lift from which the deck rests: a tenth of the weight stays downward.
     * Common practice, no source.
     */
    private static final double RESTS = 1 / 0.9;

    private final Machine machine;
    private final ForceCurve curve;
    private final List<SpringStroke> strokes;

    SpringChecks(Machine machine, ForceCurve curve, List<SpringStroke> strokes) {
        this.machine = machine;
        this.curve = curve;
        this.strokes = strokes;
    }

    List<Check> checks() {
        List<Check> out = new ArrayList<>();
        residual().ifPresent(out::add);
        latch().ifPresent(out::add);
        nut().ifPresent(out::add);
        for (SpringStroke stroke : strokes) {
            new SpringRoom(new WorkedSpring(machine, stroke)).check().ifPresent(out::add);
        }
        return out;
    }

    private static double weight(CurvePoint p) {
        return p.footShares().of(Cause.DECK) + p.footShares().of(Cause.ARMS);
    }

    private static double lift(CurvePoint p) {
        return -p.footShares().of(Cause.SPRINGS);
    }

    /** Weight against springs, both as forces at the feet, wherever springs act. */
    private Optional<Check> residual() {
        List<CurvePoint> up = curve.raising();
        if (machine.springs().isEmpty() || up.size() < 2) {
            return Optional.empty();
        }
        CurvePoint worst = up.get(0);
        for (CurvePoint p : up) {
            if (weight(p) / lift(p) > 0 && ratio(p) < ratio(worst)) {
                worst = p;
            }
        }
        double left = 1 - 1 / ratio(worst);
        Outcome outcome =
                Outcome.of(
                        Amount.of(lift(worst), Shown.NEWTON),
                        Amount.of(weight(worst), Shown.NEWTON),
                        RESTS,
                        Places.of(curve, Bench.flat(machine), Bench.top(machine), worst.height()));
        String finding =
                left >= 0
                        ? "With springs in, "
                                + Numerals.with(left, Shown.PERCENT)
                                + " of the weight still presses the deck down at "
                                + outcome.worst().text()
                                + "."
                        : "The springs lift more than the weight at "
                                + outcome.worst().text()
                                + ": it pops open when unlatched, and the nut changes sides.";
        return Optional.of(
                new Check(
                        "fold.springs",
                        Question.FOLD,
                        new Check.Text("Weight against springs", finding),
                        outcome,
                        new Grounds(
                                Optional.empty(),
                                Hand.card(
                                        "weight and springs, both as force at the feet",
                                        "margin = (deck + arms) / springs",
                                        Numerals.with(weight(worst), Shown.NEWTON)
                                                + " / "
                                                + Numerals.with(lift(worst), Shown.NEWTON)
                                                + " = "
                                                + Numerals.margin(outcome.margin()),
                                        "Virtual work; a tenth of the weight left is common practice,"
                                                + " no source"),
                                List.of(),
                                List.of(),
                                List.of(
                                        "Friction left out: it can hide a small excess of springs.")),
                        List.of(),
                        Optional.of(plot())));
    }

    private static double ratio(CurvePoint p) {
        return lift(p) <= 0 ? Double.POSITIVE_INFINITY : weight(p) / lift(p);
    }

    private HeightPlot plot() {
        List<CurvePoint> up = curve.raising();
        return new HeightPlot(
                new HeightPlot.Caption("Springs at the feet", "against the weight", Shown.NEWTON),
                CurvePlots.of(up, CurvePoint::height),
                CurvePlots.of(up, SpringChecks::lift),
                Optional.of(
                        new HeightPlot.Limit(
                                "weight, as force at the feet",
                                CurvePlots.of(up, SpringChecks::weight),
                                RESTS)),
                CurvePlots.of(up, SpringChecks::ratio),
                List.of(),
                List.of());
    }

    private Optional<Check> latch() {
        Optional<Finding> pops = curve.findings(Finding.Kind.POPS_OPEN).stream().findFirst();
        if (pops.isEmpty()) {
            return Optional.empty();
        }
        double allowed = machine.latch().map(Latch::allowedForce).orElse(0.0);
        Outcome outcome =
                Outcome.of(
                        Amount.of(pops.get().value(), Shown.NEWTON),
                        Amount.of(allowed, Shown.NEWTON),
                        Place.at(pops.get().from(), "latched"));
        String finding =
                Sentences.of(pops.get().sentence())
                        + (machine.latch().isEmpty() ? " The machine has no latch." : "");
        return Optional.of(
                new Check(
                        "fold.latch",
                        Question.FOLD,
                        new Check.Text("Latch force", finding),
                        outcome,
                        Grounds.of(
                                Hand.card(
                                        "springs minus weight",
                                        "latch = S - W - Wa/2",
                                        outcome.required().text(),
                                        "Balance of the deck")),
                        List.of(),
                        Optional.empty()));
    }

    /** The jump in height when the nut takes up its play. */
    private Optional<Check> nut() {
        Optional<Finding> turns =
                curve.findings(Finding.Kind.NUT_LOAD_REVERSES).stream().findFirst();
        if (turns.isEmpty()) {
            return Optional.empty();
        }
        double play = machine.drive().screw().nut().play();
        double gain = machine.lift().stages() / Math.tan(Bench.angle(machine, turns.get().from()));
        OptionalDouble droop = machine.limits().droop();
        Outcome outcome =
                Outcome.of(
                        Amount.of(play * gain, Shown.MILLIMETRE),
                        Amount.of(droop.orElse(Double.NaN), Shown.MILLIMETRE),
                        Place.at(turns.get().from(), "where the nut changes sides"));
        String jump =
                " The deck then jumps by "
                        + outcome.required().text()
                        + " as the nut takes up its play.";
        return Optional.of(
                new Check(
                        "fold.nut",
                        Question.FOLD,
                        new Check.Text(
                                "Nut changes sides", Sentences.of(turns.get().sentence()) + jump),
                        outcome,
                        Grounds.of(
                                Hand.card(
                                        "jump in height",
                                        "dH = b n/tan θ",
                                        Numerals.with(play, Shown.MILLIMETRE)
                                                + " × "
                                                + Numerals.number(gain)
                                                + " = "
                                                + outcome.required().text(),
                                        "Derivative of H = n L sin θ and x = L cos θ")),
                        List.of(),
                        Optional.empty()));
    }
}
