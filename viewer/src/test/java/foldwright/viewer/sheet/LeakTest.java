// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.lwjgl.opengl.GL33C.*;

import foldwright.report.draw.Theme;
import foldwright.study.Question;
import foldwright.viewer.Headless;
import foldwright.viewer.gl.GlSurface;
import foldwright.viewer.render.MachineRenderer;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.session.Results;
import foldwright.viewer.session.SheetBuilder;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Opening and closing leaves nothing behind: live GL names are counted by asking for each. */
class LeakTest {
    private static final int NAMES = 160_000;
    private static final int TIMES = 200;

    private static int[] alive() {
        int[] count = new int[5];
        for (int i = 1; i < NAMES; i++) {
            count[0] += glIsTexture(i) ? 1 : 0;
            count[1] += glIsBuffer(i) ? 1 : 0;
            count[2] += glIsVertexArray(i) ? 1 : 0;
            count[3] += glIsFramebuffer(i) ? 1 : 0;
            count[4] += glIsProgram(i) || glIsShader(i) || glIsRenderbuffer(i) ? 1 : 0;
        }
        return count;
    }

    private static long heap() {
        System.gc();
        Runtime r = Runtime.getRuntime();
        return r.totalMemory() - r.freeMemory();
    }

    private static void draw(Studio studio, MachineScene scene) {
        studio.machine(scene);
        studio.size(640, 360, 1);
        SheetBuilder.Page page =
                new SheetBuilder(scene)
                        .page(
                                Results.NONE,
                                SheetBuilder.Choice.of(Question.FOLD, 0.1),
                                List.of(),
                                new SheetBuilder.Words("", Optional.empty(), "", Optional.empty()));
        Studio.Look look = Studio.Look.home(Theme.LIGHT).at(MachineRenderer.Quality.MOVING);
        Headless.draw(studio, page, look);
    }

    @Test
    void twoHundredMachinesOpenedAndClosed() {
        var machine = Headless.machine("van-bench");
        try (GlSurface surface = Headless.open()) {
            assertThat(surface.renderer()).isNotBlank();
            int[] bare = alive();
            try (Studio studio = new Studio()) {
                draw(studio, new MachineScene(machine));
                int[] before = alive();
                long heapBefore = heap();
                for (int i = 0; i < TIMES; i++) {
                    studio.machine(new MachineScene(machine));
                    studio.size(640, 360, 1);
                }
                draw(studio, new MachineScene(machine));
                assertThat(alive()).containsExactly(before);
                // A scene is some 3 MB; one kept each time would be 600 MB.
                assertThat(heap() - heapBefore).isLessThan(8_000_000);
            }
            assertThat(alive()).as(Arrays.toString(bare)).containsExactly(bare);
        }
    }
}
