// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.lift.HandDrive;
import foldwright.lift.HoldResult;
import foldwright.lift.HoldResult.RunDown;
import foldwright.machine.Machine;
import foldwright.machine.drive.ScrewThread;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Does it stay where it is with the power off, and level? */
final class HoldChecks {
    static final String ID = "stay.hold";

    /** Less than this prints as nothing, and no dial shows it [m]. */
    private static final double LEVEL = 5e-7;

    private final Machine machine;
    private final HoldResult hold;

    HoldChecks(Machine machine, HoldResult hold) {
        this.machine = machine;
        this.hold = hold;
    }

    List<Check> checks() {
        List<Check> out = new ArrayList<>();
        out.add(thread());
        level().ifPresent(out::add);
        return out;
    }

    private List<HoldResult.Point> solved() {
        return hold.points().stream()
                .filter(p -> p.verdict() != HoldResult.Verdict.NOT_SOLVED)
                .toList();
    }

    private double least() {
        return machine.drive().screw().nut().leastFriction();
    }

    /**
     * Numbers only, for trying changes. What holds wherever it was solved is unknown as long as a
     * height is left open.
     */
    Outcome outcome() {
        Optional<HoldResult.Point> worst = hold.worst();
        double needed = worst.map(HoldResult.Point::frictionNeeded).orElse(Double.NaN);
        Place place =
                worst.map(p -> Place.at(p.height(), "thread at its least friction"))
                        .orElse(Place.anywhere("nothing computed"));
        Outcome known = outcome(Math.max(0, needed), place);
        return hold.unsolved().isEmpty() || known.verdict() != Verdict.HOLDS
                ? known
                : outcome(
                        Double.NaN,
                        Place.at(hold.unsolved().get(0).height(), "no balance of loads found"));
    }

    private Outcome outcome(double needed, Place place) {
        return Outcome.of(Amount.of(needed, Shown.NUMBER), Amount.of(least(), Shown.NUMBER), place);
    }

    /** Holding by the friction of the thread, pins and detent counted. */
    Check thread() {
        ScrewThread thread = machine.drive().screw().thread();
        HandDrive drive = new HandDrive(thread.pitchDiameter(), thread.lead(), thread.flankAngle());
        List<String> limits = new ArrayList<>();
        limits.add("Shaking lowers friction; tap the frame when you try it.");
        return new Check(
                ID,
                Question.STAY,
                new Check.Text("Holding unpowered", Sentences.of(hold.sentence()) + ran()),
                outcome(),
                new Grounds(
                        Optional.empty(),
                        Hand.card(drive.holdingFriction(), drive.efficiency(least())),
                        Assumptions.under(machine, "drive.screw"),
                        List.of(),
                        limits),
                List.of(),
                plot());
    }

    private String ran() {
        return hold.runDown().map(r -> " " + words(r)).orElse("");
    }

    private static String words(RunDown r) {
        String from = Numerals.with(r.from(), Shown.MILLIMETRE);
        String to = Numerals.with(r.to(), Shown.MILLIMETRE);
        String time = Numerals.with(r.time(), Shown.SECOND);
        return switch (r.end()) {
            case ARRIVED ->
                    "It runs from "
                            + from
                            + " to "
                            + to
                            + " in "
                            + time
                            + " and arrives at "
                            + Numerals.with(r.arrivalSpeed(), Shown.MILLIMETRE_PER_SECOND)
                            + " with "
                            + Numerals.with(r.energy(), Shown.JOULE)
                            + ".";
            case STANDS -> "Let go at " + from + ", it stands at " + to + " after " + time + ".";
            case MOVING ->
                    "Let go at "
                            + from
                            + ", it creeps down and is at "
                            + to
                            + " after "
                            + time
                            + ".";
            case NOT_SOLVED ->
                    "How it runs down from "
                            + from
                            + " could not be computed to its end: "
                            + r.failure().orElseThrow().message()
                            + ".";
        };
    }

    private Optional<HeightPlot> plot() {
        List<HoldResult.Point> points = solved();
        if (points.size() < 2) {
            return Optional.empty();
        }
        double least = least();
        double[] height = points.stream().mapToDouble(HoldResult.Point::height).toArray();
        double[] needed =
                points.stream().mapToDouble(p -> Math.max(0, p.frictionNeeded())).toArray();
        double[] given = new double[height.length];
        double[] margin = new double[height.length];
        for (int i = 0; i < height.length; i++) {
            given[i] = least;
            margin[i] = Outcome.marginOf(needed[i], least);
        }
        return Optional.of(
                new HeightPlot(
                        new HeightPlot.Caption(
                                "Thread friction to hold", "power off", Shown.NUMBER),
                        Series.of(height),
                        Series.of(needed),
                        Optional.of(
                                new HeightPlot.Limit(
                                        "thread has at least", Series.of(given), Verdict.RULE)),
                        Series.of(margin),
                        List.of(),
                        List.of()));
    }

    /** One side against the other at rest. */
    private Optional<Check> level() {
        OptionalDouble allowed = machine.limits().droop();
        Optional<HoldResult.Point> worst =
                solved().stream()
                        .max(java.util.Comparator.comparingDouble(p -> Math.abs(p.droop())));
        boolean level = worst.isEmpty() || Math.abs(worst.get().droop()) < LEVEL;
        if (worst.isEmpty() || (level && allowed.isEmpty())) {
            return Optional.empty();
        }
        double droop = Math.abs(worst.get().droop());
        Outcome outcome =
                Outcome.of(
                        Amount.of(droop, Shown.MILLIMETRE),
                        Amount.of(allowed.orElse(Double.NaN), Shown.MILLIMETRE),
                        Place.at(worst.get().height(), ""));
        double phase =
                machine.drive().lines().stream()
                        .mapToDouble(l -> Math.abs(l.phaseError()))
                        .max()
                        .orElse(0);
        double ahead = phase / (2 * Math.PI) * machine.drive().screw().thread().lead();
        double gain =
                machine.lift().stages() / Math.tan(Bench.angle(machine, worst.get().height()));
        String finding =
                "One side of the deck hangs "
                        + outcome.required().text()
                        + " lower than the other at "
                        + outcome.worst().text()
                        + (phase == 0 ? "." : ", with one screw out of step.");
        return Optional.of(
                new Check(
                        "stay.level",
                        Question.STAY,
                        new Check.Text("Sides level", finding),
                        outcome,
                        Grounds.of(
                                Hand.card(
                                        "side difference if the sides were free of each other",
                                        "dH = e n/tan θ",
                                        Numerals.with(ahead, Shown.MILLIMETRE)
                                                + " × "
                                                + Numerals.number(gain)
                                                + " = "
                                                + Numerals.with(ahead * gain, Shown.MILLIMETRE),
                                        "Derivative of H = n L sin θ and x = L cos θ")),
                        List.of(),
                        Optional.empty()));
    }
}
