// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.lift.FoldResult;
import foldwright.machine.Machine;
import foldwright.machine.keys.Keys;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Plots and quality of a run in time. */
public final class FoldPlots {
    /** Closing error allowed, as a share of the energy turned over [1]. */
    private static final double ENERGY = 1e-3;

    /** Change of the worst margin allowed when the step is halved [1]. */
    private static final double HALVING = 0.01;

    private static final String CHATTER =
            ", again and again: the drive chatters, as a self-locking screw may under a load that drives"
                    + " it; its margins are not to be relied on, and the machine may groan";

    private FoldPlots() {}

    /** Height, and torque against pull-out torque. */
    public static List<TimePlot> of(Machine machine, FoldResult run) {
        SourceWords source = SourceWords.of(machine);
        Series time = of(run, FoldResult.Sample::time);
        List<TimePlot.Event> events = new ArrayList<>();
        for (FoldResult.Event e : run.events()) {
            String words = Keys.words(e.kind());
            events.add(new TimePlot.Event(e.time(), words, verdict(e.kind())));
        }
        return List.of(
                new TimePlot(
                        new HeightPlot.Caption(
                                "Height of the deck pins",
                                run.direction().label(),
                                Shown.MILLIMETRE),
                        time,
                        List.of(
                                new TimePlot.Curve(
                                        "height",
                                        TimePlot.Kind.FOUND,
                                        of(run, FoldResult.Sample::height))),
                        events),
                new TimePlot(
                        new HeightPlot.Caption(
                                "Torque at " + source.where(),
                                "against its limit",
                                Shown.NEWTON_METRE),
                        time,
                        List.of(
                                new TimePlot.Curve(
                                        source.limit(),
                                        TimePlot.Kind.LIMIT,
                                        of(run, s -> s.motor().pullOut())),
                                new TimePlot.Curve(
                                        "torque",
                                        TimePlot.Kind.FOUND,
                                        of(run, s -> s.motor().torque()))),
                        List.of()));
    }

    private static Series of(FoldResult run, ToDoubleFunction<FoldResult.Sample> number) {
        return Series.of(run.samples().stream().mapToDouble(number).toArray());
    }

    private static Verdict verdict(FoldResult.EventKind kind) {
        return switch (kind) {
            case STEPS_LOST, STALLED -> Verdict.FAILS;
            case NOT_SOLVED -> Verdict.UNKNOWN;
            case NUT_LOAD_REVERSED, STEP_HALVED, CHATTERS, LATCH_MISSED -> Verdict.TIGHT;
            default -> Verdict.HOLDS;
        };
    }

    /** Energy balance and convergence in words. */
    public static List<Assessment.Trust> trust(FoldResult run) {
        String name = "run in time, " + run.direction().label();
        FoldResult.Convergence c = run.convergence();
        double error = run.ledger().relativeError();
        String balance =
                "energy balance closes to "
                        + Numerals.error(error, ENERGY)
                        + " of the energy turned over";
        String steps =
                c.steps()
                        + " steps of "
                        + Numerals.with(c.step(), Shown.SECOND)
                        + ", "
                        + Numerals.number(c.solves())
                        + " solves a step, "
                        + c.halvedSteps()
                        + " halved";
        List<Assessment.Trust> out = new ArrayList<>();
        out.add(new Assessment.Trust(name, balance, error <= ENERGY));
        boolean chatters =
                run.events().stream().anyMatch(e -> e.kind() == FoldResult.EventKind.CHATTERS);
        out.add(new Assessment.Trust(name, chatters ? steps + CHATTER : steps, !chatters));
        c.atTwiceTheStep()
                .filter(o -> o != run.outcome())
                .ifPresent(o -> out.add(new Assessment.Trust(name, otherwise(run, o), false)));
        double change = c.marginChangeOnHalving();
        if (!Double.isNaN(change)) {
            out.add(
                    new Assessment.Trust(
                            name,
                            "half the step changes the worst margin by "
                                    + Numerals.error(Math.abs(change), HALVING),
                            Math.abs(change) <= HALVING));
        }
        return out;
    }

    private static String otherwise(FoldResult run, FoldResult.Outcome coarse) {
        return "with twice the step the run ends otherwise ("
                + coarse.words()
                + " instead of "
                + run.outcome().words()
                + "): do not rely on it";
    }

    /** What the end of a run means; a run that was not solved to its end shows nothing. */
    public static Verdict verdict(FoldResult run) {
        return switch (run.outcome()) {
            case ARRIVED -> Verdict.HOLDS;
            case NOT_SOLVED -> Verdict.UNKNOWN;
            case LOST_STEPS, STALLED, HIT_STOP -> Verdict.FAILS;
        };
    }
}
