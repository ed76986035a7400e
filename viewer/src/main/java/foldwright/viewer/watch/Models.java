// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.watch;

import foldwright.machine.Machine;
import foldwright.machine.drive.Rise;
import foldwright.machine.drive.SteadyRise;
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
        Course course = unfolding(machine, shape);
        double[] heights = new double[SAMPLES];
        for (int i = 0; i < SAMPLES; i++) {
            heights[i] = course.height(course.duration() * i / (SAMPLES - 1));
        }
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

    /** The height over the time of the real motion. */
    interface Course {
        /** How long the real motion takes [s]. */
        double duration();

        /** Pivot height at a time since the start [m]. */
        double height(double time);
    }

    /**
     * Rising at the asked speed with even acceleration at both ends; other laws at an even speed
     * over the whole time.
     */
    static Course unfolding(Machine machine, LiftShape shape) {
        Rise rise = machine.drive().rise();
        double flat = shape.flat();
        double way = shape.top() - flat;
        double speed = rise instanceof SteadyRise steady ? steady.speed() : way / 60;
        double acceleration =
                rise instanceof SteadyRise steady ? steady.acceleration() : 10 * speed;
        double ramp = Math.min(speed / acceleration, Math.sqrt(way / acceleration));
        double top = acceleration * ramp;
        double total = ramp + way / top;
        return new Course() {
            @Override
            public double duration() {
                return total;
            }

            @Override
            public double height(double t) {
                double gone = Math.max(0, Math.min(t, total));
                if (gone < ramp) {
                    return flat + acceleration * gone * gone / 2;
                }
                double left = total - gone;
                if (left < ramp) {
                    return flat + way - acceleration * left * left / 2;
                }
                return flat + top * (gone - ramp / 2);
            }
        };
    }
}
