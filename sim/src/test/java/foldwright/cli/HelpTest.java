// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Help is tested as the whole text a person reads. After a wanted change: {@code mvn -pl sim test
 * -Dtest=HelpTest -Dhelp.write=src/test/resources/foldwright/cli/help}, then read the difference.
 */
class HelpTest {
    static Stream<String> commands() {
        return Foldwright.commandLine().getSubcommands().keySet().stream().sorted();
    }

    @ParameterizedTest
    @MethodSource("commands")
    void helpOfEveryCommand(String command) throws IOException {
        Terminal.Result result = Terminal.run(command, "--help");
        assertThat(result.exit()).isZero();
        assertThat(result.err()).isEmpty();
        assertThat(result.out()).isEqualTo(stored(command, result.out()));
    }

    @ParameterizedTest
    @MethodSource("commands")
    void helpShowsAnExampleThatNamesTheCommand(String command) {
        String help = Terminal.run(command, "--help").out();
        assertThat(help.substring(help.indexOf("Example:"))).contains("foldwright " + command);
    }

    @Test
    void helpOfTheProgram() throws IOException {
        Terminal.Result result = Terminal.run("--help");
        assertThat(result.exit()).isZero();
        assertThat(result.out()).isEqualTo(stored("foldwright", result.out()));
        assertThat(Terminal.run().out()).isEqualTo(result.out());
    }

    @Test
    void noLineIsWiderThanAHundredColumns() {
        List<String> all = Stream.concat(commands(), Stream.of("--help")).toList();
        for (String command : all) {
            assertThat(Terminal.run(command, "--help").out().lines())
                    .allMatch(line -> line.length() <= 100);
        }
    }

    private static String stored(String name, String now) throws IOException {
        String folder = System.getProperty("help.write");
        if (folder != null) {
            Files.writeString(Path.of(folder).resolve(name + ".txt"), now);
        }
        try (InputStream in = HelpTest.class.getResourceAsStream("help/" + name + ".txt")) {
            assertThat(in).as("stored help of " + name).isNotNull();
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
