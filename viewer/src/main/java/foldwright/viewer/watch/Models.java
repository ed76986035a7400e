// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.watch;

import foldwright.lift.RiseCommand;
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
    private static final int MOST_SAMPLES = 8 * (SAMPLES - 1) + 1;
    private static final double MOST_TURNED = 0.4;
    private static final double SECONDS = 10;

    private Models() {}

    /** Writes the model. */
    public static void write(Machine machine, Results results, Stills.Wish wish, Path file)
            throws IOException {
        MachineScene scene = new MachineScene(machine);
        LiftShape shape = scene.shape();
        double[] heights = unfolding(scene, RiseCommand.unfolding(machine));
        double height =
                wish.height()
                        .in(
                                shape.flat(),
                                shape.top(),
                                results.worst(wish.question(), shape.flat()));
        SheetBuilder.Choice choice = SheetBuilder.Choice.of(wish.question(), height);
        GlbFile.write(
                scene,
                new GlbFile.Motion(heights, SECONDS, new SheetBuilder(scene).look(results, choice)),
                file);
    }

    /**
     * Heights at even times from flat to the top, so many that nothing turns by half a turn between
     * two of them: players turn the short way.
     */
    private static double[] unfolding(MachineScene scene, RiseCommand rise) {
        double[] out = new double[0];
        for (int samples = SAMPLES; samples <= MOST_SAMPLES; samples = 2 * samples - 1) {
            out = new double[samples];
            double turns = 0;
            double before = 0;
            for (int i = 0; i < samples; i++) {
                out[i] = rise.height(rise.end() * i / (samples - 1));
                scene.place(out[i]);
                double travel = scene.lift().footTravel();
                turns = Math.max(turns, Math.abs(travel - before) * scene.turnsPerTravel());
                before = travel;
            }
            if (turns < MOST_TURNED) {
                return out;
            }
        }
        return out;
    }
}
