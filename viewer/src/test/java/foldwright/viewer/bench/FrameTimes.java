// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.bench;

import foldwright.report.draw.Theme;
import foldwright.study.Question;
import foldwright.viewer.Headless;
import foldwright.viewer.Sample;
import foldwright.viewer.gl.GlSurface;
import foldwright.viewer.gl.Program;
import foldwright.viewer.gl.Target;
import foldwright.viewer.render.MachineRenderer;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.session.Results;
import foldwright.viewer.session.SheetBuilder;
import foldwright.viewer.sheet.SheetModel;
import foldwright.viewer.sheet.Studio;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.lwjgl.opengl.GL33C;

/**
 * Times frames of the van bench and prints them beside a reference measured in the same run:
 * filling the same picture twenty times through a trivial shader, which is what the renderer
 * underneath can do here and now. Started by {@code tools/frame-times}; no test, since times on
 * shared machines scatter.
 */
public final class FrameTimes {
    private static final int ROUNDS = 15;
    private static final int SWEEP = 100;
    private static final List<SheetModel.Rule> RULES = Sample.rules();

    private FrameTimes() {}

    public static void main(String[] args) {
        try (GlSurface surface = GlSurface.headless();
                Studio studio = new Studio()) {
            System.out.println(surface.renderer());
            System.out.println(
                    "ms, median of " + ROUNDS + "; reference: 20 fills of the picture, no samples");
            System.out.printf(
                    Locale.ROOT,
                    "%-10s %9s %9s %9s %9s %9s %12s%n",
                    "size",
                    "reference",
                    "moving",
                    "rest",
                    "sheet",
                    "java",
                    "bytes a frame");
            studio.machine(new MachineScene(Headless.machine("van-bench")));
            for (int[] size : new int[][] {{1280, 720}, {1920, 1080}}) {
                one(studio, size[0], size[1]);
            }
        }
    }

    private static void one(Studio studio, int w, int h) {
        studio.size(w, h, 1);
        Results results = Sample.results(studio.scene().machine());
        SheetBuilder builder = new SheetBuilder(studio.scene());
        double[] heights = new double[ROUNDS];
        for (int i = 0; i < ROUNDS; i++) {
            heights[i] = 0.05 + 0.01 * i;
        }
        double reference = reference(w, h);
        double moving =
                median(
                        i ->
                                frame(
                                        studio,
                                        builder,
                                        results,
                                        heights[i],
                                        MachineRenderer.Quality.MOVING));
        double rest =
                median(
                        i ->
                                frame(
                                        studio,
                                        builder,
                                        results,
                                        heights[i],
                                        MachineRenderer.Quality.REST));
        var page = page(builder, results, 0.1);
        Studio.Look look = Studio.Look.home(Theme.LIGHT);
        double sheet =
                median(
                        i -> {
                            studio.drawSheet(page.model(), page.marks(), look, Studio.Overlay.NONE);
                            GL33C.glFinish();
                        });
        double java =
                median(
                        i -> {
                            studio.scene().place(heights[i]);
                            studio.scene()
                                    .write(page(builder, results, heights[i]).moment().look());
                        });
        long bytes =
                allocated(
                        i ->
                                frame(
                                        studio,
                                        builder,
                                        results,
                                        0.05 + 0.002 * i,
                                        MachineRenderer.Quality.MOVING));
        System.out.printf(
                Locale.ROOT,
                "%-10s %9.1f %9.1f %9.1f %9.1f %9.2f %12d%n",
                w + "x" + h,
                reference,
                moving,
                rest,
                sheet,
                java,
                bytes);
    }

    private static SheetBuilder.Page page(SheetBuilder builder, Results results, double height) {
        return builder.page(
                results,
                SheetBuilder.Choice.of(Question.FOLD, height),
                RULES,
                new SheetBuilder.Words(
                        "as in the file", Optional.empty(), "18.8 s of 60 s", Optional.empty()));
    }

    private static void frame(
            Studio studio,
            SheetBuilder builder,
            Results results,
            double height,
            MachineRenderer.Quality quality) {
        var page = page(builder, results, height);
        Studio.Look look = Studio.Look.home(Theme.LIGHT).at(quality);
        Headless.draw(studio, page, look);
        GL33C.glFinish();
    }

    private interface Round {
        void run(int i);
    }

    private static double median(Round round) {
        for (int i = 0; i < 4; i++) {
            round.run(i);
        }
        double[] ms = new double[ROUNDS];
        for (int i = 0; i < ROUNDS; i++) {
            long t = System.nanoTime();
            round.run(i);
            ms[i] = (System.nanoTime() - t) / 1e6;
        }
        Arrays.sort(ms);
        return ms[ROUNDS / 2];
    }

    private static double reference(int w, int h) {
        try (Target target = new Target(Target.Form.GREY, w, h);
                Target source = new Target(Target.Form.GREY, 16, 16);
                Program program = new Program("whole", "table")) {
            int array = GL33C.glGenVertexArrays();
            GL33C.glBindVertexArray(array);
            double ms =
                    median(
                            i -> {
                                target.bind();
                                GL33C.glDisable(GL33C.GL_DEPTH_TEST);
                                GL33C.glDisable(GL33C.GL_BLEND);
                                GL33C.glBindVertexArray(array);
                                program.use();
                                program.set("picture", 0);
                                source.bindTexture(0);
                                for (int k = 0; k < 20; k++) {
                                    GL33C.glDrawArrays(GL33C.GL_TRIANGLES, 0, 3);
                                }
                                GL33C.glFinish();
                            });
            GL33C.glDeleteVertexArrays(array);
            return ms;
        }
    }

    /** Mean of a sweep of the deck, after two sweeps that warm up. */
    private static long allocated(Round round) {
        var threads = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        long me = Thread.currentThread().getId();
        long seen = 0;
        for (int sweep = 0; sweep < 3; sweep++) {
            long before = threads.getThreadAllocatedBytes(me);
            for (int i = 0; i < SWEEP; i++) {
                round.run(i);
            }
            seen = threads.getThreadAllocatedBytes(me) - before;
        }
        return seen / SWEEP;
    }
}
