// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import foldwright.machine.file.BadMachineFile;
import foldwright.machine.file.MachineFile;
import foldwright.report.draw.Colour;
import foldwright.report.draw.Theme;
import foldwright.run.RunKind;
import foldwright.study.Question;
import foldwright.viewer.Headless;
import foldwright.viewer.Sample;
import foldwright.viewer.picture.Pixels;
import foldwright.viewer.picture.PngFile;
import foldwright.viewer.play.PlayPage;
import foldwright.viewer.play.Reel;
import foldwright.viewer.play.RunMaker;
import foldwright.viewer.render.MachineRenderer;
import foldwright.viewer.render.View;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.session.Results;
import foldwright.viewer.session.SheetBuilder;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

/**
 * Whole sheets against kept pictures. Tolerance is perceptual: the mean CIE 1976 distance and the
 * share of pixels that differ visibly (over 2.3, the just noticeable difference of Mahy, Van
 * Eycken, Oosterlinck, Color Research and Application 19, 1994, 105-121). One renderer gives the
 * same bytes; others move edges by part of a pixel.
 *
 * <p>To accept a changed look, run with {@code -Dfoldwright.golden=write} and look at the pictures.
 */
class GoldenTest {
    private static final String FOLDER = "/foldwright/viewer/golden/";

    @Test
    void vanBenchLight() throws IOException {
        compare("van-bench", Theme.LIGHT, 0.3);
    }

    @Test
    void fieldPrinterDark() throws IOException {
        compare("field-printer", Theme.DARK, 0.7);
    }

    @Test
    void replayDark() throws IOException, BadMachineFile, RunMaker.NoRunException {
        MachineFile file = MachineFile.read(Headless.scene("class-plotter-skews"));
        Reel reel = new Reel(RunMaker.run(file, RunKind.REPLAY, Optional.empty()));
        reel.player().seek(reel.worst());
        try (Headless.Room room = Headless.studio()) {
            Studio studio = room.studio();
            studio.machine(new MachineScene(file.machine()));
            studio.size(1280, 720, 1);
            Results results = Sample.results(file.machine());
            SheetBuilder.Page page =
                    new SheetBuilder(studio.scene())
                            .page(
                                    results,
                                    SheetBuilder.Choice.of(
                                            Question.SKEW, studio.scene().shape().top()),
                                    Sample.rules(),
                                    new SheetBuilder.Words(
                                            "as in the file",
                                            Optional.empty(),
                                            "",
                                            Optional.empty()));
            page = PlayPage.still(reel).over(page, results, studio.scene());
            Studio.Look look =
                    new Studio.Look(
                            Theme.DARK, View.Stance.above(), 1, 0, 0, MachineRenderer.Quality.REST);
            Headless.draw(studio, page, look);
            try (Pixels pixels = studio.pixels()) {
                judge("replay", pixels);
            }
        }
    }

    private static void compare(String name, Theme theme, double share) throws IOException {
        try (Headless.Room room = Headless.studio()) {
            Studio studio = room.studio();
            studio.machine(new MachineScene(Headless.machine(name)));
            studio.size(1280, 720, 1);
            var shape = studio.scene().shape();
            SheetBuilder.Page page =
                    new SheetBuilder(studio.scene())
                            .page(
                                    Sample.results(studio.scene().machine()),
                                    SheetBuilder.Choice.of(
                                            Question.FOLD,
                                            shape.flat() + share * (shape.top() - shape.flat())),
                                    Sample.rules(),
                                    new SheetBuilder.Words(
                                            "as in the file",
                                            Optional.empty(),
                                            "18.8 s of 60 s",
                                            Optional.empty()));
            Studio.Look look = Studio.Look.home(theme);
            Headless.draw(studio, page, look);
            try (Pixels pixels = studio.pixels()) {
                judge(name, pixels);
            }
        }
    }

    private static void judge(String name, Pixels pixels) throws IOException {
        if ("write".equals(System.getProperty("foldwright.golden"))) {
            PngFile.write(pixels, Path.of("src/test/resources" + FOLDER + name + ".png"));
            return;
        }
        BufferedImage kept;
        try (InputStream in = GoldenTest.class.getResourceAsStream(FOLDER + name + ".png")) {
            kept = ImageIO.read(in);
        }
        double sum = 0;
        int visible = 0;
        for (int y = 0; y < 720; y++) {
            for (int x = 0; x < 1280; x++) {
                int a = kept.getRGB(x, y) & 0xFFFFFF;
                int b = pixels.rgb(x, y);
                if (a != b) {
                    double d = distance(a, b);
                    sum += d;
                    visible += d > 2.3 ? 1 : 0;
                }
            }
        }
        assertThat(sum / (1280 * 720)).isLessThan(0.25);
        assertThat(visible / (1280.0 * 720)).isLessThan(0.02);
    }

    private static double distance(int a, int b) {
        double[] p = colour(a).lab();
        double[] q = colour(b).lab();
        return Math.sqrt(
                (p[0] - q[0]) * (p[0] - q[0])
                        + (p[1] - q[1]) * (p[1] - q[1])
                        + (p[2] - q[2]) * (p[2] - q[2]));
    }

    private static Colour colour(int rgb) {
        return new Colour(rgb >> 16 & 255, rgb >> 8 & 255, rgb & 255);
    }
}
