// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.watch;

import foldwright.machine.Machine;
import foldwright.machine.file.BadMachineFile;
import foldwright.report.draw.Theme;
import foldwright.run.BadRunFile;
import foldwright.study.Question;
import foldwright.viewer.beside.Second;
import foldwright.viewer.gl.GlSurface;
import foldwright.viewer.picture.Pixels;
import foldwright.viewer.picture.PngFile;
import foldwright.viewer.play.PlayPage;
import foldwright.viewer.play.RunMaker;
import foldwright.viewer.render.View;
import foldwright.viewer.scene.Ground;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.scene.Part;
import foldwright.viewer.session.PartReading;
import foldwright.viewer.session.PartSplits;
import foldwright.viewer.session.Results;
import foldwright.viewer.session.RuleSet;
import foldwright.viewer.session.SheetBuilder;
import foldwright.viewer.sheet.Layout;
import foldwright.viewer.sheet.SheetModel;
import foldwright.viewer.sheet.SheetPainter;
import foldwright.viewer.sheet.Studio;
import foldwright.viewer.window.PartSheet;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.joml.Vector3f;

/** Writes pictures of a machine without a display. */
public final class Stills {
    /** What picture is wanted. */
    public record Wish(
            PictureSize size,
            HeightWish height,
            Question question,
            Theme theme,
            Ground ground,
            Optional<PartWish> part) {}

    private final Studio studio;
    private final Wish wish;
    private final Subject subject;
    private final SheetBuilder builder;

    private Stills(Studio studio, Wish wish, Subject subject) {
        this.studio = studio;
        this.wish = wish;
        this.subject = subject;
        builder = subject.builder(studio.scene());
    }

    /** Draws and writes one picture. */
    static void write(Ahead ahead, Function<Subject, Wish> wishes, Path file)
            throws IOException,
                    BadMachineFile,
                    BadRunFile,
                    RunMaker.NoRunException,
                    PartWish.NoPartException {
        try (GlSurface surface = GlSurface.headless();
                Studio studio = new Studio()) {
            assert surface.kind() == GlSurface.Kind.HEADLESS;
            Subject subject = ahead.subject();
            Wish wish = wishes.apply(subject);
            ahead.hills(SheetPainter.rulesIn(new Layout(wish.size.width(), wish.size.height(), 1)));
            subject.stand(studio, ahead.scene().on(wish.ground));
            Stills stills = new Stills(studio, wish, subject);
            // A rehearsal on few pixels: the driver builds its shaders while answers are computed.
            PictureSize few = wish.size.half();
            studio.size(few.width(), few.height(), 1);
            stills.draw(Results.NONE, rules(subject, List.of()), Optional.empty());
            studio.size(wish.size.width(), wish.size.height(), 1);
            List<SheetModel.Rule> rules = rules(subject, ahead.hills());
            Results results = ahead.results();
            Optional<Read> read =
                    wish.part.isPresent()
                            ? Optional.of(stills.read(results, ahead::splits))
                            : Optional.empty();
            stills.draw(results, rules, read);
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

    /** A part by its id in the picture, and what is known of it. */
    private record Read(int id, PartReading reading) {}

    /** The part that is to be read. */
    private Read read(Results results, Function<Machine, PartSplits> splits)
            throws PartWish.NoPartException {
        PartWish part = wish.part.orElseThrow();
        Optional<Integer> second =
                part.second().flatMap(n -> subject.second().flatMap(b -> b.find(n)));
        if (second.isPresent()) {
            int id = second.get();
            Second b = subject.second().orElseThrow();
            return new Read(id, b.reading(id, splits).orElseThrow());
        }
        double height = height(results);
        MachineScene scene = studio.scene();
        SheetBuilder.Choice choice = SheetBuilder.Choice.of(wish.question, height);
        Part found = part.in(scene, builder.order(results, choice.overlay(), height));
        PartSplits own = splits.apply(scene.machine());
        return new Read(found.id(), builder.reading(results, own, found, height));
    }

    /** The reading, with a line to its part as it was drawn last. */
    private Studio.Overlay sheet(Read read) {
        MachineScene scene = studio.scene();
        Vector3f at =
                scene.part(read.id)
                        .map(p -> scene.middle(p, new Vector3f()))
                        .or(() -> subject.second().flatMap(b -> b.middle(read.id, scene)))
                        .orElseThrow();
        View view = studio.view();
        return PartSheet.of(read.reading, view.x(at.x, at.y, at.z), view.y(at.x, at.y, at.z));
    }

    private double height(Results results) {
        var shape = studio.scene().shape();
        double chosen =
                wish.height.in(
                        shape.flat(), shape.top(), results.worst(wish.question, shape.flat()));
        return subject.reel().map(r -> r.height(chosen)).orElse(chosen);
    }

    /** Draws the sheet that is asked for. */
    private void draw(Results results, List<SheetModel.Rule> rules, Optional<Read> read) {
        MachineScene scene = studio.scene();
        double height = height(results);
        SheetBuilder.Choice choice =
                SheetBuilder.Choice.of(wish.question, height)
                        .pointing(read.map(Read::id).orElse(0));
        SheetBuilder.Words words =
                new SheetBuilder.Words(
                        "as in the file",
                        Optional.empty(),
                        scene.shape().openness(height),
                        Optional.empty());
        SheetBuilder.Page page = builder.page(results, choice, rules, words);
        if (subject.reel().isPresent()) {
            page = PlayPage.still(subject.reel().get()).over(page, results, scene);
        }
        page = subject.over(page, scene);
        Studio.Look look = look(studio, wish);
        studio.drawMachine(page.moment(), look);
        Studio.Overlay sheet = read.map(this::sheet).orElse(Studio.Overlay.NONE);
        studio.drawSheet(page.model(), page.marks(), look, sheet);
    }

    /** From above where the gantry is in question. */
    static Studio.Look look(Studio studio, Wish wish) {
        boolean above = wish.question == Question.SKEW && studio.scene().gantry().isPresent();
        Studio.Look home = Studio.Look.home(wish.theme);
        return above
                ? new Studio.Look(wish.theme, View.Stance.above(), 1, 0, 0, home.quality())
                : home;
    }
}
