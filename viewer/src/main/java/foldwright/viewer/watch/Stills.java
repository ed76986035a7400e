// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.watch;

import foldwright.machine.file.MachineFile;
import foldwright.report.draw.Theme;
import foldwright.study.Question;
import foldwright.viewer.gl.GlSurface;
import foldwright.viewer.picture.Pixels;
import foldwright.viewer.picture.PngFile;
import foldwright.viewer.render.View;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.session.Dial;
import foldwright.viewer.session.Engine;
import foldwright.viewer.session.Results;
import foldwright.viewer.session.RuleSet;
import foldwright.viewer.session.SheetBuilder;
import foldwright.viewer.sheet.Layout;
import foldwright.viewer.sheet.SheetModel;
import foldwright.viewer.sheet.SheetPainter;
import foldwright.viewer.sheet.Studio;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/** Writes pictures of a machine without a display. */
public final class Stills {
    /** What picture is wanted. */
    public record Wish(PictureSize size, HeightWish height, Question question, Theme theme) {}

    private Stills() {}

    /** Draws and writes one picture. */
    public static void write(
            MachineFile machine, Results results, Engine engine, Wish wish, Path file)
            throws IOException {
        try (GlSurface surface = GlSurface.headless();
                Studio studio = new Studio()) {
            assert surface.kind() == GlSurface.Kind.HEADLESS;
            studio.machine(new MachineScene(machine.machine()));
            studio.size(wish.size.width(), wish.size.height(), 1);
            draw(studio, results, rules(machine, engine, wish), wish);
            try (Pixels pixels = studio.pixels()) {
                PngFile.write(pixels, file);
            }
        }
    }

    /** The rules that find room, with their hills. */
    private static List<SheetModel.Rule> rules(MachineFile machine, Engine engine, Wish wish) {
        List<Dial> dials = Dial.of(machine.machine());
        int room = SheetPainter.rulesIn(new Layout(wish.size.width(), wish.size.height(), 1));
        List<SheetModel.Hill> hills =
                dials.stream().limit(room).map(d -> RuleSet.hill(engine, machine, d)).toList();
        return RuleSet.rules(machine.machine(), dials, Map.of(), hills);
    }

    /** Draws the sheet a wish asks for. */
    static void draw(Studio studio, Results results, List<SheetModel.Rule> rules, Wish wish) {
        var shape = studio.scene().shape();
        OptionalDouble worst = results.worst(wish.question);
        double height = wish.height.in(shape.flat(), shape.top(), worst);
        SheetBuilder.Page page =
                new SheetBuilder(studio.scene())
                        .page(
                                results,
                                SheetBuilder.Choice.of(wish.question, height),
                                rules,
                                new SheetBuilder.Words(
                                        "as in the file",
                                        Optional.empty(),
                                        caption(shape, height),
                                        Optional.empty()));
        boolean above = wish.question == Question.SKEW && studio.scene().gantry().isPresent();
        Studio.Look home = Studio.Look.home(wish.theme);
        Studio.Look look =
                above
                        ? new Studio.Look(wish.theme, View.Stance.above(), 1, 0, 0, home.quality())
                        : home;
        studio.drawMachine(page.moment(), look);
        studio.drawSheet(page.model(), page.marks(), look, Studio.Overlay.NONE);
    }

    static String caption(foldwright.viewer.scene.LiftShape shape, double height) {
        double share = (height - shape.flat()) / (shape.top() - shape.flat());
        return share < 1e-6
                ? "lying flat"
                : share > 1 - 1e-6 ? "fully open" : Math.round(100 * share) + " % of the way";
    }
}
