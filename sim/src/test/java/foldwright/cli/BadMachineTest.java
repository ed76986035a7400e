// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Bad input through every command that reads a machine: one message, no trace, no file. */
class BadMachineTest {
    private static final List<String> COMMANDS =
            List.of("curve", "assess", "fold", "hold", "replay", "limits");
    private static final List<String> BAD =
            List.of("", "{", "{ \"name\": 3 }", "[1, 2]", "\u0000\u0001", "{}", "nothing at all");

    @TempDir private Path folder;

    static Stream<String[]> cases() {
        List<String[]> out = new ArrayList<>();
        COMMANDS.forEach(c -> BAD.forEach(b -> out.add(new String[] {c, b})));
        return out.stream();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void isRefusedAndLeavesNothing(String command, String text) throws IOException {
        Path bad = Files.write(folder.resolve("bad.json"), text.getBytes(StandardCharsets.UTF_8));
        List<String> args = new ArrayList<>(List.of(command, bad.toString()));
        switch (command) {
            case "assess" -> args.addAll(List.of("-o", folder.resolve("out").toString()));
            case "replay" -> args.addAll(List.of("--probe", "square", "--csv", csv()));
            default -> args.addAll(List.of("--csv", csv()));
        }
        Terminal.Result result = Terminal.run(args.toArray(String[]::new));
        assertThat(result.exit()).isEqualTo(ExitCode.BAD_INPUT);
        assertThat(result.out()).isEmpty();
        assertThat(result.err()).contains("bad.json").doesNotContain("Exception", "\tat ");
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left).containsExactly(bad);
        }
    }

    private String csv() {
        return folder.resolve("out.csv").toString();
    }
}
