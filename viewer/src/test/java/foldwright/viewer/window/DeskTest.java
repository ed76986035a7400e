// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.window;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import foldwright.machine.file.MachineFile;
import foldwright.viewer.Headless;
import foldwright.viewer.session.Dial;
import foldwright.viewer.session.LiftEngine;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Semaphore;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What lies before the user stays before them: after a save, after a file that cannot be read. */
class DeskTest {
    @TempDir Path folder;

    private static Dial friction(Desk desk) {
        return desk.dials().stream()
                .filter(d -> d.name().equals("thread friction"))
                .findFirst()
                .orElseThrow();
    }

    private static void awaitCurve(Desk desk, Semaphore answers) throws InterruptedException {
        while (desk.results().plot().isEmpty()) {
            answers.acquire();
            desk.takeResults();
        }
    }

    @Test
    void aSavedMachineIsGoneOnWithBesideTheKeptCurve() throws Exception {
        Semaphore answers = new Semaphore(0);
        try (Desk desk = new Desk(new LiftEngine(), answers::release)) {
            desk.open(Headless.scene("van-bench"));
            awaitCurve(desk, answers);
            desk.keep();
            desk.height(0.2);
            desk.mark();
            desk.tryValue(friction(desk), 0.12);
            assertThat(desk.changed()).isTrue();
            Path saved = folder.resolve("greased.json");
            desk.save(saved);
            assertThat(desk.path()).contains(saved);
            assertThat(desk.changed()).isFalse();
            assertThat(desk.height()).isEqualTo(0.2);
            assertThat(desk.value(friction(desk))).isEqualTo(0.12);
            assertThat(MachineFile.read(saved).machine()).isEqualTo(desk.machine());
            awaitCurve(desk, answers);
            var plot = desk.page().model().plot().orElseThrow();
            assertThat(plot.beside())
                    .singleElement()
                    .satisfies(b -> assertThat(b.words()).isEqualTo("A"));
        }
    }

    @Test
    void aFileThatCannotBeReadLeavesTheMachine() throws Exception {
        try (Desk desk = new Desk(new LiftEngine(), () -> {})) {
            desk.open(Headless.scene("van-bench"));
            desk.height(0.15);
            Path bad = Files.writeString(folder.resolve("bad.json"), "{ \"name\": 3 ");
            assertThatThrownBy(() -> desk.open(bad)).isInstanceOf(CannotOpenException.class);
            assertThat(desk.machine().name()).isEqualTo("Van bench");
            assertThat(desk.height()).isEqualTo(0.15);
        }
    }
}
