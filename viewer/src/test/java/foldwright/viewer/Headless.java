// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer;

import foldwright.machine.Machine;
import foldwright.machine.file.BadMachineFile;
import foldwright.machine.file.MachineFile;
import foldwright.viewer.gl.GlSurface;
import foldwright.viewer.gl.NoGraphicsException;
import foldwright.viewer.session.SheetBuilder;
import foldwright.viewer.sheet.Studio;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Assumptions;

/** What tests of pictures need: a headless context, or a reason to skip; and the demo machines. */
public final class Headless {
    private Headless() {}

    /** Names of the demo machines: lifts that carry a gantry. */
    public static List<String> scenes() {
        return List.of(
                "van-bench",
                "van-bench-binds",
                "class-plotter",
                "class-plotter-skews",
                "field-printer");
    }

    /**
     * A context; where there is none the test is skipped, or fails when FOLDWRIGHT_REQUIRE_GL is 1.
     */
    public static GlSurface open() {
        try {
            return GlSurface.headless();
        } catch (NoGraphicsException e) {
            if ("1".equals(System.getenv("FOLDWRIGHT_REQUIRE_GL"))) {
                throw e;
            }
            Assumptions.abort(e.getMessage());
            throw e;
        }
    }

    /** A studio in a context of its own; both go together. */
    public record Room(GlSurface surface, Studio studio) implements AutoCloseable {
        @Override
        public void close() {
            studio.close();
            surface.close();
        }
    }

    /** Opens a studio where {@link #open} finds a context. */
    public static Room studio() {
        return new Room(open(), new Studio());
    }

    /** Draws a page as a whole, nothing laid over it. */
    public static void draw(Studio studio, SheetBuilder.Page page, Studio.Look look) {
        studio.drawMachine(page.moment(), look);
        studio.drawSheet(page.model(), page.marks(), look, Studio.Overlay.NONE);
    }

    /** The file of a demo machine. */
    public static Path scene(String name) {
        Path here = Path.of("scenes", name + ".json");
        return Files.exists(here) ? here : Path.of("..", "scenes", name + ".json");
    }

    /** A demo machine. */
    public static Machine machine(String name) {
        try {
            return MachineFile.read(scene(name)).machine();
        } catch (BadMachineFile e) {
            throw new IllegalStateException(e);
        }
    }
}
