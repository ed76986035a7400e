// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import foldwright.machine.gantry.Gantry;
import foldwright.machine.gantry.Moves;
import foldwright.machine.keys.Keys;
import foldwright.motion.Course;
import foldwright.motion.IsoReader;
import foldwright.motion.MotionLimits;
import foldwright.motion.MoveSource;
import foldwright.motion.PlannedCourse;
import foldwright.motion.Planner;
import foldwright.motion.ReaderSettings;
import foldwright.motion.TimedPoints;
import foldwright.motion.ToolpathException;
import foldwright.run.Toolpath;
import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import picocli.CommandLine.Option;

/** What is replayed: a toolpath file, timed points, or a built-in move. */
final class ToolpathArgument {
    /** How speed changes. */
    enum Ramp {
        JERK_LIMITED,
        TRAPEZOID
    }

    /** The path that stands for standard input. */
    private static final String PIPED = "-";

    private Path path;

    @Option(
            names = "--probe",
            paramLabel = "MOVE",
            description =
                    "A built-in move instead of a file: square, circle, zig-zag, back-and-forth.")
    private String probe;

    @Option(
            names = "--ramps",
            paramLabel = "KIND",
            description =
                    "jerk-limited or trapezoid (default: jerk-limited where the machine file states a"
                            + " jerk).")
    private String ramps;

    @Option(names = "--full-stops", description = "Stop at every corner.")
    private boolean fullStops;

    private IsoReader reader;

    /** Name for messages. */
    String name() {
        if (probe != null) {
            return "probe " + probe;
        }
        return piped() ? "standard input" : String.valueOf(path);
    }

    /** Whether it comes through standard input, which can be read once. */
    private boolean piped() {
        return path != null && path.toString().equals(PIPED);
    }

    /** Refuses a path that can be read once, where it has to be read again. */
    void checkReadAgain(String option) {
        if (path != null && (piped() || !Files.isRegularFile(path))) {
            throw new BadInput(
                    option + " reads the toolpath again: name a file, not " + name() + ", for it");
        }
    }

    /** What the reader counted, where a toolpath was read. */
    java.util.Optional<IsoReader> reader() {
        return java.util.Optional.ofNullable(reader);
    }

    /** Takes the file, which may be null, and refuses a missing or doubled choice. */
    void check(Path file) {
        path = file;
        if (path == null && probe == null) {
            throw new BadInput("nothing to replay: name a PATH, or a move with --probe");
        }
        if (path != null && probe != null) {
            throw new BadInput("both a PATH and --probe are named; only one can be replayed");
        }
        if (probe != null) {
            constant(Toolpath.Probe.class, probe, "--probe");
        }
        if (path == null || piped()) {
            return;
        }
        if (!Files.isReadable(path)) {
            throw new BadInput(
                    path + (Files.exists(path) ? ": may not be read" : ": no such file"));
        }
        if (Files.isDirectory(path)) {
            throw new BadInput(path + ": is a folder; a toolpath is a file");
        }
    }

    /**
     * The course; the caller closes the stream.
     *
     * @param in the file's content; ignored for a built-in move
     */
    Course course(Gantry gantry, InputStream in) throws ToolpathException {
        if (probe == null && path.toString().toLowerCase(Locale.ROOT).endsWith(".csv")) {
            return new TimedPoints(in);
        }
        MoveSource source = probe == null ? iso(in) : probe(gantry);
        return new PlannedCourse(new Planner(source, limits(gantry.moves())));
    }

    /** Whether corners can be timed anew: not in timed points. */
    boolean planned() {
        return probe != null || !path.toString().toLowerCase(Locale.ROOT).endsWith(".csv");
    }

    /** The same toolpath with a full stop at every corner, from its start. */
    Course stopping(Gantry gantry, InputStream in) throws ToolpathException {
        MoveSource source =
                probe == null ? new IsoReader(in, ReaderSettings.standard()) : probe(gantry);
        MotionLimits moving = limits(gantry.moves());
        return new PlannedCourse(
                new Planner(
                        source,
                        MotionLimits.alongPath(
                                moving.path(), moving.ramps(), new MotionLimits.FullStops())));
    }

    /** The file's content, or nothing for a built-in move. */
    InputStream open() {
        if (probe != null) {
            return InputStream.nullInputStream();
        }
        if (piped()) {
            return new BufferedInputStream(System.in, 1 << 16);
        }
        try {
            return new BufferedInputStream(Files.newInputStream(path), 1 << 16);
        } catch (IOException e) {
            throw new BadInput(path + ": cannot be read: " + Outputs.reason(e));
        }
    }

    private MoveSource iso(InputStream in) {
        reader = new IsoReader(in, ReaderSettings.standard());
        return reader;
    }

    private MoveSource probe(Gantry gantry) {
        return Toolpath.moves(constant(Toolpath.Probe.class, probe, "--probe"), gantry);
    }

    private MotionLimits limits(Moves moves) {
        double jerk = moves.jerk().orElse(Double.POSITIVE_INFINITY);
        Ramp ramp =
                ramps == null
                        ? moves.jerk().isPresent() ? Ramp.JERK_LIMITED : Ramp.TRAPEZOID
                        : constant(Ramp.class, ramps, "--ramps");
        if (ramp == Ramp.JERK_LIMITED && Double.isInfinite(jerk)) {
            throw new BadInput(
                    "--ramps jerk-limited needs gantry.moves.jerk in the machine file, which is not"
                            + " given");
        }
        MotionLimits.Corners corners =
                fullStops || moves.cornerDeviation() == 0
                        ? new MotionLimits.FullStops()
                        : new MotionLimits.Rounded(moves.cornerDeviation());
        return MotionLimits.alongPath(
                new MotionLimits.AxisLimits(moves.speed(), moves.acceleration(), jerk),
                ramp == Ramp.TRAPEZOID
                        ? MotionLimits.Ramps.TRAPEZOID
                        : MotionLimits.Ramps.JERK_LIMITED,
                corners);
    }

    private static <E extends Enum<E>> E constant(Class<E> kind, String word, String option) {
        String wanted = word.strip().toUpperCase(Locale.ROOT).replace('-', '_');
        for (E e : kind.getEnumConstants()) {
            if (e.name().equals(wanted)) {
                return e;
            }
        }
        String allowed =
                String.join(
                        ", ",
                        java.util.Arrays.stream(kind.getEnumConstants()).map(Keys::word).toList());
        throw new BadInput(option + " " + word + ": allowed: " + allowed);
    }
}
