// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
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

    @Test
    void aLinkStaysAndItsFileIsReplaced() throws IOException {
        Path file = Files.writeString(folder.resolve("real.csv"), "old");
        Path link = Files.createSymbolicLink(folder.resolve("link.csv"), file);
        Outputs outputs = new Outputs();
        outputs.add(link, "new");
        outputs.write();
        assertThat(link).isSymbolicLink();
        assertThat(file).hasContent("new");
        try (StreamedFile streamed = new StreamedFile(link)) {
            streamed.write("newer");
            streamed.keep();
        }
        assertThat(link).isSymbolicLink();
        assertThat(file).hasContent("newer");
    }

    @Test
    @EnabledOnOs({OS.LINUX, OS.MAC})
    void aPipeIsNotReplacedByAFile() throws Exception {
        Path pipe = folder.resolve("pipe");
        assertThat(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor()).isZero();
        Outputs outputs = new Outputs();
        outputs.add(pipe, "1");
        assertThatThrownBy(() -> Outputs.check(pipe)).hasMessageContaining("a device or a pipe");
        assertThatThrownBy(outputs::write).hasMessageContaining("a device or a pipe");
        assertThatThrownBy(() -> new StreamedFile(pipe)).hasMessageContaining("a device or a pipe");
        assertThat(Files.isRegularFile(pipe)).isFalse();
    }

    @Test
    void aFileInPlaceOfAFolderIsNamed() throws IOException {
        Path file = Files.writeString(folder.resolve("a.json"), "");
        assertThatThrownBy(() -> Outputs.checkFolder(file))
                .hasMessage(file + ": is a file; the name of a folder is needed");
        assertThatThrownBy(() -> Outputs.checkFolder(file.resolve("below")))
                .hasMessage(
                        file.resolve("below")
                                + ": "
                                + file
                                + " is a file; the name of a folder is needed");
    }
}
