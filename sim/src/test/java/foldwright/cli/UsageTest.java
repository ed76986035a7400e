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
                        foldwright: there is no command "asess"; allowed: new, assess, curve, fold, hold, replay, limits, proof
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
                        foldwright: there is no option "--cvs"
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
                                + " hand-crank, two-stage, three-stage, plotter; nearest: two-stage\n");
    }

    @Test
    void versionIsPrinted() {
        assertThat(Terminal.run("--version").out()).startsWith("foldwright 0.1.0");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "assess a.json b.json | one word too many: \"b.json\"; allowed: MACHINE and options",
                "curve x.json --csv= | --csv: found an empty name, allowed: the name of a file",
                "fold x.json --direction up | --direction: found \"up\", allowed: raising, lowering",
                "replay x.json --rate fast | --rate: found \"fast\", allowed: a number",
                "hold x.json --hour=2 | --hour: found \"2\", allowed: the option alone, without a value",
                "replay x.json - --causes | --causes reads the toolpath again: name a file, not"
                        + " standard input, for it"
            })
    void misuseIsToldWithWhatWasFoundAndWhatIsAllowed(String words, String message) {
        Terminal.Result result = Terminal.run(words.split(" "));
        assertThat(result.exit()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(result.err().lines().findFirst()).hasValue("foldwright: " + message);
        assertThat(result.out()).isEmpty();
    }
}
