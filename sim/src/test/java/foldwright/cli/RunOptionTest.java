// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import foldwright.run.Run;
import foldwright.run.RunColumn;
import foldwright.run.RunFile;
import foldwright.run.RunKind;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RunOptionTest {
    @TempDir private Path folder;

    @Test
    void aReplayIsWrittenToBePlayed() throws Exception {
        Path file = folder.resolve("label.json");
        Terminal.Result result =
                Terminal.run(
                        "replay",
                        "../scenes/class-plotter.json",
                        "../scenes/class-plotter.nc",
                        "--run",
                        file.toString());
        // Progress may be told on a slow machine.
        assertThat(result.err()).doesNotContain("foldwright:");
        Run run = RunFile.read(file);
        assertThat(run.kind()).isEqualTo(RunKind.REPLAY);
        // Twelve corners, 980 mm, and a circle of 80 mm: the last move stands in line 21.
        assertThat(run.table().largest(RunColumn.LINE)).isEqualTo(21);
        assertThat(run.table().largest(RunColumn.COMMANDED_Y)).isEqualTo(0.32);
    }

    @Test
    void aPlaceThatCannotBeWrittenIsRefusedBeforeTheRun() {
        Path file = folder.resolve("no/such/run.json");
        Terminal.Result result =
                Terminal.run("fold", "../scenes/van-bench.json", "--run", file.toString());
        assertThat(result.exit()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(result.err()).contains("there is no folder");
        assertThat(folder).isEmptyDirectory();
    }
}
