// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import foldwright.machine.Machine;
import foldwright.machine.file.MachineFile;
import foldwright.report.draw.Theme;
import foldwright.run.RunKind;
import foldwright.study.Question;
import foldwright.viewer.Headless;
import foldwright.viewer.Sample;
import foldwright.viewer.StudioTest;
import foldwright.viewer.Texts;
import foldwright.viewer.play.PlayPage;
import foldwright.viewer.play.Reel;
import foldwright.viewer.play.RunMaker;
import foldwright.viewer.render.MachineRenderer;
import foldwright.viewer.render.View;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.session.LiftEngine;
import foldwright.viewer.session.Results;
import foldwright.viewer.session.SheetBuilder;
import foldwright.viewer.text.TextBox;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Pictures too small for six questions: what is left can be read, and the answer is left. */
class LittleSheetTest extends StudioTest {
    private static final int[][] SIZES = {{640, 360}, {854, 480}, {1200, 600}};
    private final List<String> wrong = new ArrayList<>();

    private void look(SheetBuilder.Page page, Theme theme, View.Stance stance, String where) {
        Studio.Look look = new Studio.Look(theme, stance, 1, 0, 0, MachineRenderer.Quality.MOVING);
        Headless.draw(studio, page, look);
        Texts.overlaps(studio, where, wrong);
        for (TextBox box : studio.boxes()) {
            if (box.text().contains("…")) {
                wrong.add(where + ": \"" + box.text() + "\" is cut");
            }
        }
    }

    private static SheetBuilder.Page page(Results results, Question question, double height) {
        return new SheetBuilder(studio.scene())
                .page(
                        results,
                        SheetBuilder.Choice.of(question, height),
                        Sample.rules(),
                        new SheetBuilder.Words(
                                "as in the file", Optional.empty(), "", Optional.empty()));
    }

    @Test
    void everyQuestionOfEverySceneLaysOutInBothThemes() {
        for (String name : Headless.scenes()) {
            Machine machine = Headless.machine(name);
            studio.machine(new MachineScene(machine));
            LiftEngine engine = new LiftEngine();
            Results results = engine.whole(machine, engine.curve(machine), words -> {});
            for (int[] size : SIZES) {
                studio.size(size[0], size[1], 1);
                for (Question question : Question.values()) {
                    double height = results.worst(question).orElse(studio.scene().shape().flat());
                    Theme theme = Theme.values()[(question.ordinal() + size[0]) % 2];
                    String where = name + " " + size[0] + " " + question;
                    look(page(results, question, height), theme, View.Stance.home(), where);
                    assertThat(studio.boxes().stream().map(TextBox::text))
                            .contains(question.words());
                }
            }
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void runsLayOutAsFilmsAndStills() throws Exception {
        for (String name : List.of("class-plotter-skews", "van-bench", "field-printer")) {
            MachineFile file = MachineFile.read(Headless.scene(name));
            studio.machine(new MachineScene(file.machine()));
            Results results = Sample.results(file.machine());
            for (RunKind kind : new RunKind[] {RunKind.UNFOLD, RunKind.REPLAY}) {
                Reel reel = new Reel(RunMaker.run(file, kind, Optional.empty()));
                for (int[] size : SIZES) {
                    studio.size(size[0], size[1], 1);
                    for (double share : new double[] {0, 0.21, 0.63, 1}) {
                        reel.player().seek(share * reel.run().table().end());
                        double height = reel.height(studio.scene().shape().top());
                        boolean along = reel.alongPath();
                        Question question = along ? Question.SKEW : Question.FOLD;
                        SheetBuilder.Page plain = page(results, question, height);
                        PlayPage how = along ? PlayPage.still(reel) : PlayPage.film(reel, 6.4);
                        look(
                                how.over(plain, results, studio.scene()),
                                Theme.DARK,
                                along ? View.Stance.above() : View.Stance.home(),
                                name + " " + kind + " " + size[0] + " at " + share);
                    }
                }
            }
        }
        assertThat(wrong).isEmpty();
    }
}
