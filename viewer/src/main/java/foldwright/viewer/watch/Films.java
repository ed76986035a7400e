// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.watch;

import foldwright.run.RunTable;
import foldwright.viewer.gl.GlSurface;
import foldwright.viewer.picture.Film;
import foldwright.viewer.play.PlayPage;
import foldwright.viewer.play.Player;
import foldwright.viewer.play.Reel;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.session.Results;
import foldwright.viewer.session.SheetBuilder;
import foldwright.viewer.sheet.Studio;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;

/** Writes a film of a run, the same sheet as in stills with a caption instead of the rules. */
public final class Films {
    private static final int PER_SECOND = 25;
    private static final int SECONDS = 10;

    /** Pictures in a film. */
    static final int FRAMES = PER_SECOND * SECONDS;

    /** Share of the film spent standing still, at its start and at its end. */
    private static final double REST = 0.06;

    private Films() {}

    /** Draws and writes the film of a run; {@code progress} hears the pictures finished. */
    static void write(
            Subject subject, Results results, Stills.Wish wish, Path file, IntConsumer progress)
            throws IOException {
        Reel reel = subject.reel().orElseThrow();
        try (GlSurface surface = GlSurface.headless();
                Studio studio = new Studio()) {
            assert surface.kind() == GlSurface.Kind.HEADLESS;
            subject.stand(studio, new MachineScene(subject.machine().machine()).on(wish.ground()));
            studio.size(wish.size().width(), wish.size().height(), 1);
            Film.write(
                    file,
                    new Film.Form(wish.size().width(), wish.size().height(), PER_SECOND, FRAMES),
                    (index, into) -> {
                        frame(studio, results, wish, subject, (double) index / (FRAMES - 1));
                        studio.read(into);
                        progress.accept(index + 1);
                    });
        }
    }

    private static void frame(
            Studio studio, Results results, Stills.Wish wish, Subject subject, double share) {
        Reel reel = subject.reel().orElseThrow();
        RunTable table = reel.run().table();
        double length = table.end() - table.start();
        double run = Math.max(0, Math.min(1, (share - REST) / (1 - 2 * REST)));
        reel.player().seek(table.start() + run * length);
        var shape = studio.scene().shape();
        double height =
                reel.height(
                        wish.height()
                                .in(
                                        shape.flat(),
                                        shape.top(),
                                        results.worst(wish.question(), shape.flat())));
        double speed = length / (SECONDS * (1 - 2 * REST));
        SheetBuilder.Page page =
                subject.builder(studio.scene())
                        .page(
                                results,
                                SheetBuilder.Choice.of(wish.question(), height),
                                List.of(),
                                new SheetBuilder.Words(
                                        "as in the file",
                                        Optional.empty(),
                                        "",
                                        Optional.of(caption(reel, speed))));
        SheetBuilder.Page played = PlayPage.film(reel, speed).over(page, results, studio.scene());
        SheetBuilder.Page both = subject.over(played, studio.scene());
        Studio.Look look = Stills.look(studio, wish);
        studio.drawMachine(both.moment(), look);
        studio.drawSheet(both.model(), both.marks(), look, Studio.Overlay.NONE);
    }

    private static String caption(Reel reel, double speed) {
        String words = reel.words();
        return Character.toUpperCase(words.charAt(0))
                + words.substring(1)
                + ", shown "
                + Player.words(speed);
    }
}
