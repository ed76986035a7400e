// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.watch;

import foldwright.machine.Machine;
import foldwright.machine.file.BadMachineFile;
import foldwright.report.draw.Theme;
import foldwright.run.BadRunFile;
import foldwright.study.Question;
import foldwright.viewer.gl.GlSurface;
import foldwright.viewer.picture.Pixels;
import foldwright.viewer.picture.PngFile;
import foldwright.viewer.play.PlayPage;
import foldwright.viewer.play.Reel;
import foldwright.viewer.play.RunMaker;
import foldwright.viewer.render.View;
import foldwright.viewer.scene.Ground;
import foldwright.viewer.scene.MachineScene;
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
import java.util.function.Function;

/** Writes pictures of a machine without a display. */
public final class Stills {
    /** What picture is wanted. */
    public record Wish(
            PictureSize size, HeightWish height, Question question, Theme theme, Ground ground) {}

    private Stills() {}

    /** Draws and writes one picture. */
    static void write(Ahead ahead, Function<Subject, Wish> wishes, Path file)
            throws IOException, BadMachineFile, BadRunFile, RunMaker.NoRunException {
        try (GlSurface surface = GlSurface.headless();
                Studio studio = new Studio()) {
            assert surface.kind() == GlSurface.Kind.HEADLESS;
            Subject subject = ahead.subject();
            Wish wish = wishes.apply(subject);
            ahead.hills(SheetPainter.rulesIn(new Layout(wish.size.width(), wish.size.height(), 1)));
            subject.stand(studio, new MachineScene(subject.machine().machine()).on(wish.ground));
            studio.size(wish.size.width(), wish.size.height(), 1);
            // A rehearsal: the driver builds its shaders while the answers are being computed.
            draw(studio, Results.NONE, rules(subject, List.of()), wish, subject);
            List<SheetModel.Rule> rules = rules(subject, ahead.hills());
            draw(studio, ahead.results(), rules, wish, subject);
            try (Pixels pixels = studio.pixels()) {
                PngFile.write(pixels, file);
            }
        }
    }

    /** The rules with the hills that are known. */
    private static List<SheetModel.Rule> rules(Subject subject, List<SheetModel.Hill> hills) {
        Machine machine = subject.machine().machine();
        return RuleSet.rules(machine, subject.dials(), Map.of(), hills);
    }

    /** Draws the sheet a wish asks for. */
    static void draw(
            Studio studio,
            Results results,
            List<SheetModel.Rule> rules,
            Wish wish,
            Subject subject) {
        Optional<Reel> reel = subject.reel();
        var shape = studio.scene().shape();
        OptionalDouble worst = results.worst(wish.question);
        double chosen = wish.height.in(shape.flat(), shape.top(), worst);
        double height = reel.map(r -> r.height(chosen)).orElse(chosen);
        SheetBuilder.Page page = page(studio.scene(), results, wish, height, rules);
        if (reel.isPresent()) {
            page = PlayPage.still(reel.get()).over(page, results, studio.scene());
        }
        page = subject.over(page, studio.scene());
        Studio.Look look = look(studio, wish);
        studio.drawMachine(page.moment(), look);
        studio.drawSheet(page.model(), page.marks(), look, Studio.Overlay.NONE);
    }

    private static SheetBuilder.Page page(
            MachineScene scene,
            Results results,
            Wish wish,
            double height,
            List<SheetModel.Rule> rules) {
        return new SheetBuilder(scene)
                .page(
                        results,
                        SheetBuilder.Choice.of(wish.question, height),
                        rules,
                        new SheetBuilder.Words(
                                "as in the file",
                                Optional.empty(),
                                caption(scene.shape(), height),
                                Optional.empty()));
    }

    /** From above where the gantry is in question. */
    static Studio.Look look(Studio studio, Wish wish) {
        boolean above = wish.question == Question.SKEW && studio.scene().gantry().isPresent();
        Studio.Look home = Studio.Look.home(wish.theme);
        return above
                ? new Studio.Look(wish.theme, View.Stance.above(), 1, 0, 0, home.quality())
                : home;
    }

    static String caption(foldwright.viewer.scene.LiftShape shape, double height) {
        double share = (height - shape.flat()) / (shape.top() - shape.flat());
        return share < 1e-6
                ? "lying flat"
                : share > 1 - 1e-6 ? "fully open" : Math.round(100 * share) + " % of the way";
    }
}
