// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.watch;

import foldwright.cli.ExitCode;
import foldwright.machine.Machine;
import foldwright.machine.file.BadMachineFile;
import foldwright.machine.file.WholeFile;
import foldwright.machine.linkage.FoldGeometry;
import foldwright.report.draw.Theme;
import foldwright.run.BadRunFile;
import foldwright.run.RunKind;
import foldwright.study.Question;
import foldwright.viewer.beside.Second;
import foldwright.viewer.gl.NoGraphicsException;
import foldwright.viewer.picture.Film;
import foldwright.viewer.play.Reel;
import foldwright.viewer.play.RunMaker;
import foldwright.viewer.scene.Ground;
import foldwright.viewer.session.Engine;
import foldwright.viewer.session.LiftEngine;
import foldwright.viewer.session.Results;
import foldwright.viewer.window.CannotOpenException;
import foldwright.viewer.window.WindowApp;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Shows a machine: in a window, or as a picture, film or model file. */
@Command(
        name = "watch",
        description =
                "Shows the machine in a window, or writes a picture, a film or an animated model of it.",
        mixinStandardHelpOptions = true,
        sortOptions = false,
        footer = {
            "",
            "Examples:",
            "  foldwright watch scenes/van-bench.json",
            "  foldwright watch scenes/van-bench.json --still bench.png --height worst --size 1280x720",
            "  foldwright watch scenes/class-plotter.json --question skew --still skew.png --time worst",
            "  foldwright watch scenes/van-bench.json --over scenes/van-bench-binds.json"
        })
public final class WatchCommand implements Callable<Integer> {
    private static final Engine ENGINE = new LiftEngine();

    @Spec private CommandSpec spec;

    @Parameters(
            index = "0",
            arity = "0..1",
            paramLabel = "MACHINE|RUN",
            description = "Machine file, or a run written by --run; left out: the first demo.")
    private Path file;

    @Option(
            names = "--still",
            paramLabel = "PNG",
            description = "Writes one picture; needs no display.")
    private Path still;

    @Option(
            names = "--film",
            paramLabel = "MP4|GIF",
            description =
                    "Writes a film of a run, 10 s long, the unfolding unless another is named; needs no display.")
    private Path film;

    @Option(
            names = "--glb",
            paramLabel = "GLB",
            description = "Writes the unfolding machine as an animated glTF 2.0 model.")
    private Path glb;

    @Option(
            names = "--size",
            paramLabel = "WxH",
            converter = PictureSize.Reader.class,
            description = "Size in pixels (default 1920x1080, of a film 1280x720).")
    private PictureSize size;

    @Option(
            names = "--height",
            paramLabel = "HEIGHT",
            converter = HeightWish.Reader.class,
            description =
                    "Height of the deck pins above the base pins: flat, worst, top, or a length such as \"109 mm\".")
    private HeightWish height;

    @Option(
            names = "--time",
            paramLabel = "TIME",
            converter = TimeWish.Reader.class,
            description =
                    "Shows a run at a time such as \"18.7 s\", or at its worst moment: worst.")
    private TimeWish time;

    @Option(
            names = "--play",
            paramLabel = "RUN",
            description =
                    "Which run is computed and shown: unfold, fold, replay (default: replay with"
                            + " --question skew, else unfold where a time is given).")
    private RunKind play;

    @Option(
            names = "--path",
            paramLabel = "FILE",
            description =
                    "Toolpath of the replay (default: the .nc file beside the machine, else a"
                            + " square).")
    private Path path;

    @Option(
            names = "--over",
            paramLabel = "MACHINE|RUN",
            description = "A second machine, dashed over the first at the same height.")
    private Path over;

    @Option(
            names = "--beside",
            paramLabel = "MACHINE|RUN",
            description = "A second machine, beside the first at the same height and scale.")
    private Path beside;

    @Option(
            names = "--question",
            paramLabel = "QUESTION",
            description = "Question to open: fold, stay, lean, skew, fit, order.")
    private Question question;

    @Option(
            names = "--part",
            paramLabel = "NAME",
            description =
                    "Reads a part in the picture: what it carries, by cause. A name such as"
                            + " \"front centre pin 1\", worst for the most loaded one, \"B: name\""
                            + " for the machine beside.")
    private String part;

