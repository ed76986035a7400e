// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import foldwright.report.draw.Theme;
import foldwright.study.Question;
import foldwright.viewer.Headless;
import foldwright.viewer.Sample;
import foldwright.viewer.gl.GlSurface;
import foldwright.viewer.render.MachineRenderer;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.session.Results;
import foldwright.viewer.session.SheetBuilder;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * What the drawing thread allocates while the deck moves through its whole travel with ink, needles
 * and labels on: the mean of a sweep, frames in which a kept area is painted anew included. The
 * middle of several sweeps counts, so that neither the first run of the code nor the compiler's
 * threads decide.
 */
class AllocationTest {
    private static final int SWEEPS = 4;
    private static final int FRAMES = 60;

    @Test
    void movingFramesAllocateLittle() {
        var threads = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        long me = Thread.currentThread().getId();
        try (GlSurface surface = Headless.open();
                Studio studio = new Studio()) {
            assertThat(surface.renderer()).isNotBlank();
            studio.machine(new MachineScene(Headless.machine("van-bench")));
            Results results = Sample.results(studio.scene().machine());
            SheetBuilder builder = new SheetBuilder(studio.scene());
            List<SheetModel.Rule> rules = Sample.rules();
            long[] mean = new long[SWEEPS];
            for (int sweep = 0; sweep < SWEEPS; sweep++) {
                long before = threads.getThreadAllocatedBytes(me);
                for (int i = 0; i < FRAMES; i++) {
                    frame(studio, builder, results, rules, (double) i / FRAMES);
                }
                mean[sweep] = (threads.getThreadAllocatedBytes(me) - before) / FRAMES;
            }
            Arrays.sort(mean);
            assertThat(mean[SWEEPS / 2 - 1]).isLessThanOrEqualTo(3300);
        }
    }

    private static void frame(
            Studio studio,
            SheetBuilder builder,
            Results results,
            List<SheetModel.Rule> rules,
            double share) {
        studio.size(1280, 720, 1);
        var shape = studio.scene().shape();
        double height = shape.flat() + share * (shape.top() - shape.flat());
        SheetBuilder.Page page =
                builder.page(
                        results,
                        SheetBuilder.Choice.of(Question.FOLD, height),
                        rules,
                        new SheetBuilder.Words(
                                "as in the file",
                                Optional.empty(),
                                "18.8 s of 60 s",
                                Optional.empty()));
        Studio.Look look = Studio.Look.home(Theme.LIGHT).at(MachineRenderer.Quality.MOVING);
        Headless.draw(studio, page, look);
    }
}
