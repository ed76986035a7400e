// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import foldwright.run.Run;
import foldwright.run.RunFile;
import java.nio.file.Path;
import java.util.function.Supplier;
import picocli.CommandLine.Option;

/** The option {@code --run}: the whole run as a file that the viewer plays. */
final class RunOption {
    @Option(
            names = "--run",
            paramLabel = "FILE",
            description = "Write the run to FILE (JSON), to play it with: foldwright watch FILE.")
    private Path file;

    boolean wanted() {
        return file != null;
    }

    /** Refuses a place that cannot be written, before the run. */
    void check() {
        if (wanted()) {
            Outputs.check(file);
        }
    }

    /** Writes the file if it was asked for, complete or not at all. */
    void write(Supplier<Run> run) {
        if (wanted()) {
            Outputs outputs = new Outputs();
            outputs.add(file, RunFile.text(run.get()));
            outputs.write();
        }
    }
}
