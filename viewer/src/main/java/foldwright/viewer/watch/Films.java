// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.watch;

import foldwright.machine.Machine;
import foldwright.machine.drive.Rise;
import foldwright.machine.drive.SteadyRise;
import foldwright.study.Numerals;
import foldwright.viewer.gl.GlSurface;
import foldwright.viewer.picture.Film;
import foldwright.viewer.scene.LiftShape;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.session.Results;
import foldwright.viewer.session.SheetBuilder;
import foldwright.viewer.sheet.Studio;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;

/**
 * Writes a film of the machine unfolding, the same sheet as in stills with a caption instead of the
 * rules.
 */
public final class Films {
    private static final int PER_SECOND = 25;
    private static final int SECONDS = 10;

    /** Pictures in a film. */
    static final int FRAMES = PER_SECOND * SECONDS;

    /** Share of the film spent standing still, at its start and at its end. */
    private static final double REST = 0.06;

    private Films() {}

    /** The height over the time of the real motion. */
    interface Course {
        /** How long the real motion takes [s]. */
        double duration();

        /** Pivot height at a time since the start [m]. */
        double height(double time);

        /** What is seen. */
        String words();
    }

    /** Draws and writes the film; {@code progress} hears the pictures finished. */
    public static void write(
            Machine machine, Results results, Stills.Wish wish, Path file, IntConsumer progress)
            throws IOException {
        try (GlSurface surface = GlSurface.headless();
                Studio studio = new Studio()) {
            assert surface.kind() == GlSurface.Kind.HEADLESS;
            studio.machine(new MachineScene(machine));
            studio.size(wish.size().width(), wish.size().height(), 1);
            Course course = unfolding(machine, studio.scene().shape());
            Film.write(
                    file,
                    new Film.Form(wish.size().width(), wish.size().height(), PER_SECOND, FRAMES),
                    (index, into) -> {
                        frame(studio, results, wish, course, (double) index / (FRAMES - 1));
                        studio.read(into);
                        progress.accept(index + 1);
                    });
        }
    }

    private static void frame(
            Studio studio, Results results, Stills.Wish wish, Course course, double share) {
        double run = Math.max(0, Math.min(1, (share - REST) / (1 - 2 * REST)));
        double time = run * course.duration();
        double height = course.height(time);
        String clock =
                Numerals.fixed(time, 1) + " s of " + Numerals.fixed(course.duration(), 0) + " s";
        SheetBuilder.Page page =
                new SheetBuilder(studio.scene())
                        .page(
                                results,
                                SheetBuilder.Choice.of(wish.question(), height),
                                List.of(),
                                new SheetBuilder.Words(
                                        "as in the file",
                                        Optional.empty(),
                                        clock,
                                        Optional.of(course.words())));
        Studio.Look look = Studio.Look.home(wish.theme());
        studio.drawMachine(page.moment(), look);
        studio.drawSheet(page.model(), page.marks(), look, Studio.Overlay.NONE);
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
        double faster = total / (SECONDS * (1 - 2 * REST));
        String words =
                "Unfolding at "
                        + Numerals.number(speed * 1000)
                        + "\u00a0mm/s"
                        + (Math.abs(faster - 1) < 0.02
                                ? ""
                                : ", shown "
                                        + Numerals.number(Math.max(faster, 1 / faster))
                                        + (faster > 1 ? "× faster" : "× slower"));
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

            @Override
            public String words() {
                return words;
            }
        };
    }
}
