// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import foldwright.report.draw.Theme;
import foldwright.study.Question;
import foldwright.viewer.Headless;
import foldwright.viewer.Sample;
import foldwright.viewer.StudioTest;
import foldwright.viewer.Texts;
import foldwright.viewer.picture.Pixels;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.session.LoadField;
import foldwright.viewer.session.Overlay;
import foldwright.viewer.session.Results;
import foldwright.viewer.session.SheetBuilder;
import foldwright.viewer.theme.Palette;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What the sheet means: no text covers another, the ink is the load, a pixel knows its part. */
class SheetTest extends StudioTest {

    private static void draw(Results results, Question question, double height, Studio.Look look) {
        SheetBuilder.Page page =
                new SheetBuilder(studio.scene())
                        .page(
                                results,
                                SheetBuilder.Choice.of(question, height),
                                Sample.rules(),
                                new SheetBuilder.Words(
                                        "drawn: with changed numbers",
                                        Optional.of("dashed: A, kept before"),
                                        "18.8 s of 60 s",
                                        Optional.empty()));
        Headless.draw(studio, page, look);
    }

    @Test
    void noTextCoversAnother() {
        int[][] sizes = {
            {1280, 720}, {1440, 810}, {1600, 900}, {1920, 1080}, {2560, 1080}, {3840, 2160}
        };
        List<String> covered = new ArrayList<>();
        for (String name : List.of("van-bench", "class-plotter", "field-printer")) {
            studio.machine(new MachineScene(Headless.machine(name)));
            Results results = Sample.results(studio.scene().machine());
            for (int[] size : sizes) {
                studio.size(size[0], size[1], 1);
                for (double share : new double[] {0, 0.3, 1}) {
                    var shape = studio.scene().shape();
                    double h = shape.flat() + share * (shape.top() - shape.flat());
                    Studio.Look look =
                            Studio.Look.home(Theme.LIGHT)
                                    .at(foldwright.viewer.render.MachineRenderer.Quality.MOVING);
                    draw(results, Question.values()[(int) (share * 5)], h, look);
                    Texts.overlaps(
                            studio, name + " " + size[0] + "x" + size[1] + " at " + share, covered);
                }
            }
        }
        assertThat(covered).isEmpty();
    }

    @Test
    void inkOnTheMostLoadedArmIsTheLegendsColourOfItsLoad() {
        for (Theme theme : new Theme[] {Theme.LIGHT, Theme.DARK}) {
            studio.machine(new MachineScene(Headless.machine("van-bench")));
            studio.size(1920, 1080, 1);
            Results results = Sample.results(studio.scene().machine());
            double height = 0.2;
            draw(results, Question.FOLD, height, Studio.Look.home(theme));
            LoadField field =
                    LoadField.of(
                                    studio.scene().machine(),
                                    results.curve().orElseThrow(),
                                    Overlay.ARM_BENDING)
                            .orElseThrow();
            double peak = field.at("front arm 1 rising", height) / field.end();
            // Sample the front lower rising arm between boss and pin, where nothing covers it.
            var joints = studio.scene().lift().joints();
            double pin = studio.scene().machine().base().pinHeight();
            double y = -studio.scene().shape().outside();
            int seen = 0;
            int worst = 0;
            Palette palette = Palette.of(theme);
            try (Pixels pixels = studio.pixels()) {
                for (double way = 0.14; way < 0.40; way += 0.02) {
                    double x = joints.fixedX[0] + way * (joints.slidingX[1] - joints.fixedX[0]);
                    double z = pin + way * joints.z[1];
                    int px = (int) Math.floor(studio.view().x(x, y, z));
                    int py = (int) Math.floor(studio.view().y(x, y, z));
                    double exact = wayAt(px + 0.5, py + 0.5, joints, pin, y);
                    int expected = palette.load(peak * exact / 0.5);
                    worst = Math.max(worst, distance(pixels.rgb(px, py), expected));
                    seen++;
                }
            }
            assertThat(seen).isGreaterThan(10);
            assertThat(worst).isLessThanOrEqualTo(1);
        }
    }

    /** The way along the arm of the point of its front face below a pixel's middle. */
    private static double wayAt(
            double px,
            double py,
            foldwright.viewer.scene.LiftShape.Joints j,
            double pin,
            double y) {
        var v = studio.view();
        double dx = (px - v.x(j.fixedX[0], y, pin)) / v.scale;
        double dz = (v.y(j.fixedX[0], y, pin) - py) / v.scale;
        double lx = j.slidingX[1] - j.fixedX[0];
        double lz = j.z[1];
        return (dx * lx + dz * lz) / (lx * lx + lz * lz);
    }

    static int distance(int a, int b) {
        int most = 0;
        for (int s = 0; s <= 16; s += 8) {
            most = Math.max(most, Math.abs((a >> s & 255) - (b >> s & 255)));
        }
        return most;
    }

    @Test
    void aPickedPixelKnowsItsPart() {
        studio.machine(new MachineScene(Headless.machine("van-bench")));
        studio.size(1280, 720, 1);
        double height = 0.15;
        draw(Results.NONE, Question.FOLD, height, Studio.Look.home(Theme.LIGHT));
        var joints = studio.scene().lift().joints();
        double pin = studio.scene().machine().base().pinHeight();
        double y = -studio.scene().shape().outside();
        double mx = (joints.fixedX[0] + joints.slidingX[1]) / 2;
        double mz = pin + joints.z[1] / 2;
        assertThat(picked(mx, y, mz)).isEqualTo("front centre pin 1");
        double qx = 0.75 * joints.fixedX[0] + 0.25 * joints.slidingX[1];
        assertThat(picked(qx, y, pin + joints.z[1] * 0.25)).isEqualTo("front arm 1 rising");
        assertThat(studio.pick(5, 5)).isZero();
        assertThat(studio.pick(-3, 10_000)).isZero();
    }

    private static String picked(double x, double y, double z) {
        int id = studio.pick(studio.view().x(x, y, z), studio.view().y(x, y, z));
        return studio.scene().part(id).map(p -> p.name()).orElse("nothing");
    }

    @Test
    void paperIsThePalettesPaper() {
        studio.machine(new MachineScene(Headless.machine("van-bench")));
        studio.size(1280, 720, 1);
        draw(Results.NONE, Question.FOLD, 0.1, Studio.Look.home(Theme.LIGHT));
        try (Pixels pixels = studio.pixels()) {
            assertThat(pixels.rgb(400, 20)).isEqualTo(Palette.of(Theme.LIGHT).paper);
        }
    }
}