    @Option(
            names = "--grid",
            description =
                    "A grid of 10 mm on the table, labelled in millimetres from the fixed pins.")
    private boolean grid;

    @Option(
            names = "--theme",
            paramLabel = "THEME",
            defaultValue = "LIGHT",
            description = "light or dark (default light).")
    private Theme theme;

    @Override
    public Integer call() throws IOException {
        PrintWriter err = spec.commandLine().getErr();
        Path shown = file;
        if (shown == null) {
            Optional<Path> demo = Demos.all().stream().findFirst();
            if (demo.isEmpty()) {
                err.println(
                        "foldwright: which machine? Example: foldwright watch scenes/van-bench.json");
                return ExitCode.BAD_INPUT;
            }
            shown = demo.get();
        }
        Optional<String> refused = refusal();
        if (refused.isPresent()) {
            err.println("foldwright: " + refused.get());
            return ExitCode.BAD_INPUT;
        }
        try {
            if (still == null && film == null && glb == null) {
                window(shown);
            } else {
                outputs(shown, err);
            }
            return ExitCode.HOLDS;
        } catch (BadMachineFile e) {
            err.println("foldwright: " + e.counted());
            return ExitCode.BAD_INPUT;
        } catch (BadRunFile
                | CannotOpenException
                | NoGraphicsException
                | RunMaker.NoRunException
                | PartWish.NoPartException e) {
            err.println("foldwright: " + e.getMessage());
            return ExitCode.BAD_INPUT;
        }
    }

    private Optional<String> refusal() {
        if (over != null && beside != null) {
            return Optional.of("found both --over and --beside, allowed: one of them");
        }
        if (part != null && still == null) {
            return Optional.of("found --part without --still; allowed: both together");
        }
        Optional<Path> occupied =
                Stream.of(still, film, glb)
                        .filter(f -> f != null && WholeFile.occupied(f))
                        .findFirst();
        if (occupied.isPresent()) {
            return Optional.of(
                    occupied.get()
                            + ": is a folder, a device or a pipe; allowed: the name of an ordinary"
                            + " file");
        }
        Optional<String> named = wrongName("--still", still, ".png");
        named = named.or(() -> wrongName("--glb", glb, ".glb"));
        if (named.isPresent()) {
            return named;
        }
        if (film != null && !Film.canWrite(film)) {
            return Optional.of(
                    "found --film " + film + ", allowed: a name that ends in .mp4 or .gif");
        }
        if (film != null && size != null && (size.width() % 2 != 0 || size.height() % 2 != 0)) {
            return Optional.of("found --size of odd width or height; a film needs both even");
        }
        return Optional.empty();
    }

    private static Optional<String> wrongName(String option, Path file, String end) {
        return file == null || file.toString().toLowerCase(Locale.ROOT).endsWith(end)
                ? Optional.empty()
                : Optional.of(
                        "found " + option + " " + file + ", allowed: a name that ends in " + end);
    }

    private void outputs(Path shown, PrintWriter err)
            throws IOException,
                    BadMachineFile,
                    BadRunFile,
                    RunMaker.NoRunException,
                    PartWish.NoPartException {
        Ahead.Reading reading = () -> Subject.read(shown, Optional.ofNullable(path));
        try (Ahead ahead = new Ahead(ENGINE, reading, this::withRun)) {
            try {
                outputs(ahead, err);
            } catch (NoGraphicsException e) {
                // What is wrong with the file is told before what is wrong with the computer.
                ahead.subject();
                throw e;
            }
        }
    }

    private void outputs(Ahead ahead, PrintWriter err)
            throws IOException,
                    BadMachineFile,
                    BadRunFile,
                    RunMaker.NoRunException,
                    PartWish.NoPartException {
        if (still != null) {
            Stills.write(ahead, s -> wish(new PictureSize(1920, 1080), s), still);
        }
        if (film == null && glb == null) {
            return;
        }
        Subject subject = ahead.subject();
        Machine machine = subject.machine().machine();
        Results results = ahead.results();
        if (film != null) {
            Progress progress = new Progress(err);
            Films.write(
                    subject,
                    results,
                    wish(new PictureSize(1280, 720), subject),
                    film,
                    progress::picture);
            progress.done();
        }
        if (glb != null) {
            Models.write(machine, results, wish(new PictureSize(1280, 720), subject), glb);
        }
    }

