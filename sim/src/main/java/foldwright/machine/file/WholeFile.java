// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.concurrent.ThreadLocalRandom;

/** Writes files that are complete or absent: beside their place first, then moved into it. */
public final class WholeFile {
    private WholeFile() {}

    /**
     * Writes a text as UTF-8, replacing a file of that name.
     *
     * @throws IOException if it cannot be written; then nothing has changed
     */
    public static void write(Path file, String text) throws IOException {
        write(file, text.getBytes(StandardCharsets.UTF_8));
    }

    /**
     * Writes bytes, replacing a file of that name.
     *
     * @throws IOException if they cannot be written; then nothing has changed
     */
    public static void write(Path asked, byte[] bytes) throws IOException {
        Path file = place(asked);
        Path beside = beside(file, bytes);
        try {
            move(beside, file);
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    /** Moves a complete file into its place at one blow, where the file system can. */
    public static void move(Path beside, Path file) throws IOException {
        try {
            Files.move(
                    beside,
                    file,
                    StandardCopyOption.ATOMIC_MOVE,
                    StandardCopyOption.REPLACE_EXISTING);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /** Whether a folder, a device or a pipe stands there, which no file may replace. */
    public static boolean occupied(Path file) {
        return Files.exists(file) && !Files.isRegularFile(file);
    }

    /**
     * Writes a text as UTF-8 to a file that must not exist yet.
     *
     * @throws FileAlreadyExistsException if it exists
     * @throws IOException if it cannot be written; then nothing has changed
     */
    public static void writeNew(Path file, String text) throws IOException {
        if (Files.exists(file)) {
            throw new FileAlreadyExistsException(file.toString());
        }
        Path beside = beside(file, text.getBytes(StandardCharsets.UTF_8));
        try {
            Files.move(beside, file); // refuses where a file has appeared meanwhile
        } finally {
            Files.deleteIfExists(beside);
        }
    }

    /**
     * Where a file really is: a link stays and what it points to is replaced.
     *
     * @throws IOException if something stands there that is no ordinary file: moving a file onto a
     *     device or a pipe would put a plain file in its place
     */
    public static Path place(Path file) throws IOException {
        if (occupied(file)) {
            throw new IOException(
                    file + " is no ordinary file; allowed: the name of an ordinary file");
        }
        return Files.exists(file) ? file.toRealPath() : file;
    }

    /**
     * A new name in the same folder to write a file under until it is complete. Not a temporary
     * file of the platform: only its owner could read that one.
     */
    public static Path beside(Path file) {
        String suffix = Long.toString(ThreadLocalRandom.current().nextLong() >>> 1, 36);
        return file.resolveSibling("." + file.getFileName() + "." + suffix + ".part");
    }

    private static Path beside(Path file, byte[] bytes) throws IOException {
        Path beside = beside(file);
        try {
            return Files.write(
                    beside, bytes, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        } catch (IOException e) {
            Files.deleteIfExists(beside);
            throw e;
        }
    }
}
