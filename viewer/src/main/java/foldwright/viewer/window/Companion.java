// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.window;

import foldwright.viewer.beside.Second;
import foldwright.viewer.play.Playback;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.session.SheetBuilder;
import foldwright.viewer.sheet.Studio;
import java.util.Optional;

/** The second machine, on the table or put away. */
final class Companion {
    private Optional<Second> shown = Optional.empty();
    private Optional<Second> away = Optional.empty();

    /** Puts one on the table. */
    void put(Optional<Second> next) {
        shown = next;
        away = Optional.empty();
    }

    /** Takes it off the table, or puts it back. */
    void toggle() {
        Optional<Second> now = shown;
        shown = away;
        away = now;
    }

    /** What the one on the table is called. */
    Optional<String> name() {
        return shown.map(Second::name);
    }

    /** The page with it on. */
    SheetBuilder.Page over(SheetBuilder.Page page, MachineScene first, Playback playback) {
        return shown.map(b -> b.over(page, first, playback.shown(), playback.larger()))
                .orElse(page);
    }

    /** Puts the first machine and it into the picture. */
    void stand(Studio studio, MachineScene first) {
        Second.stand(shown, studio, first);
    }
}
