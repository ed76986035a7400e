// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where there is no display the program says so in one sentence, and what to do instead. */
class NoDisplayTest {
    @TempDir private Path folder;

    private void oneSentence(String... arguments) throws Exception {
        Assumptions.assumeTrue(
                System.getProperty("os.name").startsWith("Linux"),
                "only here a window depends on DISPLAY and WAYLAND_DISPLAY");
        List<String> command =
                new ArrayList<>(
                        List.of(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-Dfoldwright.home="
                                        + Headless.scene("van-bench")
                                                .toAbsolutePath()
                                                .getParent()
                                                .getParent(),
                                "-cp",
                                System.getProperty("java.class.path"),
                                "foldwright.viewer.Main"));
        command.addAll(List.of(arguments));
        Path said = folder.resolve("said.txt");
        ProcessBuilder builder = new ProcessBuilder(command);
        builder.environment().remove("DISPLAY");
        builder.environment().remove("WAYLAND_DISPLAY");
        builder.redirectErrorStream(true).redirectOutput(said.toFile());
        Process process = builder.start();
        try {
            assertThat(process.waitFor(120, TimeUnit.SECONDS)).isTrue();
        } finally {
            process.destroy();
        }
        List<String> lines = Files.readAllLines(said, StandardCharsets.UTF_8);
        assertThat(lines).hasSize(1);
        assertThat(lines.get(0))
                .startsWith("foldwright: No display to open a window on")
                .contains("--still picture.png")
                .contains("foldwright assess MACHINE -o DIR");
        assertThat(process.exitValue()).isEqualTo(2);
    }

    @Test
    void theProgramAlone() throws Exception {
        oneSentence();
    }

    @Test
    void watchOnAMachine() throws Exception {
        oneSentence("watch", Headless.scene("class-plotter").toString());
    }
}
