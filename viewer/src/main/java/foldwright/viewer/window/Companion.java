// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.window;

import foldwright.machine.Machine;
import foldwright.viewer.beside.Second;
import foldwright.viewer.play.Playback;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.session.Overlay;
import foldwright.viewer.session.PartReading;
import foldwright.viewer.session.PartSplits;
import foldwright.viewer.session.SheetBuilder;
import foldwright.viewer.sheet.Studio;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.joml.Vector3f;

/** The second machine, on the table or put away. */
public final class Companion {
    private Optional<Second> shown = Optional.empty();
    private Optional<Second> away = Optional.empty();
    private long changes;
    private boolean missed;

    /** Puts one on the table. */
    void put(Optional<Second> next) {
        shown = next;
        away = Optional.empty();
        changes++;
    }

    /** Takes it off the table, or puts it back. */
    public void toggle() {
        missed = shown.isEmpty() && away.isEmpty();
        Optional<Second> now = shown;
        shown = away;
        away = now;
        changes++;
    }

    /** Puts it beside the first one, or dashed over it. */
    public void change() {
        missed = shown.isEmpty();
        shown.ifPresent(Second::change);
        changes++;
    }

    /** Another key was pressed: what was asked for in vain is forgotten. */
    void forget() {
        missed = false;
    }

    /** What to say where a second machine was asked for and there is none. */
    Optional<String> missing() {
        if (!missed) {
            return Optional.empty();
        }
        return Optional.of(
                away.isPresent()
                        ? "the second machine is put away: G puts it back"
                        : "no second machine: start with --over FILE or --beside FILE");
    }

    /** Grows when what stands on the table changes. */
    long changes() {
        return changes;
    }

    /** What the one on the table is called, and where it stands; empty when there is none. */
    String words() {
        return shown.map(b -> " and " + b.name() + (b.beside().isPresent() ? " beside it" : ""))
                .orElse("");
    }

    /** What is known of one of its parts. */
    Optional<PartReading> reading(int id, Function<Machine, PartSplits> splits) {
        return shown.flatMap(b -> b.reading(id, splits));
    }

    /** The middle of one of its parts [m]. */
    Optional<Vector3f> middle(int id, MachineScene first) {
        return shown.flatMap(b -> b.middle(id, first));
    }

    /** Its loads, for scales that both share. */
    SheetBuilder.Loads loads() {
        return shown.map(Second::loads).orElse(SheetBuilder.Loads.NONE);
    }

    /** Its parts, the most loaded first. */
    List<Integer> order(Overlay overlay) {
        return shown.map(b -> b.order(overlay)).orElse(List.of());
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
