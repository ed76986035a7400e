// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.lift.FoldResult.EventKind;
import foldwright.lift.FoldResult.Outcome;
import foldwright.lift.FoldResult.Sample;
import foldwright.machine.Machine;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class FoldRunTest {
    private static final double STEP = 1e-2;

    /**
     * The run and the force curve share no equation of the drive: turning screws here, F15 there.
     */
    @Test
    void torqueWhileUnfoldingIsThatOfTheForceCurve() {
        Machine m = Sketch.vanBench().build();
        FoldResult run = FoldRun.run(m, Direction.RAISING, STEP);
        assertThat(run.outcome()).isEqualTo(Outcome.ARRIVED);
        LiftSolver curve = new LiftSolver(m);
        for (Sample s : run.samples()) {
            // Away from start, stop and from where the springs let go inside a sample.
            boolean plain = s.time() > 5 && s.time() < 58 && Math.abs(s.height() - .109) > .002;
            if (plain) {
                // The sample's torque is a mean over 0.1 s, in which the lift rises 0.4 mm.
                double needed =
                        curve.point(s.height() - .0002, Direction.RAISING)
                                .orElseThrow()
                                .motor()
                                .needed();
                assertThat(s.motor().torque()).isCloseTo(needed, within(.01 * needed));
            }
        }
    }

    @ParameterizedTest
    @EnumSource(Direction.class)
    void theLedgerClosesAndSpringsActWhereTheyShould(Direction way) {
        FoldResult run = FoldRun.run(Sketch.vanBench().build(), way, 5e-3);
        assertThat(run.ledger().relativeError()).isLessThan(1e-3);
        EventKind kind =
                way == Direction.RAISING ? EventKind.SPRING_LET_GO : EventKind.SPRING_TOUCHED;
        assertThat(run.events())
                .filteredOn(e -> e.kind() == kind)
                .singleElement()
                .satisfies(e -> assertThat(e.height()).isCloseTo(.109, within(2e-4)))
                .satisfies(e -> assertThat(e.sentence()).contains(" 1, 2, 3 and 4 "));
        assertThat(run.convergence().halvedSteps()).isZero();
    }

    @Test
    void halvingTheStepHardlyChangesTheMargin() {
        List<Double> shares = new ArrayList<>();
        FoldResult run =
                FoldRun.halved(Sketch.vanBench().build(), Direction.RAISING, STEP, shares::add);
        assertThat(shares).isSorted().hasSizeGreaterThan(50);
        assertThat(shares.get(shares.size() - 1)).isBetween(.95, 1.0);
        assertThat(run.convergence().marginChangeOnHalving()).isLessThan(.01);
        assertThat(run.convergence().worstMargin()).isCloseTo(2.0, within(.03));
    }

    @Test
    void theLiftThatBindsStallsFromFlatAndRunsFromAbove() {
        Machine m = Sketch.vanBenchThatBinds().build();
        FoldResult flat = FoldRun.run(m, Direction.RAISING, STEP);
        assertThat(flat.outcome()).isEqualTo(Outcome.STALLED);
        assertThat(flat.events()).anyMatch(e -> e.kind() == EventKind.STALLED);
        double top = new LiftSolver(m).highest();
        FoldResult high = FoldRun.run(m, Direction.RAISING, .115, top, STEP);
        assertThat(high.outcome()).isEqualTo(Outcome.ARRIVED);
    }

    /** A rotor that slips a pole swings in 3 ms; the grid's step is three times as long. */
    @Test
    void aSlippingRotorIsFollowedWhateverTheStep() {
        Machine m = Sketch.vanBenchThatBinds().build();
        FoldResult coarse = FoldRun.run(m, Direction.RAISING, STEP);
        FoldResult fine = FoldRun.run(m, Direction.RAISING, .02 * STEP);
        assertThat(coarse.ledger().relativeError()).isLessThan(1e-4);
        assertThat(fine.ledger().relativeError()).isLessThan(1e-5);
        assertThat(lossOfSteps(coarse)).isCloseTo(lossOfSteps(fine), within(STEP));
        assertThat(coarse.ledger().damping())
                .isCloseTo(fine.ledger().damping(), within(.03 * coarse.ledger().turnedOver()));
    }

    private static double lossOfSteps(FoldResult run) {
        return run.events().stream()
                .filter(e -> e.kind() == EventKind.STEPS_LOST)
                .findFirst()
                .orElseThrow()
                .time();
    }

    @Test
    void theSameRunGivesTheSameBits() {
        Machine m = Sketch.classPlotter().build();
        FoldResult a = FoldRun.run(m, Direction.RAISING, STEP);
        FoldResult b = FoldRun.run(m, Direction.RAISING, STEP);
        assertThat(b.samples()).isEqualTo(a.samples());
        assertThat(b.ledger()).isEqualTo(a.ledger());
    }

    @Test
    void aCommandStartsAndEndsAtRestAndKeepsItsLimits() {
        LiftModel model = new LiftModel(Sketch.vanBench().build(), Give.IDEAL);
        DriveTrain train = new DriveTrain(model.machine().drive());
        RiseLaw law = new RiseLaw(model.machine().drive().rise(), train);
        RiseCommand c = new RiseCommand(law, model.path(0), .05, .15);
        assertThat(c.height(0)).isEqualTo(.05);
        assertThat(c.height(c.end())).isCloseTo(.15, within(1e-12));
        assertThat(c.rate(0)).isZero();
        for (int i = 1; i < 1000; i++) {
            double t = c.end() * i / 1000;
            assertThat(c.rate(t)).isBetween(0.0, .004 + 1e-9);
            double dt = 1e-6;
            assertThat((c.height(t + dt) - c.height(t - dt)) / (2 * dt))
                    .isCloseTo(c.rate(t), within(1e-6));
        }
    }
}
