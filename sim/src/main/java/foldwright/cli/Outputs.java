// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import foldwright.machine.file.WholeFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Files that appear complete or not at all: contents are gathered first, written beside their
 * places and moved there only when all of them could be written. Stopping the program removes what
 * lies beside.
 */
final class Outputs {
    private final Map<Path, byte[]> waiting = new LinkedHashMap<>();

    /** Adds a text file. */
    void add(Path file, String text) {
        waiting.put(file, text.getBytes(StandardCharsets.UTF_8));
    }

    /** Refuses places that cannot be written, before any work is done for them. */
    static void check(Path file) {
        if (Files.isDirectory(file)) {
            throw new BadInput(file + ": is a folder; a file name is needed");
        }
        if (WholeFile.occupied(file)) {
            throw new BadInput(
                    file + ": is a device or a pipe; allowed: the name of an ordinary file");
        }
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw new BadInput(file + ": there is no folder " + folder);
        }
        if (!Files.isWritable(Files.exists(file) ? file : folder)) {
            throw new BadInput(file + ": may not be written");
        }
    }

    /** Makes the folder if there is none, and checks that it can be written. */
    static void checkFolder(Path folder) {
        Path at = folder.toAbsolutePath();
        while (at != null && !Files.exists(at)) {
            at = at.getParent();
        }
        if (at != null && !Files.isDirectory(at)) {
            throw new BadInput(
                    folder
                            + ": "
                            + (at.equals(folder.toAbsolutePath()) ? "" : at + " ")
                            + "is a file; the name of a folder is needed");
        }
        if (at == null || !Files.isWritable(at)) {
            throw new BadInput(folder + ": may not be written (" + at + ")");
        }
    }

    /**
     * Where a file really is: a link stays and what it points to is replaced. Moving a file onto a
     * device would put a plain file in its place, so that is refused.
     */
    static Path place(Path file) throws IOException {
        if (Files.exists(file)) {
            check(file);
        }
        return WholeFile.place(file);
    }

    /** Writes all files; either all are in place afterwards or none was touched. */
    void write() {
        Map<Path, Path> beside = new LinkedHashMap<>();
        Thread sweep = new Thread(() -> beside.values().forEach(Outputs::remove));
        Runtime.getRuntime().addShutdownHook(sweep);
        Path now = null;
        try {
            for (Map.Entry<Path, byte[]> entry : waiting.entrySet()) {
                now = place(entry.getKey());
                Files.createDirectories(now.toAbsolutePath().getParent());
                Path temporary = WholeFile.beside(now);
                beside.put(now, temporary);
                Files.write(
                        temporary,
                        entry.getValue(),
                        StandardOpenOption.CREATE_NEW,
                        StandardOpenOption.WRITE);
            }
            for (Map.Entry<Path, Path> entry : beside.entrySet()) {
                now = entry.getKey();
                WholeFile.move(entry.getValue(), now);
            }
        } catch (IOException e) {
            beside.values().forEach(Outputs::remove);
            throw new BadInput(now + ": cannot be written: " + reason(e));
        } finally {
            forget(sweep);
        }
        waiting.clear();
    }

    private static void remove(Path file) {
        try {
            Files.deleteIfExists(file);
        } catch (IOException e) {
            file.toFile().deleteOnExit();
        }
    }

    private static void forget(Thread sweep) {
        try {
            Runtime.getRuntime().removeShutdownHook(sweep);
        } catch (IllegalStateException e) {
            // Already stopping: the hook runs and finds nothing left, or removes what is.
            return;
        }
    }

    /** A cause in words: the class name says more than the message of most of these. */
    static String reason(IOException e) {
        if (e instanceof NoSuchFileException) {
            return "no such file or folder";
        }
        if (e instanceof java.nio.file.AccessDeniedException) {
            return "access denied";
        }
        return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
    }
}
