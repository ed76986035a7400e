// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lwjgl.glfw.GLFW.GLFW_KEY_BACKSPACE;
import static org.lwjgl.glfw.GLFW.GLFW_KEY_ENTER;

import foldwright.machine.file.MachineFile;
import foldwright.viewer.Headless;
import foldwright.viewer.session.LiftEngine;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The lines that begin a machine from a seed and write the report. */
class PromptTest {
    @TempDir Path folder;

    @Test
    void aSeedBecomesAMachineBesideTheOpenOne() throws Exception {
        Path scene = Files.copy(Headless.scene("van-bench"), folder.resolve("van-bench.json"));
        try (Desk desk = new Desk(new LiftEngine(), () -> {})) {
            desk.open(scene);
            Prompt prompt = Prompt.fresh();
            assertThat(prompt.key(GLFW_KEY_ENTER, desk)).isEqualTo(Prompt.State.DONE);
            Path made = desk.path().orElseThrow();
            assertThat(made).hasParent(folder.toAbsolutePath());
            assertThat(MachineFile.read(made).machine().name()).isEqualTo("my lift");
        }
    }

    @Test
    void anUnknownSeedKeepsTheLine() throws Exception {
        Path scene = Files.copy(Headless.scene("van-bench"), folder.resolve("van-bench.json"));
        try (Desk desk = new Desk(new LiftEngine(), () -> {})) {
            desk.open(scene);
            Prompt prompt = Prompt.fresh();
            for (int i = 0; i < 30; i++) {
                prompt.key(GLFW_KEY_BACKSPACE, desk);
            }
            "no-such-seed x".chars().forEach(prompt::letter);
            assertThat(prompt.key(GLFW_KEY_ENTER, desk)).isEqualTo(Prompt.State.OPEN);
            assertThat(desk.path()).contains(scene);
        }
    }

    @Test
    void theReportOfTheMachineIsWritten() throws Exception {
        Path scene = Files.copy(Headless.scene("van-bench"), folder.resolve("van-bench.json"));
        try (Desk desk = new Desk(new LiftEngine(), () -> {})) {
            desk.open(scene);
            assertThat(Prompt.report(desk).key(GLFW_KEY_ENTER, desk)).isEqualTo(Prompt.State.OPEN);
            Path page = folder.resolve("van-bench-report").resolve("report.html");
            for (int i = 0; i < 600 && !Files.exists(page); i++) {
                Thread.sleep(100);
            }
            assertThat(Files.readString(page)).contains("Van bench");
        }
    }
}
