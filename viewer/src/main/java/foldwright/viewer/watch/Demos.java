// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.watch;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The demo machines that come with the program: the folder {@code scenes} beside the launcher. */
public final class Demos {
    private static final String FIRST = "van-bench.json";

    private Demos() {}

    /** All demo machines, van bench first; empty when the folder is not there. */
    public static List<Path> all() {
        Path folder = Path.of(System.getProperty("foldwright.home", ".")).resolve("scenes");
        List<Path> out = new ArrayList<>();
        if (!Files.isDirectory(folder)) {
            return out;
        }
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, "*.json")) {
            files.forEach(out::add);
        } catch (IOException e) {
            return List.of();
        }
        out.sort(
                (a, b) ->
                        a.getFileName().toString().equals(FIRST)
                                ? -1
                                : b.getFileName().toString().equals(FIRST) ? 1 : a.compareTo(b));
        return out;
    }
}
