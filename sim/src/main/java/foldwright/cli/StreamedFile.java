// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import foldwright.machine.file.WholeFile;
import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * A text file that is written while a run goes on and appears only when it is complete. Closing it
 * without {@link #keep}, or stopping the program, leaves nothing.
 */
final class StreamedFile implements AutoCloseable {
    private final Path file;
    private final Path beside;
    private final BufferedWriter out;
    private final Thread sweep;

    StreamedFile(Path asked) {
        try {
            file = Outputs.place(asked);
            beside = WholeFile.beside(file);
            out =
                    Files.newBufferedWriter(
                            beside,
                            StandardCharsets.UTF_8,
                            StandardOpenOption.CREATE_NEW,
                            StandardOpenOption.WRITE);
        } catch (IOException e) {
            throw new BadInput(asked + ": cannot be written: " + Outputs.reason(e));
        }
        sweep = new Thread(() -> beside.toFile().delete());
        Runtime.getRuntime().addShutdownHook(sweep);
    }

    /** Adds text. */
    void write(String text) {
        try {
            out.write(text);
        } catch (IOException e) {
            throw new BadInput(file + ": cannot be written: " + Outputs.reason(e));
        }
    }

    /** Moves the complete file into its place. */
    void keep() {
        try {
            out.close();
            WholeFile.move(beside, file);
        } catch (IOException e) {
            throw new BadInput(file + ": cannot be written: " + Outputs.reason(e));
        }
    }

    @Override
    public void close() {
        try {
            out.close();
            Files.deleteIfExists(beside);
        } catch (IOException e) {
            beside.toFile().deleteOnExit();
        }
        try {
            Runtime.getRuntime().removeShutdownHook(sweep);
        } catch (IllegalStateException e) {
            // Already stopping; the hook does the same.
            return;
        }
    }
}
