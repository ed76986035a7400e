// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.beside;

import static org.assertj.core.api.Assertions.assertThat;

import foldwright.machine.file.BadMachineFile;
import foldwright.machine.file.MachineFile;
import foldwright.report.draw.Theme;
import foldwright.run.RunKind;
import foldwright.study.Numerals;
import foldwright.study.Question;
import foldwright.study.Shown;
import foldwright.viewer.Headless;
import foldwright.viewer.Sample;
import foldwright.viewer.StudioTest;
import foldwright.viewer.Texts;
import foldwright.viewer.play.PlayPage;
import foldwright.viewer.play.Reel;
import foldwright.viewer.play.RunMaker;
import foldwright.viewer.render.MachineRenderer;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.scene.Part;
import foldwright.viewer.session.PartSplits;
import foldwright.viewer.session.Results;
import foldwright.viewer.session.SheetBuilder;
import foldwright.viewer.sheet.Studio;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.joml.Vector3f;
import org.junit.jupiter.api.Test;

/** A second machine is told from the first by letters and words, and stands at the same height. */
class SecondTest extends StudioTest {

    private static Second second(String name, Second.Placing placing) throws BadMachineFile {
        MachineFile file = MachineFile.read(Headless.scene(name));
        return second(file, Optional.empty(), placing);
    }

    private static Second second(MachineFile file, Optional<Reel> run, Second.Placing placing) {
        return new Second(file, Sample.results(file.machine()), run, placing);
    }

    private static SheetBuilder.Page page(MachineScene a, double height) {
        return new SheetBuilder(a)
                .page(
                        Sample.results(a.machine()),
                        SheetBuilder.Choice.of(Question.FOLD, height),
                        Sample.rules(),
                        new SheetBuilder.Words(
                                "as in the file", Optional.empty(), "", Optional.empty()));
    }

    @Test
    void overTheFirstItIsDashedAndNamed() throws Exception {
        MachineScene a = new MachineScene(Headless.machine("van-bench"));
        Second b = second("field-printer", Second.Placing.OVER);
        SheetBuilder.Page page = b.over(page(a, 0.2), a, Optional.empty(), 1);
        assertThat(b.beside()).isEmpty();
        assertThat(page.model().head().drawn()).isEqualTo("drawn: A, Van bench");
        assertThat(page.model().head().dashed()).contains("dashed: B, Field printer");
        assertThat(page.model().plot().orElseThrow().beside().get(0).words()).isEqualTo("B");
        assertThat(page.marks().ghost().parts()).hasSizeGreaterThan(8);
        // B's deck lies at the height asked for, above its base pins.
        double top = 0;
        for (float[] part : page.marks().ghost().parts()) {
            for (int i = 2; i < part.length; i += 3) {
                top = Math.max(top, part[i]);
            }
        }
        double pins = Headless.machine("field-printer").base().pinHeight() + 0.2;
        assertThat(top).isBetween(pins, pins + 0.15);
    }

    @Test
    void besideTheFirstBothAreDrawnAndNoTextCoversAnother() throws Exception {
        MachineScene a = new MachineScene(Headless.machine("van-bench"));
        Second b = second("field-printer", Second.Placing.BESIDE);
        MachineScene other = b.beside().orElseThrow();
        studio.machines(a, other, Second.offset(a, other));
        List<String> covered = new ArrayList<>();
        for (int[] size : new int[][] {{1280, 720}, {1920, 1080}}) {
            studio.size(size[0], size[1], 1);
            for (double height : new double[] {0.05, 0.2}) {
                SheetBuilder.Page page = b.over(page(a, height), a, Optional.empty(), 1);
                Studio.Look look = Studio.Look.home(Theme.LIGHT).at(MachineRenderer.Quality.MOVING);
                Headless.draw(studio, page, look);
                Texts.overlaps(studio, size[0] + " at " + height, covered);
                // Both decks lie at one height of the picture: same scale, same axis.
                assertThat(other.lift().joints().z[other.shape().stages()])
                        .isEqualTo(a.lift().joints().z[a.shape().stages()], within());
            }
        }
        assertThat(covered).isEmpty();
    }

