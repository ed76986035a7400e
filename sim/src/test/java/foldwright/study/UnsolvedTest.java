// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import static org.assertj.core.api.Assertions.assertThat;

import foldwright.lift.Direction;
import foldwright.lift.Finding;
import foldwright.lift.FoldResult;
import foldwright.lift.ForceCurve;
import foldwright.lift.HoldResult;
import foldwright.lift.HoldResult.RunDown;
import foldwright.lift.HoldResult.RunEnd;
import foldwright.lift.LiftSolver;
import foldwright.machine.Machine;
import foldwright.machine.file.MachineFile;
import foldwright.mechanics.solve.Failure;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What could not be computed is never told as something the machine does. */
class UnsolvedTest {
    private static final Failure FAILURE =
            new Failure(1.25, Failure.Cause.NO_CONVERGENCE, "screw left", "nut", 3e-5);
    private static Machine machine;

    @BeforeAll
    static void read() throws Exception {
        machine = MachineFile.read(Path.of("..", "scenes", "van-bench.json")).machine();
    }

    private static HoldResult.Point point(
            double height, HoldResult.Verdict verdict, double friction) {
        return new HoldResult.Point(height, verdict, 100, 0, 0, friction, 0);
    }

    private static HoldResult.Point open(double height) {
        double no = Double.NaN;
        return new HoldResult.Point(height, HoldResult.Verdict.NOT_SOLVED, no, no, 0, no, no);
    }

    private static HoldResult hold(Optional<RunDown> run, HoldResult.Point... points) {
        return new HoldResult("m", List.of(points), Optional.empty(), run, "As found.");
    }

    private static RunDown run(RunEnd end) {
        boolean broken = end == RunEnd.NOT_SOLVED;
        return new RunDown(
                .2, .15, 1.2, .5, 0, 0, .05, end, broken ? Optional.of(FAILURE) : Optional.empty());
    }

    @Test
    void aFailedStepIsToldWithTimeBodyRowAndResidual() {
        Check check =
                Assess.hold(
                        machine,
                        hold(
                                Optional.of(run(RunEnd.NOT_SOLVED)),
                                point(.2, HoldResult.Verdict.RUNS_DOWN, .3)));
        assertThat(check.finding())
                .contains("could not be computed to its end")
                .contains("1.25000 s")
                .contains("\"screw left\"")
                .contains("\"nut\"")
                .contains("3.00e-05 m")
                .doesNotContain("arrives");
    }

    @ParameterizedTest
    @EnumSource(
            value = RunEnd.class,
            names = {"STANDS", "MOVING"})
    void onlyARunThatReachedItsStopArrives(RunEnd end) {
        Check check =
                Assess.hold(
                        machine,
                        hold(Optional.of(run(end)), point(.2, HoldResult.Verdict.RUNS_DOWN, .3)));
        assertThat(check.finding()).contains("Let go at").doesNotContain("arrives");
    }

    @Test
    void holdingElsewhereIsUnknownWhereAHeightIsOpen() {
        Check check =
                Assess.hold(
                        machine,
                        hold(Optional.empty(), open(.1), point(.2, HoldResult.Verdict.HOLDS, .01)));
        assertThat(check.verdict()).isEqualTo(Verdict.UNKNOWN);
        assertThat(check.outcome().worst().height()).hasValue(.1);
    }

    @Test
    void sinkingElsewhereFailsEvenWhereAHeightIsOpen() {
        Check check =
                Assess.hold(
                        machine,
                        hold(
                                Optional.empty(),
                                open(.1),
                                point(.2, HoldResult.Verdict.RUNS_DOWN, .3)));
        assertThat(check.verdict()).isEqualTo(Verdict.FAILS);
    }

    @Test
    void aForceCurveWithOpenHeightsIsUnknown() {
        ForceCurve whole = new LiftSolver(machine).curve();
        assertThat(Assess.motor(machine, whole).verdict()).isEqualTo(Verdict.HOLDS);
        List<Finding> findings = new ArrayList<>(whole.findings());
        String words = "no balance of loads was found while raising at 1 heights";
        findings.add(new Finding(Finding.Kind.NOT_SOLVED, "", .05, .05, 0, words));
        Check check =
                Assess.motor(
                        machine, new ForceCurve("m", whole.raising(), whole.lowering(), findings));
        assertThat(check.verdict()).isEqualTo(Verdict.UNKNOWN);
        assertThat(check.finding()).contains(words);
    }

    private static FoldResult folded(
            FoldResult.Outcome outcome, Optional<FoldResult.Outcome> coarse) {
        return new FoldResult(
                "m",
                Direction.RAISING,
                outcome,
                List.of(),
                List.of(),
                new FoldResult.Ledger(0, 0, 0, 0, 0, 0, 1),
                new FoldResult.Convergence(.005, 10, 1, 0, 2, coarse, Double.NaN));
    }

    @Test
    void aRunThatWasNotSolvedIsNoFailureOfTheMachine() {
        FoldResult run = folded(FoldResult.Outcome.NOT_SOLVED, Optional.empty());
        assertThat(FoldPlots.verdict(run)).isEqualTo(Verdict.UNKNOWN);
    }

    @Test
    void aRunThatEndsOtherwiseWithTwiceTheStepIsNotToBeTrusted() {
        FoldResult run =
                folded(FoldResult.Outcome.ARRIVED, Optional.of(FoldResult.Outcome.STALLED));
        assertThat(FoldPlots.trust(run))
                .anyMatch(t -> !t.met() && t.words().contains("stalled instead of arrived"));
    }

    @Test
    void aDriveThatChattersIsToldWhereTheRunArrives() {
        FoldResult.Event told =
                new FoldResult.Event(FoldResult.EventKind.CHATTERS, 3, .1, "The drive chatters.");
        for (List<FoldResult.Event> events : List.of(List.<FoldResult.Event>of(), List.of(told))) {
            FoldResult run =
                    new FoldResult(
                            "m",
                            Direction.LOWERING,
                            FoldResult.Outcome.ARRIVED,
                            List.of(),
                            events,
                            new FoldResult.Ledger(0, 0, 0, 0, 0, 0, 1),
                            new FoldResult.Convergence(
                                    .005, 7000, 6, 800, 2, Optional.empty(), Double.NaN));
            assertThat(FoldPlots.trust(run).stream().anyMatch(t -> t.words().contains("chatters")))
                    .isEqualTo(!events.isEmpty());
        }
    }
}
