// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.window;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Properties;

/**
 * What the window remembers between starts: its size, theme and text size. Failing to read or write
 * it hurts nothing.
 */
final class Memory {
    private final Path file;
    private final Properties values = new Properties();

    Memory(Path file) {
        this.file = file;
        if (Files.isReadable(file)) {
            try (InputStream in = Files.newInputStream(file)) {
                values.load(in);
            } catch (IOException | IllegalArgumentException e) {
                values.clear();
            }
        }
    }

    /** The usual place: the user's configuration folder. */
    static Memory usual() {
        String chosen = System.getenv("XDG_CONFIG_HOME");
        Path folder =
                chosen != null && !chosen.isEmpty()
                        ? Path.of(chosen)
                        : Path.of(System.getProperty("user.home", "."), ".config");
        return new Memory(folder.resolve("foldwright").resolve("window.properties"));
    }

    int number(String key, int orElse, int least, int most) {
        try {
            return Math.max(least, Math.min(most, Integer.parseInt(values.getProperty(key, ""))));
        } catch (NumberFormatException e) {
            return orElse;
        }
    }

    String word(String key, String orElse) {
        return values.getProperty(key, orElse);
    }

    void set(String key, Object value) {
        values.setProperty(key, String.valueOf(value));
    }

    void save() {
        try {
            Files.createDirectories(file.getParent());
            try (OutputStream out = Files.newOutputStream(file)) {
                values.store(out, "Foldwright window");
            }
        } catch (IOException e) {
            // A window that forgets its size is no reason to disturb anyone.
            values.clear();
        }
    }
}