    /** A part of B under the pointer is B's, by its own id and with its own values. */
    @Test
    void partsOfTheMachineBesideAreReadAsItsOwn() throws Exception {
        MachineScene a = new MachineScene(Headless.machine("van-bench"));
        Second b = second("van-bench-binds", Second.Placing.BESIDE);
        Second.stand(Optional.of(b), studio, a);
        studio.size(1280, 720, 1);
        SheetBuilder.Page page = b.over(page(a, 0.2), a, Optional.empty(), 1);
        Studio.Look look = Studio.Look.home(Theme.LIGHT).at(MachineRenderer.Quality.MOVING);
        studio.drawMachine(page.moment(), look);
        int id = b.find("front centre pin 1").orElseThrow();
        Vector3f at = b.middle(id, a).orElseThrow();
        int found =
                studio.pick(studio.view().x(at.x, at.y, at.z), studio.view().y(at.x, at.y, at.z));
        assertThat(found).isGreaterThan(Studio.SECOND);
        String name = b.reading(found, m -> PartSplits.NONE).orElseThrow().title();
        assertThat(name).startsWith("B: front ").contains("1");
        assertThat(a.part(found)).isEmpty();
        int own = a.part("front centre pin 1").orElseThrow().id();
        assertThat(own + Studio.SECOND).isEqualTo(id);
        // Laid over A it is an outline and nothing to be picked.
        b.change();
        assertThat(b.reading(found, m -> PartSplits.NONE)).isEmpty();
        assertThat(b.beside()).isEmpty();
    }

    /** A replay of B says nothing while A shows another run: neither its skew nor its place. */
    @Test
    void skewIsToldOnlyBesideAReplay() throws Exception {
        MachineFile file = MachineFile.read(Headless.scene("class-plotter"));
        Reel replay = new Reel(RunMaker.run(file, RunKind.REPLAY, Optional.empty()));
        Reel unfold = new Reel(RunMaker.run(file, RunKind.UNFOLD, Optional.empty()));
        MachineScene a = new MachineScene(file.machine());
        Second b = second(file, Optional.of(replay), Second.Placing.BESIDE);
        String along = head(b.over(page(a, 0.1), a, Optional.of(replay), 1));
        assertThat(along).startsWith("right: B, ").contains(", skew ");
        String folding = head(b.over(page(a, 0.1), a, Optional.of(unfold), 1));
        assertThat(folding).startsWith("right: B, ").doesNotContain("skew");
    }

    /** Belts of both replays are in ink, on the scale of the one with the larger tension. */
    @Test
    void beltsOfBothReplaysCarryTheirTensionOnOneScale() throws Exception {
        MachineFile file = MachineFile.read(Headless.scene("class-plotter"));
        MachineFile other = MachineFile.read(Headless.scene("class-plotter-skews"));
        Reel shown = new Reel(RunMaker.run(file, RunKind.REPLAY, Optional.empty()));
        Reel beside = new Reel(RunMaker.run(other, RunKind.REPLAY, Optional.empty()));
        MachineScene a = new MachineScene(file.machine());
        Second b = second(other, Optional.of(beside), Second.Placing.BESIDE);
        shown.player().seek(shown.worst());
        SheetBuilder.Page alone = PlayPage.still(shown).over(page(a, 0.08), Results.NONE, a);
        SheetBuilder.Page both = b.over(alone, a, Optional.of(shown), 1);
        double end = Math.max(shown.tensionEnd(), beside.tensionEnd());
        Part strand =
                a.parts().stream().filter(p -> p.name().contains(" to ")).findFirst().orElseThrow();
        Part theirs = b.beside().orElseThrow().part(strand.name()).orElseThrow();
        float[] load = new float[4];
        both.moment().beside().load(theirs, load, 0);
        float[] expected = new float[4];
        beside.tension(end).load(theirs, expected, 0);
        assertThat(load).isEqualTo(expected);
        assertThat(load[1]).isBetween(0f, 1f).isNotEqualTo(0.5f);
        assertThat(both.moment().beside().beltSwell()).isGreaterThan(1);
        assertThat(both.model().playing().orElseThrow().way().orElseThrow().notes().get(0))
                .contains(Numerals.with(end, Shown.NEWTON));
    }

    private static String head(SheetBuilder.Page page) {
        return page.model().head().dashed().orElseThrow();
    }

    private static org.assertj.core.data.Offset<Double> within() {
        return org.assertj.core.api.Assertions.within(1e-9);
    }
}
