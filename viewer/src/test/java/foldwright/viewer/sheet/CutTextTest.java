// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import foldwright.machine.Machine;
import foldwright.report.draw.Theme;
import foldwright.study.Question;
import foldwright.viewer.Headless;
import foldwright.viewer.Texts;
import foldwright.viewer.render.MachineRenderer;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.session.Dial;
import foldwright.viewer.session.LiftEngine;
import foldwright.viewer.session.Results;
import foldwright.viewer.session.RuleSet;
import foldwright.viewer.session.SheetBuilder;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Every question of the demo machines with its true words: none is cut, none covers another. */
class CutTextTest {
    private static final int[][] SIZES = {{1280, 720}, {1920, 1080}, {3840, 2160}};

    private final List<String> wrong = new ArrayList<>();

    @Test
    void nothingIsCut() {
        try (Headless.Room room = Headless.studio()) {
            Studio studio = room.studio();
            for (String name :
                    List.of("van-bench", "class-plotter", "field-printer", "van-bench-binds")) {
                Machine machine = Headless.machine(name);
                studio.machine(new MachineScene(machine));
                Results results = whole(machine);
                for (int[] size : SIZES) {
                    studio.size(size[0], size[1], 1);
                    for (Question question : Question.values()) {
                        look(studio, results, question, name + " " + size[0] + " " + question);
                    }
                }
            }
        }
        assertThat(wrong).isEmpty();
    }

    private static Results whole(Machine machine) {
        LiftEngine engine = new LiftEngine();
        return engine.whole(machine, engine.curve(machine), words -> {});
    }

    private void look(Studio studio, Results results, Question question, String where) {
        double height = results.worst(question).orElse(studio.scene().shape().flat());
        Machine machine = studio.scene().machine();
        SheetBuilder.Page page =
                new SheetBuilder(studio.scene())
                        .page(
                                results,
                                SheetBuilder.Choice.of(question, height),
                                RuleSet.rules(machine, Dial.of(machine), Map.of(), List.of()),
                                new SheetBuilder.Words(
                                        "as in the file", Optional.empty(), "", Optional.empty()));
        Studio.Look home = Studio.Look.home(Theme.LIGHT).at(MachineRenderer.Quality.MOVING);
        Headless.draw(studio, page, home);
        Texts.overlaps(studio, where, wrong);
        studio.boxes().stream()
                .map(box -> box.text())
                .filter(text -> text.contains("…"))
                .forEach(text -> wrong.add(where + ": \"" + text + "\" is cut"));
    }
}
