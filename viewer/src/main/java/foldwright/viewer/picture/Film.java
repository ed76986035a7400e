// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.picture;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Locale;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.atomic.AtomicReference;

/**
 * Writes a film: pictures are drawn on the calling thread and packed on a second one, with two
 * buffers between them.
 */
public final class Film {
    /** Draws picture number {@code index} into a buffer. */
    public interface Source {
        void draw(int index, Pixels into);
    }

    /**
     * What the film is like.
     *
     * @param width even [px]
     * @param height even [px]
     */
    public record Form(int width, int height, int framesPerSecond, int frames) {
        public Form {
            if (width % 2 != 0 || height % 2 != 0) {
                throw new IllegalArgumentException(
                        "a film needs even width and height, found " + width + "x" + height);
            }
        }
    }

    private Film() {}

    /** Whether the name ends like a film this can write. */
    public static boolean canWrite(Path file) {
        String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
        return name.endsWith(".mp4") || name.endsWith(".gif");
    }

    /** Writes the film; the file is complete or absent. */
    public static void write(Path file, Form form, Source source) throws IOException {
        WholeFile.writeNamed(file, beside -> fill(file, beside, form, source));
    }

    private static FilmFile open(Path file, Path beside, Form form) throws IOException {
        return file.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".gif")
                ? new GifFile(beside, form.width, form.height, form.framesPerSecond)
                : new Mp4File(beside, form.width, form.height, form.framesPerSecond);
    }

    private static void fill(Path file, Path beside, Form form, Source source) throws IOException {
        try (FilmFile film = open(file, beside, form);
                Pixels first = new Pixels(form.width, form.height);
                Pixels second = new Pixels(form.width, form.height)) {
            BlockingQueue<Pixels> free = new ArrayBlockingQueue<>(2);
            BlockingQueue<Pixels> drawn = new ArrayBlockingQueue<>(2);
            free.add(first);
            free.add(second);
            AtomicReference<Exception> failure = new AtomicReference<>();
            Thread packer = new Thread(() -> pack(film, form.frames, drawn, free, failure), "film");
            packer.start();
            for (int i = 0; i < form.frames && failure.get() == null; i++) {
                Pixels buffer = free.take();
                source.draw(i, buffer);
                drawn.put(buffer);
            }
            packer.join();
            if (failure.get() != null) {
                throw new IOException(
                        "the film could not be written: " + failure.get(), failure.get());
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("stopped while writing the film", e);
        }
    }

    private static void pack(
            FilmFile film,
            int frames,
            BlockingQueue<Pixels> drawn,
            BlockingQueue<Pixels> free,
            AtomicReference<Exception> failure) {
        try {
            for (int i = 0; i < frames; i++) {
                Pixels pixels = drawn.take();
                film.add(pixels);
                free.put(pixels);
            }
        } catch (IOException | RuntimeException | InterruptedException e) {
            failure.set(e);
            // The drawing side may wait for a buffer; it then sees the failure.
            drawn.drainTo(free);
        }
    }
}
