// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import foldwright.machine.file.NearestWord;
import foldwright.machine.file.NewMachine;
import foldwright.machine.file.Seed;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Starts a machine file from a seed. */
@Command(
        name = "new",
        description = "Starts a machine file, with comments, that can be assessed at once.",
        footer = {
            "",
            "Seeds:",
            "  one-stage    one stage, one screw, one motor",
            "  hand-crank   one stage, one screw, turned by hand",
            "  two-stage    two stages, two screws on one motor by a belt, upright helper springs",
            "  three-stage  three stages, two screws with a motor each, torsion springs",
            "  plotter      one stage, one screw, and an XY gantry with one belt and two motors on it",
            "",
            "Example:",
            "  foldwright new \"my bench\" --from two-stage"
        })
final class NewCommand implements Callable<Integer> {
    @Parameters(
            index = "0",
            paramLabel = "NAME",
            description = "What the machine is called; its file is named after it.")
    private String name;

    @Option(
            names = "--from",
            paramLabel = "SEED",
            defaultValue = "one-stage",
            description = "Seed to start from (default: ${DEFAULT-VALUE}).")
    private String from;

    @Option(
            names = "-o",
            paramLabel = "DIR",
            defaultValue = ".",
            description =
                    "Folder to write it to, made if there is none (default: the current one).")
    private Path folder;

    @Spec private CommandSpec spec;

    @Override
    public Integer call() throws IOException {
        Outputs.checkFolder(folder);
        Seed seed = Seed.find(from).orElseThrow(() -> new BadInput(unknownSeed()));
        try {
            Files.createDirectories(folder);
            Path file = NewMachine.create(name, seed, folder);
            PrintWriter out = spec.commandLine().getOut();
            out.println("wrote " + file + ": " + seed.about());
            out.println("next:  foldwright assess " + file + " -o report");
            return ExitCode.HOLDS;
        } catch (NewMachine.Refused e) {
            throw new BadInput(e.getMessage());
        } catch (IOException e) {
            throw new BadInput(folder + ": cannot be written: " + Outputs.reason(e));
        }
    }

    private String unknownSeed() {
        String head =
                "no seed is called \"" + from + "\"; allowed: " + String.join(", ", Seed.words());
        return head + NearestWord.of(from, Seed.words()).map(w -> "; nearest: " + w).orElse("");
    }
}