    /** The run that is asked for, computed where none was read. */
    private Subject withRun(Subject subject)
            throws RunMaker.NoRunException, BadMachineFile, BadRunFile {
        boolean skew = question == Question.SKEW;
        boolean replays = subject.machine().machine().gantry().isPresent();
        RunKind kind =
                play != null
                        ? play
                        : skew && replays
                                ? RunKind.REPLAY
                                : time != null || film != null ? RunKind.UNFOLD : null;
        Subject whole =
                subject.reel().isPresent() || kind == null
                        ? subject
                        : subject.with(
                                new Reel(RunMaker.run(subject.machine(), kind, subject.path())));
        whole.reel().ifPresent(r -> Optional.ofNullable(time).orElse(TimeWish.WORST).put(r));
        Optional<Second> second = second(whole);
        return second.isPresent() ? whole.with(second.get()) : whole;
    }

    /** The second machine, where one is named. */
    private Optional<Second> second(Subject first)
            throws RunMaker.NoRunException, BadMachineFile, BadRunFile {
        if (over == null && beside == null) {
            return Optional.empty();
        }
        Second.Placing placing = over != null ? Second.Placing.OVER : Second.Placing.BESIDE;
        Path file = over != null ? over : beside;
        return Optional.of(new Seconds(ENGINE).read(file, placing, first, first.path()));
    }

    private void window(Path shown)
            throws RunMaker.NoRunException, BadMachineFile, BadRunFile, CannotOpenException {
        Optional<Path> toolpath = Optional.ofNullable(path);
        Optional<Second> second =
                over == null && beside == null
                        ? Optional.empty()
                        : second(Subject.read(shown, toolpath));
        WindowApp.run(shown, new WindowApp.Opening(toolpath, second), ENGINE, Demos.all());
    }

    /** Refuses a height outside the travel and a time outside the run. */
    private void refuseBeyond(Subject subject) {
        var lift = subject.machine().machine().lift();
        FoldGeometry fold = new FoldGeometry(lift);
        Optional<String> beyond =
                Optional.ofNullable(height)
                        .flatMap(
                                h ->
                                        h.beyond(
                                                fold.height(lift.travel().fold().low()),
                                                fold.height(lift.travel().fold().high())))
                        .or(
                                () ->
                                        Optional.ofNullable(time)
                                                .flatMap(t -> subject.reel().flatMap(t::beyond)));
        if (beyond.isPresent()) {
            throw new ParameterException(spec.commandLine(), beyond.get());
        }
    }

    private Stills.Wish wish(PictureSize usual, Subject subject) {
        refuseBeyond(subject);
        boolean replay = subject.reel().filter(Reel::alongPath).isPresent();
        return new Stills.Wish(
                Optional.ofNullable(size).orElse(usual),
                Optional.ofNullable(height)
                        .orElse(
                                replay
                                        ? new HeightWish(HeightWish.Place.TOP, 0)
                                        : HeightWish.WORST),
                replay ? Question.SKEW : Optional.ofNullable(question).orElse(Question.FOLD),
                theme,
                grid ? Ground.GRID : Ground.PLAIN,
                Optional.ofNullable(part).map(PartWish::new));
    }

    /** Says how far a film is: nothing in the first second, then now and then. */
    private static final class Progress {
        private final PrintWriter err;
        private long next = System.nanoTime() + 1_000_000_000L;
        private boolean shown;

        Progress(PrintWriter err) {
            this.err = err;
        }

        void picture(int count) {
            if (System.nanoTime() - next > 0) {
                boolean terminal = System.console() != null;
                err.print(
                        (terminal ? "\r" : "")
                                + "picture "
                                + count
                                + " of "
                                + Films.FRAMES
                                + (terminal ? "" : "\n"));
                err.flush();
                shown = terminal;
                next = System.nanoTime() + (terminal ? 250_000_000L : 5_000_000_000L);
            }
        }

        void done() {
            if (shown) {
                err.println();
            }
        }
    }
}
