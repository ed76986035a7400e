// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.picture;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;

/** Writes a file that is complete or absent. */
public final class WholeFile {
    private WholeFile() {}

    /** Fills the file. */
    public interface Filler {
        void fill(OutputStream out) throws IOException;
    }

    /** Fills a file known by its name, for writers that must seek. */
    public interface NamedFiller {
        void fill(Path beside) throws IOException;
    }

    /** Writes beside, then moves into place; nothing is left behind when {@code filler} fails. */
    public static void write(Path file, Filler filler) throws IOException {
        writeNamed(
                file,
                beside -> {
                    try (OutputStream out = Files.newOutputStream(beside)) {
                        filler.fill(out);
                    }
                });
    }

    /** The same for writers that open the file themselves. */
    public static void writeNamed(Path asked, NamedFiller filler) throws IOException {
        Path file = foldwright.machine.file.WholeFile.place(asked);
        Files.createDirectories(file.toAbsolutePath().getParent());
        Path beside = foldwright.machine.file.WholeFile.beside(file);
        try {
            filler.fill(beside);
            foldwright.machine.file.WholeFile.move(beside, file);
        } finally {
            Files.deleteIfExists(beside);
        }
    }
}
