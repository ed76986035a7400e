// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class WholeFileTest {
    @TempDir Path folder;

    @Test
    @EnabledOnOs({OS.LINUX, OS.MAC})
    void aPipeIsNotReplacedByAFile() throws Exception {
        Path pipe = folder.resolve("pipe");
        assertThat(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor()).isZero();
        assertThatThrownBy(() -> WholeFile.write(pipe, "1"))
                .hasMessageContaining("no ordinary file");
        assertThat(Files.isRegularFile(pipe)).isFalse();
        try (var left = Files.list(folder)) {
            assertThat(left).containsExactly(pipe);
        }
    }

    @Test
    void aLinkStaysAndItsFileIsReplaced() throws IOException {
        Path file = Files.writeString(folder.resolve("real"), "old");
        Path link = Files.createSymbolicLink(folder.resolve("link"), file);
        WholeFile.write(link, "new");
        assertThat(link).isSymbolicLink();
        assertThat(file).hasContent("new");
    }
}
