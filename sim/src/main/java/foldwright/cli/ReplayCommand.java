// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import foldwright.gantry.model.GantryModel;
import foldwright.gantry.replay.ChannelResult;
import foldwright.gantry.replay.ErrorMap;
import foldwright.gantry.replay.Replay;
import foldwright.gantry.replay.ReplayListener;
import foldwright.gantry.replay.ReplayResult;
import foldwright.gantry.replay.ReplaySettings;
import foldwright.gantry.replay.SkewCauses;
import foldwright.machine.Limits;
import foldwright.machine.Machine;
import foldwright.machine.file.MachineFile;
import foldwright.machine.gantry.Gantry;
import foldwright.motion.ToolpathException;
import foldwright.run.ReplayRecorder;
import foldwright.study.AreaPlot;
import foldwright.study.HeightPlot;
import foldwright.study.Numerals;
import foldwright.study.Outcome;
import foldwright.study.Series;
import foldwright.study.Shown;
import foldwright.study.Verdict;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Replays a toolpath through the moving gantry. */
@Command(
        name = "replay",
        description = {
            "Skew, tool error, belt tensions and rail moments while a toolpath is followed.",
            "Returns 1 if a limit of the machine file is exceeded, a belt's teeth climb or a motor"
                    + " loses steps."
        },
        footer = {
            "",
            "Example:",
            "  foldwright replay scenes/class-plotter.json --probe square --csv replay.csv",
            "  foldwright replay scenes/class-plotter.json scenes/class-plotter.nc --run label.json"
        })
