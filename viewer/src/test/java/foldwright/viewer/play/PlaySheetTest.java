// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.play;

import static org.assertj.core.api.Assertions.assertThat;

import foldwright.machine.file.MachineFile;
import foldwright.report.draw.Theme;
import foldwright.run.RunKind;
import foldwright.study.Question;
import foldwright.viewer.Headless;
import foldwright.viewer.Sample;
import foldwright.viewer.StudioTest;
import foldwright.viewer.Texts;
import foldwright.viewer.render.MachineRenderer;
import foldwright.viewer.render.View;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.session.Results;
import foldwright.viewer.session.SheetBuilder;
import foldwright.viewer.sheet.Hits;
import foldwright.viewer.sheet.Playing;
import foldwright.viewer.sheet.Studio;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Sheets of runs: no text covers another, and everything can be taken hold of. */
class PlaySheetTest extends StudioTest {
    private static final int[][] SIZES = {{1280, 720}, {1600, 900}, {1920, 1080}, {3840, 2160}};

    private static Reel reel(String scene, RunKind kind) throws Exception {
        MachineFile file = MachineFile.read(Headless.scene(scene));
        studio.machine(new MachineScene(file.machine()));
        return new Reel(RunMaker.run(file, kind, Optional.empty()));
    }

    private static void draw(Reel reel, Question question, Playing.Controls controls) {
        Results results = Sample.results(studio.scene().machine());
        double height = reel.height(studio.scene().shape().top());
        SheetBuilder.Page page =
                new SheetBuilder(studio.scene())
                        .page(
                                results,
                                SheetBuilder.Choice.of(question, height),
                                Sample.rules(),
                                new SheetBuilder.Words(
                                        "as in the file", Optional.empty(), "", Optional.empty()));
        page = PlayPage.live(reel, controls, reel.fitting()).over(page, results, studio.scene());
        View.Stance stance = reel.alongPath() ? View.Stance.above() : View.Stance.home();
        Studio.Look look =
                new Studio.Look(Theme.LIGHT, stance, 1, 0, 0, MachineRenderer.Quality.MOVING);
        Headless.draw(studio, page, look);
    }

    @Test
    void noTextCoversAnother() throws Exception {
        List<String> covered = new ArrayList<>();
        for (String scene : List.of("class-plotter-skews", "van-bench")) {
            Reel replay = reel(scene, RunKind.REPLAY);
            for (int[] size : SIZES) {
                studio.size(size[0], size[1], 1);
                for (double share : new double[] {0, 0.21, 0.63, 1}) {
                    replay.player().seek(share * replay.run().table().end());
                    draw(replay, Question.SKEW, Playing.Controls.STANDING);
                    Texts.overlaps(studio, scene + " replay " + size[0] + " at " + share, covered);
                }
            }
        }
        for (String scene : List.of("van-bench", "van-bench-binds")) {
            Reel fold = reel(scene, RunKind.UNFOLD);
            for (int[] size : SIZES) {
                studio.size(size[0], size[1], 1);
                for (double share : new double[] {0, 0.4, 1}) {
                    fold.player().seek(share * fold.run().table().end());
                    draw(fold, Question.FOLD, Playing.Controls.RUNNING);
                    Texts.overlaps(
                            studio, scene + " unfolding " + size[0] + " at " + share, covered);
                }
            }
        }
        assertThat(covered).isEmpty();
    }

    @Test
    void allThatPlaysCanBeTakenHoldOf() throws Exception {
        Reel replay = reel("class-plotter", RunKind.REPLAY);
        studio.size(1280, 720, 1);
        draw(replay, Question.SKEW, Playing.Controls.STANDING);
        for (Hits.Kind kind :
                List.of(
                        Hits.Kind.PLAY,
                        Hits.Kind.STEP,
                        Hits.Kind.LOOP,
                        Hits.Kind.SPEED,
                        Hits.Kind.LARGER,
                        Hits.Kind.WAY,
                        Hits.Kind.TAB)) {
            Hits.Hit box = studio.hits().of(kind, 0).orElseThrow();
            double x = box.x() + box.width() / 2;
            double y = box.y() + box.height() / 2;
            if (kind != Hits.Kind.WAY) {
                assertThat(studio.hits().at(x, y).orElseThrow().kind()).isEqualTo(kind);
            }
        }
        for (int i = 0; i < replay.marks().size(); i++) {
            assertThat(studio.hits().of(Hits.Kind.MARK, i)).isPresent();
        }
        // A still has no controls.
        draw(replay, Question.SKEW, Playing.Controls.NONE);
        assertThat(studio.hits().of(Hits.Kind.PLAY, 0)).isEmpty();
    }
}
