// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.window;

import java.nio.file.Path;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;

/** A desk that opens its first file on another thread; nobody else may use it meanwhile. */
final class Reading {
    private final FutureTask<Desk> task;

    /** Begins to read. */
    Reading(Desk desk, Path file) {
        task =
                new FutureTask<>(
                        () -> {
                            desk.open(file);
                            return desk;
                        });
        Thread thread = new Thread(task, "reading");
        thread.setDaemon(true);
        thread.start();
    }

    /** The desk once the file lies on it. */
    Desk finished() throws CannotOpenException {
        try {
            return task.get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("stopped while reading", e);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof CannotOpenException bad) {
                throw bad;
            }
            throw e.getCause() instanceof RuntimeException own
                    ? own
                    : new IllegalStateException(e.getCause());
        }
    }
}