final class ReplayCommand implements Callable<Integer> {
    @Mixin private MachineArgument argument;

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "PATH",
            description =
                    "Toolpath (ISO 6983), or timed points as a .csv file; - reads a toolpath from"
                            + " standard input; left out with --probe.")
    private Path path;

    @Mixin private ToolpathArgument toolpath;
    @Mixin private JsonOption json;

    @Option(
            names = "--csv",
            paramLabel = "FILE",
            description =
                    "Write tool error by cause, skew, tensions, motor torques, block loads and lost"
                            + " steps over time to FILE, units in the header.")
    private Path csv;

    @Option(
            names = "--rate",
            paramLabel = "HZ",
            defaultValue = "1000",
            description = "Rows a second in the CSV file (default: ${DEFAULT-VALUE}).")
    private double rate;

    @Option(
            names = "--map",
            paramLabel = "FILE",
            description =
                    "Write the largest tool error over the work area to FILE: as CSV, or drawn where"
                            + " FILE ends in .svg.")
    private Path map;

    @Option(
            names = "--causes",
            description =
                    "Also share out the largest skew: steady acceleration, ringing, corners passed"
                            + " at speed, friction. Replays three times more.")
    private boolean causes;

    @Option(names = "--svg", paramLabel = "FILE", description = "Write the plot to FILE.")
    private Path svg;

    @Mixin private RunOption record;

    @Spec private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        toolpath.check(path);
        if (causes) {
            toolpath.checkReadAgain("--causes");
        }
        if (!(rate > 0 && rate <= 1e5)) {
            throw new BadInput("--rate " + rate + ": allowed: above 0, at most 100000 a second");
        }
        if (csv != null) {
            Outputs.check(csv);
        }
        if (svg != null) {
            Outputs.check(svg);
        }
        if (map != null) {
            Outputs.check(map);
        }
        record.check();
        MachineFile file = argument.readFile();
        Machine machine = file.machine();
        Gantry gantry =
                machine.gantry()
                        .orElseThrow(
                                () ->
                                        new BadInput(
                                                argument.file()
                                                        + ": has no gantry to replay on; its key is \"gantry\", see docs/machine-file.md and"
                                                        + " scenes/class-plotter.json"));
        GantryModel model = SoundGantry.of(argument.file(), gantry);
        Optional<StreamedFile> rows = Optional.ofNullable(csv).map(StreamedFile::new);
        try (InputStream in = toolpath.open()) {
            ReplayTrace trace = new ReplayTrace(rows, rate);
            ReplayRecorder recorder = new ReplayRecorder();
            ReplayResult result =
                    run(
                            model,
                            gantry,
                            in,
                            record.wanted() ? List.of(trace, recorder) : List.of(trace));
            if (!(result.duration() > 0)) {
                throw new BadInput(toolpath.name() + ": holds no move");
            }
            record.write(() -> recorder.run(file, toolpath.name(), result));
            rows.ifPresent(StreamedFile::keep);
            draw(machine, trace);
            chart(machine, result.map());
            return report(machine, model, result);
        } finally {
            rows.ifPresent(StreamedFile::close);
        }
    }

    private ReplayResult run(
            GantryModel model, Gantry gantry, InputStream in, List<ReplayListener> watching) {
        Replay replay = new Replay(model, ReplaySettings.usual(model.layout().travel()));
        Progress progress = new Progress(spec.commandLine().getErr());
        try {
            List<ReplayListener> all = new ArrayList<>(watching);
            all.add(
                    (time, line, x, y, kernel) -> {
                        if (line > 0) {
                            progress.say("replay: line " + line);
                        }
                    });
            return replay.run(toolpath.course(gantry, in), all);
        } catch (ToolpathException e) {
            throw new BadInput(toolpath.name() + ": " + e.getMessage());
        } finally {
            progress.done();
        }
    }

    /** Cells the tool was in; places of the carriage on its travel. */
    private void chart(Machine machine, ErrorMap cells) {
        if (map == null) {
            return;
        }
        Outputs outputs = new Outputs();
        boolean drawn = map.toString().toLowerCase(Locale.ROOT).endsWith(".svg");
        outputs.add(map, drawn ? drawing(machine, cells) : table(cells));
        outputs.write();
    }

    private String drawing(Machine machine, ErrorMap cells) {
        int n = ErrorMap.CELLS;
        double[] x = new double[n];
        double[] y = new double[n];
        double[] values = new double[n * n];
        for (int row = 0; row < n; row++) {
            y[row] = cells.rowY(row);
            for (int column = 0; column < n; column++) {
                x[column] = cells.columnX(column);
                values[row * n + column] =
                        cells.visits(column, row) > 0 ? cells.largest(column, row) : Double.NaN;
            }
        }
        return Drawings.area(
                machine.name() + ", " + toolpath.name(),
                new AreaPlot(
                        new HeightPlot.Caption(
                                "Largest tool error", toolpath.name(), Shown.MILLIMETRE),
                        Series.of(x),
                        Series.of(y),
                        Series.of(values),
                        machine.limits().toolError().orElse(Double.NaN)));
    }

    private static String table(ErrorMap cells) {
        Csv text = new Csv(List.of("x [mm]", "y [mm]", "largest tool error [mm]", "looks"));
        for (int row = 0; row < ErrorMap.CELLS; row++) {
            for (int column = 0; column < ErrorMap.CELLS; column++) {
                if (cells.visits(column, row) > 0) {
                    text.row(
                            List.of(
                                    Csv.number(1e3 * cells.columnX(column)),
                                    Csv.number(1e3 * cells.rowY(row)),
                                    Csv.number(1e3 * cells.largest(column, row)),
                                    Integer.toString(cells.visits(column, row))));
                }
            }
        }
        return text.text();
    }

    private void draw(Machine machine, ReplayTrace trace) {
        if (svg == null) {
            return;
        }
        double error = machine.limits().toolError().orElse(Double.NaN);
        double skew = machine.limits().skew().orElse(Double.NaN);
        Outputs outputs = new Outputs();
        outputs.add(
                svg,
                Drawings.time(machine.name() + ", " + toolpath.name(), trace.plots(error, skew)));
        outputs.write();
    }

    private int report(Machine machine, GantryModel model, ReplayResult result) throws IOException {
        Verdict skew = verdict(result.skew(), machine.limits().skew().orElse(Double.NaN));
        Verdict error = verdict(result.error(), machine.limits().toolError().orElse(Double.NaN));
        boolean broken =
                result.events().lostSteps() != 0
                        || result.events().toothJumps() != 0
                        || skew == Verdict.FAILS
                        || error == Verdict.FAILS;
        Optional<SkewCauses> found =
                causes
                        ? SkewCauseWords.find(model, machine.gantry().orElseThrow(), toolpath)
                        : Optional.empty();
        if (json.wanted()) {
            json.print(spec, out -> ReplayJson.write(out, machine, toolpath, result, found));
        } else {
            print(machine, result, skew, error);
            PrintWriter out = spec.commandLine().getOut();
            SoundGantry.relation(model).forEach(out::println);
            if (causes) {
                SkewCauseWords.lines(found).forEach(out::println);
            }
            out.flush();
        }
        return broken ? ExitCode.FAILS : ExitCode.HOLDS;
    }

    private static Verdict verdict(ChannelResult channel, double limit) {
        return Double.isNaN(limit)
                ? Verdict.UNJUDGED
                : Verdict.of(Outcome.marginOf(channel.peak(), limit));
    }

    private void print(Machine machine, ReplayResult r, Verdict skew, Verdict error) {
        PrintWriter out = spec.commandLine().getOut();
        out.println(
                machine.name()
                        + ", "
                        + toolpath.name()
                        + ": "
                        + Numerals.with(r.duration(), Shown.SECOND));
        out.println();
        Table table =
                new Table(
                        List.of("", "largest", "95 % under", "allowed", "", "at x, y", "line"),
                        List.of(
                                Table.Side.LEFT,
                                Table.Side.RIGHT,
                                Table.Side.RIGHT,
                                Table.Side.RIGHT,
                                Table.Side.LEFT,
                                Table.Side.RIGHT,
                                Table.Side.RIGHT));
        Limits limits = machine.limits();
        row(table, "skew end to end", r.skew(), allowed(limits.skew()), Words.verdict(skew));
        row(
                table,
                "tool beside its command",
                r.error(),
                allowed(limits.toolError()),
                Words.verdict(error));
        row(table, "  along the bridge", r.errorX(), "", "");
        row(table, "  along the rails", r.errorY(), "", "");
        out.print(table.text(Prose.forTerminal()));
        out.println();
        ReplayWords.lines(r, toolpath, machine).stream()
                .map(ReplayCommand::wrapped)
                .forEach(out::println);
        out.flush();
    }

    /** A sentence over as many lines as the terminal asks for; what is set in stays as it is. */
    private static String wrapped(String line) {
        boolean set = line.startsWith(" ") || line.indexOf('\n') >= 0;
        return set ? line : Prose.forTerminal().of(line);
    }

    /** A limit of the machine file, or that it has none. */
    private static String allowed(OptionalDouble limit) {
        return Numerals.with(limit.orElse(Double.NaN), Shown.MILLIMETRE);
    }

    private static void row(
            Table table, String words, ChannelResult c, String allowed, String verdict) {
        table.row(
                words,
                Numerals.with(c.peak(), Shown.MILLIMETRE),
                Numerals.with(c.p95(), Shown.MILLIMETRE),
                allowed,
                verdict,
                Numerals.fixed(Shown.MILLIMETRE.fromSi(c.x()), 0)
                        + ", "
                        + Numerals.fixed(Shown.MILLIMETRE.fromSi(c.y()), 0)
                        + " mm",
                c.line() == 0 ? "" : Long.toString(c.line()));
    }
}
