// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Starting a machine from a seed: safe names, nothing written over, comments kept. */
class NewMachineTest {
    @TempDir private Path folder;

    @ParameterizedTest
    @EnumSource(Seed.class)
    void everySeedGrowsIntoAGoodMachineOfThatName(Seed seed) throws Exception {
        Path file = NewMachine.create("My bench", seed, folder);
        assertThat(file).isEqualTo(folder.resolve("My-bench.json"));
        MachineFile read = MachineFile.read(file);
        assertThat(read.machine().name()).isEqualTo("My bench");
        assertThat(read.text()).contains("// How this file works");
        assertThat(MachineTextTest.names(folder)).containsExactly("My-bench.json");
    }

    @Test
    void theSeedsAreTheFilesInTheirFolder() throws IOException {
        try (Stream<Path> files = Files.list(ScenesTest.ROOT.resolve("seeds"))) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .containsExactlyInAnyOrderElementsOf(
                            Seed.words().stream().map(word -> word + ".json").toList());
        }
        assertThat(Seed.find("TWO-stage ")).contains(Seed.TWO_STAGE);
        assertThat(Seed.find("four-stage")).isEmpty();
    }

    @Test
    void nothingIsWrittenOver() throws Exception {
        Files.writeString(folder.resolve("bench.json"), "mine");
        assertThatThrownBy(() -> NewMachine.create("bench", Seed.ONE_STAGE, folder))
                .isInstanceOf(NewMachine.Refused.class)
                .hasMessageEndingWith("exists already; choose another name, or move it away");
        assertThat(folder.resolve("bench.json")).hasContent("mine");
        assertThat(MachineTextTest.names(folder)).containsExactly("bench.json");
    }

    @ParameterizedTest
    @CsvSource({
        "bench, bench.json",
        "bench.json, bench.json",
        "Lift No. 4, Lift-No.-4.json",
        "Werkbänkchen, Werkbänkchen.json",
        "折叠台, 折叠台.json",
        "'  a  b ', a-b.json"
    })
    void namesBecomeFileNames(String name, String file) throws Exception {
        assertThat(NewMachine.fileName(name)).isEqualTo(file);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                ".json",
                "..",
                "../up",
                "a/b",
                "a\\b",
                "/elsewhere/x",
                "-rf",
                ".hidden",
                "nul",
                "CON.json",
                "a\u0000b",
                "tab\tand\nline*",
                "semi;colon",
                "pipe|",
                "~",
                "$HOME",
                "dot.",
                "a:b"
            })
    void namesThatAreNoFileNamesAreRefused(String name) throws IOException {
        assertThatThrownBy(() -> NewMachine.create(name, Seed.ONE_STAGE, folder))
                .isInstanceOf(NewMachine.Refused.class)
                .hasMessageContaining("allowed: letters, digits, spaces");
        assertThat(MachineTextTest.names(folder)).isEmpty();
    }

    @Test
    void longNamesAreRefused() {
        assertThatThrownBy(() -> NewMachine.create("x".repeat(81), Seed.ONE_STAGE, folder))
                .isInstanceOf(NewMachine.Refused.class);
    }
}
