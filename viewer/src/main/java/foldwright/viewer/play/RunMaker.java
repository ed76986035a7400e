// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.play;

import foldwright.gantry.model.GantryAssembly;
import foldwright.gantry.replay.Replay;
import foldwright.gantry.replay.ReplayResult;
import foldwright.gantry.replay.ReplaySettings;
import foldwright.gantry.route.RouteCheck;
import foldwright.gantry.route.RouteFinding;
import foldwright.lift.Direction;
import foldwright.lift.FoldRun;
import foldwright.machine.Limits;
import foldwright.machine.file.MachineFile;
import foldwright.machine.gantry.Gantry;
import foldwright.motion.Course;
import foldwright.motion.ToolpathException;
import foldwright.run.FoldRecord;
import foldwright.run.ReplayRecorder;
import foldwright.run.Run;
import foldwright.run.RunColumn;
import foldwright.run.RunKind;
import foldwright.run.RunTable;
import foldwright.run.Toolpath;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Computes runs of a machine: the lift up or down, or a toolpath. */
public final class RunMaker {
    private RunMaker() {}

    /** Thrown where there is no such run; the message is one sentence. */
    public static final class NoRunException extends Exception {
        private static final long serialVersionUID = 1L;

        NoRunException(String message) {
            super(message);
        }
    }

    /**
     * A run.
     *
     * @param path toolpath of a replay; left out: the one beside the machine file, else a square
     */
    public static Run run(MachineFile machine, RunKind kind, Optional<Path> path)
            throws NoRunException {
        if (kind != RunKind.REPLAY) {
            Direction way = kind == RunKind.UNFOLD ? Direction.RAISING : Direction.LOWERING;
            return FoldRecord.of(machine, FoldRun.run(machine.machine(), way, FoldRun.STEP));
        }
        Gantry gantry =
                machine.machine()
                        .gantry()
                        .orElseThrow(() -> new NoRunException("The machine has no gantry."));
        List<RouteFinding> faults = RouteCheck.check(GantryAssembly.layout(gantry));
        if (!faults.isEmpty()) {
            throw new NoRunException("The belts cannot work: " + faults.get(0).message());
        }
        Optional<Path> file = path.or(() -> beside(machine));
        try {
            return file.isPresent() ? along(machine, gantry, file.get()) : square(machine, gantry);
        } catch (ToolpathException e) {
            throw new NoRunException(
                    file.map(Path::toString).orElse("square") + ": " + e.getMessage());
        } catch (IOException e) {
            Path named = file.orElseThrow();
            throw new NoRunException(
                    named
                            + (Files.exists(named)
                                    ? ": cannot be read: " + e.getMessage()
                                    : ": no such file"));
        }
    }

    /**
     * The margin of a replay: the smaller of allowed over found, for skew and error of the tool;
     * not a number where neither is limited or there is no such run.
     */
    public static double margin(MachineFile machine, Optional<Path> path) {
        try {
            Run run = run(machine, RunKind.REPLAY, path);
            RunTable table = run.table();
            double span = machine.machine().gantry().orElseThrow().legs().span();
            double error = 0;
            for (int r = 0; r < table.rows(); r++) {
                error =
                        Math.max(
                                error,
                                Math.hypot(
                                        table.at(RunColumn.ERROR_X, r),
                                        table.at(RunColumn.ERROR_Y, r)));
            }
            double skew = span * table.largest(RunColumn.SKEW);
            Limits limits = machine.machine().limits();
            double a = limits.toolError().orElse(Double.POSITIVE_INFINITY) / error;
            double b = limits.skew().orElse(Double.POSITIVE_INFINITY) / skew;
            double least = Math.min(a, b);
            return Double.isInfinite(least) ? Double.NaN : least;
        } catch (NoRunException e) {
            return Double.NaN;
        }
    }

    private static Optional<Path> beside(MachineFile machine) {
        return Toolpath.beside(Path.of(machine.name()));
    }

    private static Run along(MachineFile machine, Gantry gantry, Path file)
            throws ToolpathException, IOException {
        try (InputStream in = new BufferedInputStream(Files.newInputStream(file), 1 << 16)) {
            String name = String.valueOf(file.getFileName());
            return replay(machine, gantry, Toolpath.course(file, in, gantry), name);
        }
    }

    private static Run square(MachineFile machine, Gantry gantry) throws ToolpathException {
        Toolpath.Probe probe = Toolpath.Probe.SQUARE;
        Course course = Toolpath.course(probe, gantry);
        return replay(machine, gantry, course, "a built-in square");
    }

    private static Run replay(MachineFile machine, Gantry gantry, Course course, String name)
            throws ToolpathException {
        var model = GantryAssembly.of(gantry);
        ReplayRecorder recorder = new ReplayRecorder();
        ReplayResult result =
                new Replay(model, ReplaySettings.usual(model.layout().travel()))
                        .run(course, List.of(recorder));
        return recorder.run(machine, name, result);
    }
}
