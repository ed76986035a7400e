// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.session;

import foldwright.lift.Direction;
import foldwright.lift.ForceCurve;
import foldwright.lift.HoldResult;
import foldwright.lift.HoldStudy;
import foldwright.lift.LeastMargin;
import foldwright.lift.LiftSolver;
import foldwright.lift.PartShares;
import foldwright.machine.Machine;
import foldwright.machine.gantry.Gantry;
import foldwright.machine.keys.SameValues;
import foldwright.study.Assess;
import foldwright.study.Assessment;
import foldwright.study.Check;
import foldwright.study.CurvePlots;
import foldwright.study.HeightPlot;
import foldwright.study.Runs;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.ToDoubleFunction;

/** Computes with the lift's solver and judges with every check there is. */
public final class LiftEngine implements Engine {
    /** Heights of a curve while a number is dragged: enough for a smooth plot. */
    private static final int QUICK = 40;

    private Optional<Gantry> knownGantry = Optional.empty();
    private Optional<GantryLoads> gantryLoads = Optional.empty();
    private final Object sharing = new Object();
    private LiftSolver knownSolver;

    @Override
    public Results quick(Machine machine) {
        ForceCurve curve = new LiftSolver(machine).curve(QUICK);
        return first(machine, curve, List.of(Assess.motor(machine, curve)));
    }

    @Override
    public Results compared(Machine machine) {
        ForceCurve curve = curve(machine);
        return first(machine, curve, List.of(Assess.motor(machine, curve)));
    }

    @Override
    public Results fold(Machine machine, ForceCurve curve) {
        return first(machine, curve, Assess.fold(machine, curve));
    }

    private Results first(Machine machine, ForceCurve curve, List<Check> checks) {
        return from(machine, curve, checks, Results.WORKING, Optional.empty());
    }

    private Results from(
            Machine machine,
            ForceCurve curve,
            List<Check> checks,
            String waiting,
            Optional<HoldResult> hold) {
        Optional<HeightPlot> plot = CurvePlots.motor(machine, curve);
        return new Results(Optional.of(curve), plot, checks, waiting, hold, gantry(machine));
    }

    /** What the gantry carries; kept while numbers of the lift are turned. */
    private synchronized Optional<GantryLoads> gantry(Machine machine) {
        if (!SameValues.in(machine.gantry(), knownGantry)) {
            knownGantry = machine.gantry();
            gantryLoads = knownGantry.flatMap(GantryLoads::of);
        }
        return gantryLoads;
    }

    /** Every check of a machine, for the report; takes seconds. */
    public static Assessment assess(Machine machine) {
        Known runs = new Known(machine, new LiftSolver(machine).curve());
        return Assess.machine(machine, runs, words -> {});
    }

    @Override
    public ForceCurve curve(Machine machine) {
        return new LiftSolver(machine).curve();
    }

    @Override
    public Results whole(Machine machine, ForceCurve curve, Consumer<String> progress) {
        Known runs = new Known(machine, curve);
        Assessment assessment = Assess.machine(machine, runs, progress);
        return from(
                machine,
                curve,
                assessment.checks(),
                "not computed yet",
                Optional.of(runs.hold(machine).orElseThrow()));
    }

    @Override
    public Optional<PartShares> shares(Machine machine, double height) {
        synchronized (sharing) {
            if (knownSolver == null || knownSolver.machine() != machine) {
                knownSolver = new LiftSolver(machine);
            }
            return knownSolver.shares(height, Direction.RAISING);
        }
    }

    @Override
    public ToDoubleFunction<Machine> margins(Machine machine, ForceCurve curve) {
        return new LeastMargin(machine, curve)::of;
    }

    /** Runs that use what is there already; changes are tried on coarser curves. */
    private static final class Known implements Runs {
        private final Machine machine;
        private final ForceCurve curve;
        private Optional<HoldResult> hold = Optional.empty();

        Known(Machine machine, ForceCurve curve) {
            this.machine = machine;
            this.curve = curve;
        }

        @Override
        public ForceCurve curve(Machine other) {
            return other == machine ? curve : new LiftSolver(other).curve(QUICK);
        }

        @Override
        public Optional<HoldResult> hold(Machine other) {
            if (other != machine) {
                return Optional.of(HoldStudy.of(other));
            }
            if (hold.isEmpty()) {
                hold = Optional.of(HoldStudy.of(machine));
            }
            return hold;
        }
    }
}
