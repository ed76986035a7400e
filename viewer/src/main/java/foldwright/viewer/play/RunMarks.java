// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.play;

import foldwright.machine.Limits;
import foldwright.run.Run;
import foldwright.run.RunColumn;
import foldwright.run.RunEvent;
import foldwright.run.RunKind;
import foldwright.study.Outcome;
import foldwright.study.Verdict;
import foldwright.viewer.sheet.Playing;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/** The moments of a run that are worth going to. */
final class RunMarks {
    /** Events of one kind within this share of the axis are one mark. */
    private static final double SAME = 0.004;

    private RunMarks() {}

    /**
     * Marks in order of time.
     *
     * @param axis place of a time on the axis [m]
     * @param length of the axis [m]
     */
    static List<Playing.Mark> of(Run run, DoubleUnaryOperator axis, double length) {
        List<Playing.Mark> out = new ArrayList<>();
        List<RunEvent> used = new ArrayList<>();
        for (RunEvent event : run.events()) {
            if (event.kind() == RunEvent.Kind.ARRIVED
                    || event.kind() == RunEvent.Kind.STEP_HALVED) {
                continue;
            }
            double at = axis.applyAsDouble(event.time());
            int same = -1;
            for (int i = 0; i < used.size(); i++) {
                boolean near = Math.abs(out.get(i).at() - at) < SAME * length;
                same = near && used.get(i).kind() == event.kind() ? i : same;
            }
            if (same >= 0) {
                continue;
            }
            used.add(event);
            out.add(
                    new Playing.Mark(
                            at,
                            event.time(),
                            verdict(run, event),
                            event.kind().words(),
                            event.line()));
        }
        return out;
    }

    private static Optional<Verdict> verdict(Run run, RunEvent event) {
        Limits limits = run.machine().machine().limits();
        return switch (event.kind()) {
            case STEPS_LOST, STALLED, TEETH_CLIMB, BELT_SLACK -> Optional.of(Verdict.FAILS);
            case NOT_SOLVED -> Optional.of(Verdict.UNKNOWN);
            case NUT_LOAD_REVERSED, LATCH_MISSED -> Optional.of(Verdict.TIGHT);
            case LOWEST_MARGIN ->
                    Optional.of(Verdict.of(margin(run, event.time()), limits.motorMargin()));
            case LARGEST_SKEW ->
                    of(
                            run.table().largest(RunColumn.SKEW) * span(run),
                            limits.skew().orElse(Double.NaN));
            case LARGEST_ERROR ->
                    of(error(run, event.time()), limits.toolError().orElse(Double.NaN));
            default -> Optional.empty();
        };
    }

    private static double span(Run run) {
        return run.kind() == RunKind.REPLAY
                ? run.machine().machine().gantry().orElseThrow().legs().span()
                : 0;
    }

    private static Optional<Verdict> of(double found, double allowed) {
        return Double.isNaN(allowed)
                ? Optional.empty()
                : Optional.of(Verdict.of(Outcome.marginOf(found, allowed)));
    }

    private static double error(Run run, double time) {
        return Math.hypot(
                run.table().at(RunColumn.ERROR_X, time), run.table().at(RunColumn.ERROR_Y, time));
    }

    /** Pull-out over torque [1]. */
    static double margin(Run run, double time) {
        int row = run.table().row(time);
        return run.table().at(RunColumn.PULL_OUT, row)
                / Math.abs(run.table().at(RunColumn.MOTOR_TORQUE, row));
    }
}
