// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UsageTest {
    @Test
    void misspeltCommandIsAnsweredWithTheNearest() {
        Terminal.Result result = Terminal.run("asess", "x.json");
        assertThat(result.exit()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(result.out()).isEmpty();
        assertThat(result.err())
                .isEqualTo(
                        """
                        foldwright: there is no command or option "asess"
                        nearest: foldwright assess
                        help: foldwright --help
                        """);
    }

    @Test
    void misspeltOptionIsAnsweredWithTheNearest() {
        Terminal.Result result = Terminal.run("curve", "x.json", "--cvs", "y.csv");
        assertThat(result.exit()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(result.err())
                .isEqualTo(
                        """
                        foldwright: there is no command or option "--cvs"
                        nearest: --csv
                        help: foldwright curve --help
                        """);
    }

    @ParameterizedTest
    @CsvSource({"curve", "assess", "replay", "limits"})
    void missingMachineIsNamed(String command) {
        Terminal.Result result = Terminal.run(command);
        assertThat(result.exit()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(result.err()).contains("MACHINE").contains("foldwright " + command + " --help");
    }

    @Test
    void unknownSeedNamesAllAndTheNearest() {
        Terminal.Result result = Terminal.run("new", "bench", "--from", "two-stge");
        assertThat(result.exit()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(result.err())
                .isEqualTo(
                        "foldwright: no seed is called \"two-stge\"; allowed: one-stage,"
                                + " hand-crank, two-stage, three-stage; nearest: two-stage\n");
    }

    @Test
    void versionIsPrinted() {
        assertThat(Terminal.run("--version").out()).startsWith("foldwright 0.1.0");
    }
}
