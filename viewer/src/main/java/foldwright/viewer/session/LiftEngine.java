// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.session;

import foldwright.lift.CurvePoint;
import foldwright.lift.ForceCurve;
import foldwright.lift.HoldResult;
import foldwright.lift.HoldStudy;
import foldwright.lift.LiftSolver;
import foldwright.machine.Machine;
import foldwright.study.Assess;
import foldwright.study.Assessment;
import foldwright.study.Check;
import foldwright.study.CurvePlots;
import foldwright.study.HeightPlot;
import foldwright.study.Runs;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** Computes with the lift's solver and judges with every check there is. */
public final class LiftEngine implements Engine {
    /** Heights of a curve while a number is dragged: enough for a smooth plot. */
    private static final int QUICK = 40;

    /** Heights of a curve for one point of a hill. */
    private static final int HILL = 20;

    @Override
    public Results quick(Machine machine) {
        ForceCurve curve = new LiftSolver(machine).curve(QUICK);
        return from(machine, curve, List.of(Assess.motor(machine, curve)), "working");
    }

    private static Results from(
            Machine machine, ForceCurve curve, List<Check> checks, String waiting) {
        Optional<HeightPlot> plot = CurvePlots.motor(machine, curve);
        return new Results(Optional.of(curve), plot, checks, waiting);
    }

    @Override
    public Results whole(Machine machine, Consumer<String> progress) {
        ForceCurve curve = new LiftSolver(machine).curve();
        Runs runs = new LastCurve(machine, curve);
        Assessment assessment = Assess.machine(machine, runs, progress);
        return from(machine, curve, assessment.checks(), "not computed yet");
    }

    @Override
    public double worstMargin(Machine machine) {
        return new LiftSolver(machine).curve(HILL).worst().map(CurvePoint::margin).orElse(0.0);
    }

    /** Runs that use the curve that is there already; changes are tried on coarser ones. */
    private record LastCurve(Machine machine, ForceCurve known) implements Runs {
        @Override
        public ForceCurve curve(Machine other) {
            return other == machine ? known : new LiftSolver(other).curve(QUICK);
        }

        @Override
        public Optional<HoldResult> hold(Machine other) {
            return Optional.of(HoldStudy.of(other));
        }
    }
}
