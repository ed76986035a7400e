// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import foldwright.report.draw.Theme;
import foldwright.study.Question;
import foldwright.viewer.Headless;
import foldwright.viewer.Sample;
import foldwright.viewer.gl.GlSurface;
import foldwright.viewer.picture.Pixels;
import foldwright.viewer.render.View;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.session.Results;
import foldwright.viewer.session.SheetBuilder;
import foldwright.viewer.text.TextBox;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is kept from picture to picture must not show: the same sheet as one drawn afresh. */
class KeptTest {
    @Test
    void isTheSameAsDrawnAfresh() {
        for (int[] size : new int[][] {{1280, 720}, {640, 360}, {854, 480}}) {
            assertSame(size);
        }
    }

    private static void assertSame(int[] size) {
        try (GlSurface surface = Headless.open();
                Studio used = new Studio();
                Studio fresh = new Studio()) {
            assertThat(surface.renderer()).isNotBlank();
            MachineScene scene = open(used, size);
            Results results = Sample.results(scene.machine());
            Studio.Look home = Studio.Look.home(Theme.LIGHT);
            draw(used, results, 0.20, Question.STAY, home);
            draw(
                    used,
                    results,
                    0.20,
                    Question.FOLD,
                    new Studio.Look(Theme.DARK, View.Stance.home(), 3, 90, 60, home.quality()));
            draw(used, results, 0.06, Question.FOLD, home);
            draw(used, results, 0.17, Question.FOLD, home);
            draw(used, results, 0.11, Question.FOLD, home);
            open(fresh, size);
            draw(fresh, results, 0.11, Question.FOLD, home);

            assertThat(different(used, fresh, size)).as("pixels at " + size[0]).isZero();
            assertThat(sorted(used)).isEqualTo(sorted(fresh));
            for (Hits.Kind kind : Hits.Kind.values()) {
                assertThat(used.hits().of(kind, 0)).isEqualTo(fresh.hits().of(kind, 0));
            }
        }
    }

    private static MachineScene open(Studio studio, int[] size) {
        studio.machine(new MachineScene(Headless.machine("van-bench")));
        studio.size(size[0], size[1], 1);
        return studio.scene();
    }

    private static void draw(
            Studio studio, Results results, double height, Question question, Studio.Look look) {
        SheetBuilder.Page page =
                new SheetBuilder(studio.scene())
                        .page(
                                results,
                                SheetBuilder.Choice.of(question, height),
                                Sample.rules(),
                                new SheetBuilder.Words(
                                        "as in the file", Optional.empty(), "", Optional.empty()));
        Headless.draw(studio, page, look);
    }

    private static List<TextBox> sorted(Studio studio) {
        return studio.boxes().stream()
                .sorted(
                        Comparator.comparing(TextBox::y)
                                .thenComparing(TextBox::x)
                                .thenComparing(TextBox::text))
                .toList();
    }

    private static int different(Studio a, Studio b, int[] size) {
        int count = 0;
        try (Pixels p = a.pixels();
                Pixels q = b.pixels()) {
            for (int y = 0; y < size[1]; y++) {
                for (int x = 0; x < size[0]; x++) {
                    count += p.rgb(x, y) == q.rgb(x, y) ? 0 : 1;
                }
            }
        }
        return count;
    }
}
