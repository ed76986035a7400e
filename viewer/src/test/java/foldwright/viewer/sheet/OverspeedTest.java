// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import foldwright.machine.Machine;
import foldwright.machine.file.MachineFile;
import foldwright.report.draw.Theme;
import foldwright.study.Question;
import foldwright.viewer.Headless;
import foldwright.viewer.StudioTest;
import foldwright.viewer.Texts;
import foldwright.viewer.render.MachineRenderer;
import foldwright.viewer.render.View;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.session.Dial;
import foldwright.viewer.session.LiftEngine;
import foldwright.viewer.session.LoadField;
import foldwright.viewer.session.Overlay;
import foldwright.viewer.session.Results;
import foldwright.viewer.session.RuleSet;
import foldwright.viewer.session.SheetBuilder;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * A belt so geared that the motor would have to turn faster at the top than it can: it gives
 * nothing there, its margin is none and its share of the limit has no end.
 */
class OverspeedTest extends StudioTest {
    private static Machine geared() throws Exception {
        MachineFile file = MachineFile.read(Headless.scene("van-bench"));
        String text = file.text().replace("\"teeth\": \"16:48\"", "\"teeth\": \"16:63\"");
        assertThat(text).isNotEqualTo(file.text());
        return MachineFile.read(file.name(), text).machine();
    }

    private static List<String> draw(Results results, Question question, View.Stance stance) {
        Machine machine = studio.scene().machine();
        return texts(
                results,
                SheetBuilder.Choice.of(question, studio.scene().shape().top()),
                RuleSet.rules(machine, Dial.of(machine), Map.of(), List.of()),
                stance);
    }

    private static List<String> texts(
            Results results,
            SheetBuilder.Choice choice,
            List<SheetModel.Rule> rules,
            View.Stance stance) {
        SheetBuilder.Page page =
                new SheetBuilder(studio.scene())
                        .page(
                                results,
                                choice,
                                rules,
                                new SheetBuilder.Words(
                                        "as in the file", Optional.empty(), "", Optional.empty()));
        Studio.Look look =
                new Studio.Look(Theme.LIGHT, stance, 1, 0, 0, MachineRenderer.Quality.MOVING);
        Headless.draw(studio, page, look);
        return studio.boxes().stream().map(b -> b.text()).toList();
    }

    @Test
    void whatHasNoEndIsStillShownOnAScale() throws Exception {
        studio.machine(new MachineScene(geared()));
        LiftEngine engine = new LiftEngine();
        Machine machine = studio.scene().machine();
        Results results = engine.whole(machine, engine.curve(machine), words -> {});
        assertThat(results.curve().orElseThrow().raising())
                .anyMatch(p -> p.motor().available() == 0);
        LoadField used =
                new SheetBuilder(studio.scene()).field(results, Overlay.USED).orElseThrow();
        assertThat(used.end()).isEqualTo(2);
        List<String> covered = new ArrayList<>();
        for (int wide : new int[] {1280, 1920}) {
            studio.size(wide, wide * 9 / 16, 1);
            assertThat(draw(results, Question.ORDER, View.Stance.home()))
                    .contains("largest now over 200\u00a0%, motor 1", "over 200\u00a0%");
            Texts.overlaps(studio, wide + " order", covered);
            // The motor's limit changes along the travel, so one number cannot tell it.
            assertThat(draw(results, Question.FOLD, View.Stance.home()))
                    .anyMatch(t -> t.startsWith("motor gives 0 to "));
            Texts.overlaps(studio, wide + " fold", covered);
        }
        assertThat(covered).isEmpty();
    }

    /** The top of the travel is a height of the scale: a turned machine does not share it. */
    @Test
    void theTopOfTheTravelIsMarkedOnlyWhereTheMachineSharesTheScale() throws Exception {
        studio.machine(new MachineScene(Headless.machine("van-bench")));
        studio.size(1280, 720, 1);
        String words = "deck pins at the top of the travel";
        double flat = studio.scene().shape().flat();
        assertThat(marked(flat, View.Stance.home())).contains(words);
        assertThat(marked(flat, View.Stance.home().turned(0.5, 0.2))).doesNotContain(words);
        // At 70 % of the travel the gantry reaches the line.
        double high = flat + 0.7 * (studio.scene().shape().top() - flat);
        assertThat(marked(high, View.Stance.home())).doesNotContain(words);
    }

    private static List<String> marked(double height, View.Stance stance) {
        SheetBuilder.Choice choice = SheetBuilder.Choice.of(Question.FOLD, height);
        return texts(Results.NONE, choice, List.of(), stance);
    }
}
