// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.lift.HoldResult.Verdict;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class HoldStudyTest {
    /** A lift that nothing but its thread holds. */
    private static Sketch bare(String thread, double friction) {
        Sketch s = new Sketch();
        s.pinFriction = 0;
        s.guideFriction = 0;
        s.detent = 0;
        s.thread = thread;
        s.threadFriction = friction;
        s.reduction = 1;
        return s;
    }

    /**
     * f = tan(lead angle) cos(flank angle), self-locking limit of Shigley, Mechanical Engineering
     * Design, 9th ed., p. 418; ISO trapezoidal flank 15 degrees. The belt of the sketch loses a
     * twentieth, which holds too but cannot start the sinking: it does not move the limit.
     */
    @ParameterizedTest
    @CsvSource({"Tr10x2, .0683253", "Tr8x2, .0878468", "Tr8x8, .351387"})
    void theVerdictFlipsAtTheSelfLockingLimitOfTheThread(String thread, double limit) {
        HoldResult result = HoldStudy.of(bare(thread, .5).build());
        assertThat(result.flipFriction().orElseThrow()).isCloseTo(limit, within(1e-5));
        assertThat(result.points()).allMatch(p -> p.verdict() == Verdict.HOLDS);
    }

    @Test
    void justAboveTheFlipItHoldsAndJustBelowItRuns() {
        var above = bare("Tr10x2", .0687).build();
        var below = bare("Tr10x2", .0679).build();
        double tenSeconds = HoldStudy.creep(above, .0687, .15, 10, 5e-3);
        // 1e-4 mm an hour is 3e-7 mm in ten seconds; what is seen is the solver's rounding.
        assertThat(Math.abs(tenSeconds)).isLessThan(2.8e-10);
        assertThat(HoldStudy.creep(below, .0679, .15, 10, 5e-3)).isLessThan(-1e-3);
    }

    /** Rows that carry next to nothing must not slide and stick in turn: no step is lost. */
    @ParameterizedTest
    @ValueSource(doubles = {0, 1e-4, 1e-3, 2e-3, 5e-3, 2e-2})
    void itStandsWhateverThePinsRub(double pins) {
        Sketch s = bare("Tr10x2", .0687);
        s.pinFriction = pins;
        assertThat(Math.abs(HoldStudy.creep(s.build(), .0687, .15, 2, 5e-3))).isLessThan(1e-13);
    }

    @Test
    void heldByItsScrewsItDoesNotCreepInAnHour() {
        double drift = HoldStudy.creep(Sketch.vanBench().build(), .10, .1, 3600, 5e-2);
        // A tenth of the 1e-4 mm that are asked.
        assertThat(Math.abs(drift)).isLessThan(1e-8);
    }

    @Test
    void aSteepThreadRunsDownWithTheEnergyOfTheDropLessFriction() {
        Sketch s = bare("Tr8x8", .10);
        HoldResult result = HoldStudy.of(s.build());
        assertThat(result.points()).allMatch(p -> p.verdict() == Verdict.RUNS_DOWN);
        HoldResult.RunDown run = result.runDown().orElseThrow();
        assertThat(run.from()).isCloseTo(.2733, within(1e-3));
        assertThat(run.to()).isLessThan(.0342);
        double drop = 9.81 * (5.20 + .45) * (run.from() - run.to());
        assertThat(run.energy()).isBetween(.02 * drop, drop);
        assertThat(run.topSpeed()).isGreaterThanOrEqualTo(run.arrivalSpeed());
    }

    @Test
    void detentHoldsWhatTheThreadDoesNot() {
        Sketch s = bare("Tr10x2", .05);
        s.reduction = 3;
        assertThat(HoldStudy.of(s.build()).worst().orElseThrow().verdict())
                .isEqualTo(Verdict.RUNS_DOWN);
        s.detent = .05;
        assertThat(HoldStudy.of(s.build()).worst().orElseThrow().verdict())
                .isEqualTo(Verdict.HOLDS);
    }

    @Test
    void strongSpringsPushItUpUnlessTheThreadHolds() {
        Sketch s = bare("Tr8x8", .10);
        s.liftingCoils(300);
        assertThat(HoldStudy.of(s.build()).points().get(0).verdict()).isEqualTo(Verdict.SPRINGS_UP);
    }
}
