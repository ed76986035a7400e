// SPDX-License-Identifier: Apache-2.0
package foldwright.run;

import foldwright.machine.gantry.Gantry;
import foldwright.machine.gantry.Moves;
import foldwright.machine.keys.Keys;
import foldwright.motion.Course;
import foldwright.motion.IsoReader;
import foldwright.motion.MotionLimits;
import foldwright.motion.MoveSource;
import foldwright.motion.PlannedCourse;
import foldwright.motion.Planner;
import foldwright.motion.Probes;
import foldwright.motion.ReaderSettings;
import foldwright.motion.TimedPoints;
import foldwright.motion.ToolpathException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** From a toolpath file or a built-in move to a course at the machine's own speeds. */
public final class Toolpath {
    /** Built-in moves, round the middle of the travel. */
    public enum Probe {
        SQUARE,
        CIRCLE,
        ZIG_ZAG,
        BACK_AND_FORTH;

        /** As a user writes it. */
        public String word() {
            return Keys.word(this);
        }
    }

    private Toolpath() {}

    /** Whether a file holds timed points rather than a program of moves. */
    public static boolean timed(Path file) {
        return file.toString().toLowerCase(Locale.ROOT).endsWith(".csv");
    }

    /** The course of a file's content. */
    public static Course course(Path file, InputStream in, Gantry gantry) throws ToolpathException {
        if (timed(file)) {
            return new TimedPoints(in);
        }
        return planned(new IsoReader(in, ReaderSettings.standard()), gantry);
    }

    /** The course of a built-in move. */
    public static Course course(Probe probe, Gantry gantry) throws ToolpathException {
        return planned(moves(probe, gantry), gantry);
    }

    private static Course planned(MoveSource moves, Gantry gantry) throws ToolpathException {
        return new PlannedCourse(new Planner(moves, limits(gantry.moves())));
    }

    /** Moves sized by the travel: half of its shorter side; zero is the corner of the travel. */
    public static MoveSource moves(Probe probe, Gantry gantry) {
        double wide = gantry.bridge().travel().length();
        double deep = gantry.legs().travel().length();
        double size = 0.5 * Math.min(wide, deep);
        double x = 0.5 * wide;
        double y = 0.5 * deep;
        double feed = gantry.moves().speed();
        double a = gantry.moves().acceleration();
        return switch (probe) {
            case SQUARE -> Probes.square(x, y, size, feed);
            case CIRCLE -> Probes.circle(x, y, 0.5 * size, feed);
            case ZIG_ZAG -> Probes.zigZag(x, y, size, 8, feed);
            case BACK_AND_FORTH ->
                    Probes.backAndForthAt(
                            Probes.Along.X,
                            new double[] {x, y},
                            size,
                            feed,
                            new double[] {0.2 * a, a},
                            10);
        };
    }

    /** The machine's own limits: ramps limited in jerk where it states a jerk. */
    private static MotionLimits limits(Moves moves) {
        double jerk = moves.jerk().orElse(Double.POSITIVE_INFINITY);
        MotionLimits.Corners corners =
                moves.cornerDeviation() == 0
                        ? new MotionLimits.FullStops()
                        : new MotionLimits.Rounded(moves.cornerDeviation());
        return MotionLimits.alongPath(
                new MotionLimits.AxisLimits(moves.speed(), moves.acceleration(), jerk),
                moves.jerk().isPresent()
                        ? MotionLimits.Ramps.JERK_LIMITED
                        : MotionLimits.Ramps.TRAPEZOID,
                corners);
    }

    /**
     * The toolpath that lies beside a machine file: a file {@code .nc} whose name is the machine's
     * or the longest beginning of it.
     */
    public static Optional<Path> beside(Path machine) {
        Path folder = machine.toAbsolutePath().getParent();
        String stem = stem(machine);
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, "*.nc")) {
            Path best = null;
            Comparator<Path> longer = Comparator.comparingInt(p -> stem(p).length());
            for (Path file : files) {
                if (stem.startsWith(stem(file))
                        && (best == null || longer.compare(file, best) > 0)) {
                    best = file;
                }
            }
            return Optional.ofNullable(best);
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private static String stem(Path file) {
        return file.getFileName().toString().replaceFirst("\\.[^.]*$", "");
    }
}
