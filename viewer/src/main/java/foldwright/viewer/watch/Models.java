// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.watch;

import foldwright.machine.Machine;
import foldwright.viewer.glb.GlbFile;
import foldwright.viewer.scene.LiftShape;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.session.Results;
import foldwright.viewer.session.SheetBuilder;
import java.io.IOException;
import java.nio.file.Path;

/**
 * Writes a machine as an animated model, its loads at the wished height as colours. Needs no
 * OpenGL.
 */
public final class Models {
    private static final int SAMPLES = 251;
    private static final double SECONDS = 10;

    private Models() {}

    /** Writes the model. */
    public static void write(Machine machine, Results results, Stills.Wish wish, Path file)
            throws IOException {
        MachineScene scene = new MachineScene(machine);
        LiftShape shape = scene.shape();
        Films.Course course = Films.unfolding(machine, shape);
        double[] heights = new double[SAMPLES];
        for (int i = 0; i < SAMPLES; i++) {
            heights[i] = course.height(course.duration() * i / (SAMPLES - 1));
        }
        double height = wish.height().in(shape.flat(), shape.top(), results.worst(wish.question()));
        SheetBuilder.Choice choice = SheetBuilder.Choice.of(wish.question(), height);
        GlbFile.write(
                scene,
                new GlbFile.Motion(heights, SECONDS, new SheetBuilder(scene).look(results, choice)),
                file);
    }
}
