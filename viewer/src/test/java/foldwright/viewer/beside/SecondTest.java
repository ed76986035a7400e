// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.beside;

import static org.assertj.core.api.Assertions.assertThat;

import foldwright.machine.file.BadMachineFile;
import foldwright.machine.file.MachineFile;
import foldwright.report.draw.Theme;
import foldwright.study.Question;
import foldwright.viewer.Headless;
import foldwright.viewer.Sample;
import foldwright.viewer.Texts;
import foldwright.viewer.render.MachineRenderer;
import foldwright.viewer.scene.Batch;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.session.SheetBuilder;
import foldwright.viewer.sheet.Studio;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A second machine is told from the first by letters and words, and stands at the same height. */
class SecondTest {
    private static Headless.Room room;
    private static Studio studio;

    @BeforeAll
    static void open() {
        room = Headless.studio();
        studio = room.studio();
    }

    @AfterAll
    static void close() {
        if (room != null) {
            room.close();
        }
    }

    private static Second second(String name, Second.Placing placing) throws BadMachineFile {
        MachineFile file = MachineFile.read(Headless.scene(name));
        return new Second(file, Sample.results(file.machine()).plot(), Optional.empty(), placing);
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
                studio.drawMachine(page.moment(), look);
                studio.drawSheet(page.model(), page.marks(), look, Studio.Overlay.NONE);
                Texts.overlaps(studio, size[0] + " at " + height, covered);
                // Both decks lie at one height of the picture: same scale, same axis.
                assertThat(other.lift().joints().z[other.shape().stages()])
                        .isEqualTo(a.lift().joints().z[a.shape().stages()], within());
            }
        }
        assertThat(covered).isEmpty();
        for (Batch batch : other.batches()) {
            for (int i = 0; i < batch.count; i++) {
                assertThat(batch.data[i * Batch.FLOATS + Batch.EXTRA]).isZero();
            }
        }
    }

    private static org.assertj.core.data.Offset<Double> within() {
        return org.assertj.core.api.Assertions.within(1e-9);
    }
}
