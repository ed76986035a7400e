// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine;

/**
 * Runs the commands that should start fast, so that the class archive written when it ends holds
 * what they load. The launcher calls it once after a build.
 */
public final class Rehearsal {
    private Rehearsal() {}

    /** Runs them on a machine file; a computer without OpenGL merely leaves out the drawing. */
    public static void main(String[] args) throws IOException {
        String machine = args[0];
        Path out = Files.createTempDirectory("foldwright");
        Path still = out.resolve("still.png");
        try {
            CommandLine line = Main.commandLine();
            line.execute("curve", machine, "--json");
            line.execute("watch", machine, "--size", "640x360", "--still", still.toString());
        } finally {
            Files.deleteIfExists(still);
            Files.delete(out);
        }
    }
}
