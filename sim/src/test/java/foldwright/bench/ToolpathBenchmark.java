// SPDX-License-Identifier: Apache-2.0
package foldwright.bench;

import foldwright.motion.IsoReader;
import foldwright.motion.MotionLimits;
import foldwright.motion.MotionLimits.AxisLimits;
import foldwright.motion.MotionLimits.Ramps;
import foldwright.motion.MotionLimits.Rounded;
import foldwright.motion.Move;
import foldwright.motion.Planner;
import foldwright.motion.ReaderSettings;
import foldwright.motion.TimedMove;
import foldwright.motion.ToolpathException;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * A toolpath of a million lines, read, and read and planned, cold in a fresh JVM with a heap of 64
 * MB and the launcher's collector. Run it as {@code tools/bench ToolpathBenchmark -f 5 -wi 0 -i 1}:
 * the tool's own defaults would warm up first.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(
        value = 5,
        jvmArgsAppend = {"-Xmx64m", "-XX:+UseSerialGC"})
@Warmup(iterations = 0)
@Measurement(iterations = 1)
public class ToolpathBenchmark {
    private static final int LINES = 1_000_000;

    private static final Path FILE = Path.of("sim", "target", "toolpath-of-a-million-lines.ngc");

    /**
     * Writes the file if there is none: short and long strokes as a drawing machine gets them. It
     * stays for the next JVM, whose compilers then have nothing to do with writing it.
     */
    @Setup(Level.Trial)
    public void write() throws IOException {
        if (Files.exists(FILE)) {
            return;
        }
        Path file = Files.createTempFile(FILE.getParent(), "million", ".ngc");
        Random random = new Random(1);
        double heading = 0;
        double x = 0;
        double y = 0;
        try (BufferedWriter out = Files.newBufferedWriter(file, StandardCharsets.US_ASCII)) {
            out.write("G21 G90 G1 F9000\n");
            for (int i = 1; i < LINES; i++) {
                heading += 0.6 * (random.nextDouble() - 0.5);
                double size = i % 50 == 0 ? 30 : 0.4 + random.nextDouble();
                heading = x * x + y * y > 1e4 ? Math.atan2(-y, -x) : heading;
                x += size * Math.cos(heading);
                y += size * Math.sin(heading);
                out.write(String.format(Locale.ROOT, "G1 X%.3f Y%.3f E%.4f%n", x, y, i * 0.01));
            }
        }
        Files.move(file, FILE);
    }

    @Benchmark
    public double read() throws IOException, ToolpathException {
        try (InputStream in = Files.newInputStream(FILE)) {
            IsoReader reader = new IsoReader(in, ReaderSettings.standard());
            Move move = new Move();
            double length = 0;
            while (reader.next(move)) {
                length += move.length();
            }
            return length;
        }
    }

    @Benchmark
    public double readAndPlanJerkLimited() throws IOException, ToolpathException {
        return plan(Ramps.JERK_LIMITED);
    }

    @Benchmark
    public double readAndPlanTrapezoid() throws IOException, ToolpathException {
        return plan(Ramps.TRAPEZOID);
    }

    private double plan(Ramps ramps) throws IOException, ToolpathException {
        MotionLimits limits =
                MotionLimits.alongPath(new AxisLimits(0.2, 4, 80), ramps, new Rounded(2e-5));
        try (InputStream in = Files.newInputStream(FILE)) {
            Planner planner = new Planner(new IsoReader(in, ReaderSettings.standard()), limits);
            TimedMove move = new TimedMove();
            double time = 0;
            while (planner.next(move)) {
                time += move.profile().duration();
            }
            return time;
        }
    }
}
