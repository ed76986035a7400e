// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.watch;

import foldwright.cli.ExitCode;
import foldwright.machine.file.BadMachineFile;
import foldwright.machine.file.MachineFile;
import foldwright.report.draw.Theme;
import foldwright.study.Question;
import foldwright.viewer.gl.NoGraphicsException;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
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
            "  foldwright watch scenes/van-bench.json --still bench.png --height worst --size 1280x720"
        })
public final class WatchCommand implements Callable<Integer> {
    @Spec private CommandSpec spec;

    @Parameters(index = "0", arity = "0..1", paramLabel = "MACHINE", description = "Machine file.")
    private Path file;

    @Option(
            names = "--still",
            paramLabel = "PNG",
            description = "Writes one picture; needs no display.")
    private Path still;

    @Option(
            names = "--size",
            paramLabel = "WxH",
            converter = PictureSize.Reader.class,
            defaultValue = "1920x1080",
            description = "Size of picture or film in pixels (default ${DEFAULT-VALUE}).")
    private PictureSize size;

    @Option(
            names = "--height",
            paramLabel = "HEIGHT",
            converter = HeightWish.Reader.class,
            description =
                    "Height of the deck pins above the base pins: flat, worst, top, or a length such as \"109 mm\".")
    private HeightWish height;

    @Option(
            names = "--question",
            paramLabel = "QUESTION",
            description = "Question to open: ${COMPLETION-CANDIDATES}.")
    private Question question;

    @Option(names = "--theme", defaultValue = "LIGHT", description = "LIGHT or DARK.")
    private Theme theme;

    @Override
    public Integer call() throws IOException {
        PrintWriter err = spec.commandLine().getErr();
        if (file == null) {
            err.println(
                    "foldwright: which machine? Example: foldwright watch scenes/van-bench.json");
            return ExitCode.BAD_INPUT;
        }
        MachineFile machine;
        try {
            machine = MachineFile.read(file);
        } catch (BadMachineFile e) {
            err.println(e.getMessage());
            return ExitCode.BAD_INPUT;
        }
        try {
            Stills.Wish wish =
                    new Stills.Wish(
                            size,
                            Optional.ofNullable(height).orElse(HeightWish.WORST),
                            Optional.ofNullable(question).orElse(Question.FOLD),
                            theme);
            if (still != null) {
                Stills.write(machine.machine(), wish, still);
            }
            return ExitCode.HOLDS;
        } catch (NoGraphicsException e) {
            err.println("foldwright: " + e.getMessage());
            return ExitCode.BAD_INPUT;
        }
    }
}
