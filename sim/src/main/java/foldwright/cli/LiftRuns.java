// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import foldwright.lift.Direction;
import foldwright.lift.FoldResult;
import foldwright.lift.FoldRun;
import foldwright.lift.ForceCurve;
import foldwright.lift.HoldResult;
import foldwright.lift.HoldStudy;
import foldwright.lift.LiftSolver;
import foldwright.lift.PartShares;
import foldwright.machine.Machine;
import foldwright.study.Runs;
import java.util.Optional;

/** Runs by the lift's solver. */
final class LiftRuns implements Runs {
    @Override
    public ForceCurve curve(Machine machine) {
        return new LiftSolver(machine).curve();
    }

    @Override
    public Optional<HoldResult> hold(Machine machine) {
        return Optional.of(HoldStudy.of(machine));
    }

    @Override
    public Optional<PartShares> shares(Machine machine, double height, Direction way) {
        return new LiftSolver(machine).shares(height, way);
    }

    /** Unfolds or folds in time. */
    FoldResult fold(Machine machine, Direction direction, Progress progress) {
        return FoldRun.halved(
                machine,
                direction,
                FoldRun.STEP,
                share -> progress.say("fold: " + (int) (100 * share) + " % computed"));
    }
}
