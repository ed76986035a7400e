// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer;

import foldwright.viewer.gl.NoGraphicsException;
import foldwright.viewer.session.LiftEngine;
import foldwright.viewer.watch.Demos;
import foldwright.viewer.window.CannotOpenException;
import foldwright.viewer.window.WindowApp;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Runs the commands that should start fast, so that the class archive written after it holds what
 * they load. The launcher calls it once after a build.
 */
public final class Rehearsal {
    private Rehearsal() {}

    /** Runs them on a machine file; a computer without OpenGL merely leaves out the drawing. */
    public static void main(String[] args) throws IOException, CannotOpenException {
        String machine = args[0];
        Path out = Files.createTempDirectory("foldwright");
        Path still = out.resolve("still.png");
        Path memory = out.resolve("window.properties");
        try {
            Main.commandLine("curve").execute("curve", machine, "--json");
            Main.commandLine("curve").execute("curve", machine);
            Main.commandLine("watch")
                    .execute("watch", machine, "--size", "1280x720", "--still", still.toString());
            WindowApp.rehearse(Path.of(machine), new LiftEngine(), Demos.all(), memory);
        } catch (NoGraphicsException e) {
            System.err.println("foldwright: " + e.getMessage());
        } finally {
            Files.deleteIfExists(still);
            Files.deleteIfExists(memory);
            Files.delete(out);
        }
    }
}
