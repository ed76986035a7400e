// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class OutputsTest {
    @TempDir private Path folder;

    private Stream<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(f -> f.getFileName().toString()).toList().stream();
        }
    }

    @Test
    void allFilesAppearAndNothingElse() throws IOException {
        Outputs outputs = new Outputs();
        outputs.add(folder.resolve("a.csv"), "1");
        outputs.add(folder.resolve("b ü.svg"), "2");
        outputs.write();
        assertThat(names()).containsExactlyInAnyOrder("a.csv", "b ü.svg");
        assertThat(folder.resolve("a.csv")).hasContent("1");
    }

    @Test
    void oneThatCannotBeWrittenKeepsTheOthersAway() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "old");
        Outputs outputs = new Outputs();
        outputs.add(folder.resolve("a.csv"), "1");
        outputs.add(file.resolve("below-a-file.svg"), "2");
        assertThatThrownBy(outputs::write)
                .isInstanceOf(BadInput.class)
                .hasMessageContaining("below-a-file.svg");
        assertThat(names()).containsExactly("file");
    }

    @Test
    void anOldFileStaysUntilTheNewOneIsComplete() throws IOException {
        Path file = Files.writeString(folder.resolve("a.csv"), "old");
        Outputs outputs = new Outputs();
        outputs.add(file, "new");
        assertThat(file).hasContent("old");
        outputs.write();
        assertThat(file).hasContent("new");
    }

    @Test
    void placesThatCannotBeWrittenAreRefusedBeforeTheRun() {
        assertThatThrownBy(() -> Outputs.check(folder)).hasMessageContaining("is a folder");
        assertThatThrownBy(() -> Outputs.check(folder.resolve("nowhere/a.csv")))
                .hasMessageContaining("there is no folder");
    }
}
