// SPDX-License-Identifier: Apache-2.0
package foldwright.run;

import foldwright.lift.Direction;
import foldwright.lift.FoldResult;
import foldwright.machine.file.MachineFile;
import foldwright.quantity.Printed;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Unfolding and folding as a run. */
public final class FoldRecord {
    /** Slower rotors stand [rad/s]. */
    private static final double MOVING = 1e-3;

    private FoldRecord() {}

    /** The run of a result. */
    public static Run of(MachineFile machine, FoldResult result) {
        List<double[]> rows = new ArrayList<>();
        for (FoldResult.Sample s : result.samples()) {
            FoldResult.MotorState m = s.motor();
            rows.add(
                    new double[] {
                        s.time(),
                        s.height(),
                        s.deckSpeed(),
                        m.commanded(),
                        m.turned(),
                        m.speed(),
                        m.torque(),
                        m.pullOut(),
                        m.stepsLost(),
                        s.nutForce(),
                        s.droop()
                    });
        }
        RunKind kind = result.direction() == Direction.RAISING ? RunKind.UNFOLD : RunKind.FOLD;
        List<RunEvent> events = new ArrayList<>();
        for (FoldResult.Event e : result.events()) {
            events.add(
                    new RunEvent(
                            RunEvent.Kind.valueOf(e.kind().name()), e.time(), 0, e.sentence()));
        }
        boolean crank = machine.machine().drive().byHand();
        lowestMargin(result, crank ? "hand" : "motor").ifPresent(events::add);
        return new Run(
                kind,
                "",
                machine,
                result.convergence().step(),
                result.outcome().words(),
                new RunTable(kind.columns(), rows),
                events);
    }

    /** Where pull-out over torque is least, while what drives turns and has lost nothing. */
    private static Optional<RunEvent> lowestMargin(FoldResult result, String whose) {
        double least = Double.POSITIVE_INFINITY;
        FoldResult.Sample worst = null;
        for (FoldResult.Sample s : result.samples()) {
            FoldResult.MotorState m = s.motor();
            double torque = Math.abs(m.torque());
            boolean turns = Math.abs(m.speed()) > MOVING && m.stepsLost() == 0;
            if (turns && s.time() > 0 && torque > 0 && m.pullOut() / torque < least) {
                least = m.pullOut() / torque;
                worst = s;
            }
        }
        if (worst == null) {
            return Optional.empty();
        }
        String sentence =
                String.format(
                        Locale.ROOT,
                        "The %s's margin is least, %s, at a pivot height of %.1f mm.",
                        whose,
                        Printed.margin(least),
                        worst.height() * 1e3);
        return Optional.of(new RunEvent(RunEvent.Kind.LOWEST_MARGIN, worst.time(), 0, sentence));
    }
}
