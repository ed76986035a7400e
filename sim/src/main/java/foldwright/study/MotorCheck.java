// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.lift.CurvePoint;
import foldwright.lift.Direction;
import foldwright.lift.Finding;
import foldwright.lift.ForceCurve;
import foldwright.machine.Machine;
import java.util.List;
import java.util.Optional;

/**
 * Does the motor move the lift over its whole travel? Required is the torque at the most loaded
 * motor, available its pull-out torque at the speed asked for; the worse of raising and lowering.
 */
final class MotorCheck {
    static final String ID = "fold.motor";

    private final Machine machine;
    private final ForceCurve curve;

    MotorCheck(Machine machine, ForceCurve curve) {
        this.machine = machine;
        this.curve = curve;
    }

    /** Numbers only, for trying changes. */
    Outcome outcome() {
        double rule = machine.limits().motorMargin();
        Optional<Finding> lock = lock();
        if (lock.isPresent()) {
            Finding f = lock.get();
            Amount available = Amount.of(anyAvailable(), Shown.NEWTON_METRE);
            Amount endless = Amount.of(Double.POSITIVE_INFINITY, Shown.NEWTON_METRE);
            return new Outcome(
                    endless, available, 0, rule, Place.at(f.from(), "locked by pin friction"));
        }
        Optional<CurvePoint> worst = curve.worst();
        if (worst.isEmpty()) {
            return unknown(Place.anywhere("nothing computed"));
        }
        CurvePoint p = worst.get();
        Outcome known =
                new Outcome(
                        Amount.of(Math.abs(p.motor().needed()), Shown.NEWTON_METRE),
                        Amount.of(p.motor().available(), Shown.NEWTON_METRE),
                        p.margin(),
                        rule,
                        place(p));
        return known.verdict() == Verdict.HOLDS && unsolved().isPresent()
                ? unknown(Place.at(unsolved().get().from(), "no balance of loads found"))
                : known;
    }

    private Outcome unknown(Place place) {
        Amount nothing = Amount.of(Double.NaN, Shown.NEWTON_METRE);
        return new Outcome(nothing, nothing, Double.NaN, machine.limits().motorMargin(), place);
    }

    /** Heights of which nothing is known: what holds elsewhere may not hold there. */
    private Optional<Finding> unsolved() {
        return curve.findings(Finding.Kind.NOT_SOLVED).stream().findFirst();
    }

    private Place place(CurvePoint p) {
        Place place = Places.of(curve, Bench.flat(machine), Bench.top(machine), p.height());
        if (p.at().direction() == Direction.RAISING) {
            return place;
        }
        String words = place.words().isEmpty() ? "lowering" : place.words() + ", lowering";
        return Place.at(p.height(), words);
    }

    private Optional<Finding> lock() {
        return curve.findings().stream()
                .filter(
                        f ->
                                f.kind() == Finding.Kind.PINS_LOCK
                                        || f.kind() == Finding.Kind.GUIDE_JAMS)
                .filter(f -> f.to() > Bench.flat(machine))
                .findFirst();
    }

    private double anyAvailable() {
        return curve.raising().stream()
                .findFirst()
                .map(p -> p.motor().available())
                .orElse(Double.NaN);
    }

    Check check() {
        Outcome outcome = outcome();
        Check.Text text = new Check.Text(SourceWords.of(machine).torque(), finding(outcome));
        Optional<CurvePoint> worst = curve.worst();
        Grounds grounds =
                new Grounds(
                        worst.map(this::split),
                        worst.map(new MotorSums(machine)::at).orElse(new HandCard(List.of(), "")),
                        Assumptions.under(machine, "drive", "lift.pins", "lift.sliders"),
                        List.of(),
                        List.of(
                                "Steady motion with the friction given; a start from rest needs what"
                                        + " static friction adds."
                                        + (machine.drive().byHand()
                                                ? ""
                                                : " Pull-out torque falls with supply voltage and"
                                                        + " temperature.")));
        return new Check(ID, Question.FOLD, text, outcome, grounds, List.of(), plot());
    }

    private String finding(Outcome o) {
        Optional<Finding> lock = lock();
        if (lock.isPresent()) {
            return Sentences.of(lock.get().sentence());
        }
        if (Double.isNaN(o.margin())) {
            return "The force curve could not be computed"
                    + unsolved().map(f -> ": " + f.sentence()).orElse("")
                    + ".";
        }
        SourceWords source = SourceWords.of(machine);
        String where = o.worst().height().isPresent() ? " at " + o.worst().text() : "";
        String first =
                "The lift needs "
                        + o.required().text()
                        + " at "
                        + source.where()
                        + where
                        + "; "
                        + source.gives()
                        + " "
                        + o.available().text()
                        + ".";
        return o.margin() < 1 ? first + stalls() : first;
    }

    /** Where it stalls while rising, from the curve itself. */
    private String stalls() {
        List<CurvePoint> up = curve.raising();
        int last = -1;
        for (int i = 0; i < up.size(); i++) {
            if (up.get(i).margin() < 1) {
                last = i;
            }
        }
        if (last < 0) {
            return " It stalls on the way down.";
        }
        if (last == up.size() - 1) {
            return " It stalls up to the top.";
        }
        double h = crossing(up.get(last), up.get(last + 1));
        String millimetres = Numerals.fixed(Shown.MILLIMETRE.fromSi(h), 0) + "\u00a0mm";
        return up.get(0).margin() < 1
                ? " It stalls everywhere below "
                        + millimetres
                        + " and looks healthy above, so a test started half way up would pass."
                : " It stalls on the way, last at " + millimetres + ".";
    }

    private static double crossing(CurvePoint below, CurvePoint above) {
        double a = below.motor().available() - Math.abs(below.motor().needed());
        double b = above.motor().available() - Math.abs(above.motor().needed());
        return below.height() + a / (a - b) * (above.height() - below.height());
    }

    private Split split(CurvePoint p) {
        String words =
                "torque at the "
                        + SourceWords.of(machine).noun()
                        + " at "
                        + Numerals.fixed(Shown.MILLIMETRE.fromSi(p.height()), 0)
                        + " mm, "
                        + p.at().direction().label();
        return Split.of(words, p.motorShares(), Shown.NEWTON_METRE);
    }

    private Optional<HeightPlot> plot() {
        return CurvePlots.motor(machine, curve);
    }
}
