// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.play;

import foldwright.machine.file.MachineFile;
import foldwright.run.Run;
import foldwright.run.RunKind;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.session.Dial;
import foldwright.viewer.session.Results;
import foldwright.viewer.session.SheetBuilder;
import foldwright.viewer.sheet.Playing;
import foldwright.viewer.sheet.SheetModel;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The runs of the machine on the table: one of the lift along the height scale, one of the gantry
 * along a toolpath. Called on one thread; computing goes on on another.
 */
public final class Playback implements AutoCloseable {
    private static final double[] FACTORS = {1, 2, 5, 10, 20, 50, 100, 200, 500, 1000};

    private final RunThread thread;
    private Optional<Path> path = Optional.empty();
    private Reel lift;
    private Reel gantry;
    private List<SheetModel.Hill> hills = List.of();
    private RunKind way = RunKind.UNFOLD;
    private boolean along;
    private boolean follows;
    private boolean startWhenReady;
    private Optional<RunKind> waiting = Optional.empty();
    private String trouble = "";
    private double larger;

    public Playback(Runnable wake) {
        thread = new RunThread(wake);
    }

    /** Takes the toolpath that replays follow; left out: the one beside the machine. */
    public void path(Optional<Path> next) {
        path = next;
    }

    /** Another machine: its runs are not known. */
    public void clear() {
        lift = null;
        gantry = null;
        hills = List.of();
        follows = false;
        startWhenReady = false;
        waiting = Optional.empty();
        trouble = "";
        larger = 0;
    }

    /** A run that was read rather than computed. */
    public void show(Run run) {
        Reel reel = new Reel(run);
        along = reel.alongPath();
        if (along) {
            gantry = reel;
        } else {
            lift = reel;
            way = run.kind();
        }
        reel.player().seek(reel.worst());
        follows = true;
    }

    /** Whether the runs shown are those along a toolpath. */
    public void along(boolean toolpath) {
        if (along != toolpath) {
            active().ifPresent(r -> r.player().stop());
            along = toolpath;
        }
    }

    /** Whether toolpaths are shown. */
    public boolean along() {
        return along;
    }

    /** The run that is looked at, if it is known. */
    public Optional<Reel> active() {
        return Optional.ofNullable(along ? gantry : lift);
    }

    /** The run whose moment is on the table. */
    public Optional<Reel> shown() {
        return active().filter(r -> along || follows);
    }

    /** Computes the run that is looked at. */
    public void ask(MachineFile machine, List<Dial> dials) {
        RunKind kind = along ? RunKind.REPLAY : way;
        waiting = Optional.of(kind);
        trouble = "";
        thread.ask(
                new RunThread.Request(machine, kind, path, along ? List.copyOf(dials) : List.of()));
    }

    /** The machine has changed: a run that is looked at is computed anew, others are forgotten. */
    public void changed(MachineFile machine, List<Dial> dials) {
        if (along) {
            lift = null;
            ask(machine, dials);
        } else {
            gantry = null;
            boolean again = lift != null && follows;
            if (again) {
                ask(machine, dials);
            } else {
                lift = null;
            }
        }
    }

    /** Takes what was finished; whether there was anything. */
    public boolean take() {
        List<RunThread.Done> all = thread.take();
        for (RunThread.Done done : all) {
            done.run().ifPresent(this::take);
            done.trouble()
                    .ifPresent(
                            t -> {
                                trouble = t;
                                waiting = Optional.empty();
                                startWhenReady = false;
                            });
            if (done.request().kind() == RunKind.REPLAY && !done.hills().isEmpty()) {
                hills = done.hills();
            }
        }
        return !all.isEmpty();
    }

    private void take(Run run) {
        Reel reel = new Reel(run);
        Reel before = reel.alongPath() ? gantry : lift;
        if (before != null && before.run().kind() == run.kind()) {
            reel.player().like(before.player());
        } else if (reel.alongPath()) {
            reel.player().seek(reel.worst());
        }
        if (reel.alongPath()) {
            gantry = reel;
        } else {
            lift = reel;
        }
        waiting = Optional.empty();
        if (startWhenReady && reel.alongPath() == along) {
            startWhenReady = false;
            follows = true;
            reel.player().toggle();
        }
    }

    /** Runs or stands; a run that is not known is computed first. */
    public void toggle(MachineFile machine, List<Dial> dials) {
        if (active().isPresent()) {
            follows = true;
            active().get().player().toggle();
        } else {
            startWhenReady = true;
            ask(machine, dials);
        }
    }

    /** Unfolds instead of folding, or the other way; begins at once. */
    public void otherWay(MachineFile machine, List<Dial> dials) {
        if (!along) {
            way = way == RunKind.UNFOLD ? RunKind.FOLD : RunKind.UNFOLD;
            lift = null;
            startWhenReady = true;
            ask(machine, dials);
        }
    }

    /** Stops; whether something ran. */
    public boolean stop() {
        boolean ran = active().filter(r -> r.player().state() == Player.State.RUNNING).isPresent();
        active().ifPresent(r -> r.player().stop());
        return ran;
    }

    /** Puts the run to the moment of a place on its axis; where it never comes, lets it go. */
    public void seek(double place) {
        active().ifPresent(
                        r -> {
                            OptionalDouble time = r.timeAt(place);
                            r.player().stop();
                            follows = time.isPresent();
                            time.ifPresent(r.player()::seek);
                        });
    }

    /** Puts the run to one of its marks. */
    public void mark(int index) {
        active().ifPresent(
                        r -> {
                            r.player().stop();
                            r.player().seek(r.marks().get(index).time());
                            follows = true;
                        });
    }

    /** The next mark (+1) or the last (-1). */
    public void nextMark(int step) {
        active().ifPresent(
                        r -> {
                            r.player().nextMark(step);
                            follows = true;
                        });
    }

    /** One row on or back. */
    public void step(int rows) {
        active().ifPresent(
                        r -> {
                            r.player().step(rows);
                            follows = true;
                        });
    }

    /** Lets time pass; whether the run moves. */
    public boolean pass(double seconds) {
        return shown().filter(r -> r.player().pass(seconds)).isPresent();
    }

    // ---- errors drawn larger

    /** The factor errors of a replay are drawn with. */
    public double larger() {
        return larger > 0 ? larger : active().map(Reel::fitting).orElse(1.0);
    }

    /** Draws errors larger or smaller by steps of 1, 2, 5, 10 ... 1000. */
    public void larger(int steps) {
        int at = 0;
        for (int i = 0; i < FACTORS.length; i++) {
            at = FACTORS[i] <= larger() * (1 + 1e-9) ? i : at;
        }
        larger = FACTORS[Math.max(0, Math.min(FACTORS.length - 1, at + steps))];
    }

    /** Takes the factor at a place of its rule, 0 for 1 and 1 for 1000. */
    public void largerShare(double share) {
        double exact = Math.pow(1000, Math.max(0, Math.min(1, share)));
        double best = 1;
        for (double f : FACTORS) {
            best = Math.abs(Math.log(f / exact)) < Math.abs(Math.log(best / exact)) ? f : best;
        }
        larger = best;
    }

    // ---- the sheet

    /** Hills over the gantry's rules. */
    public List<SheetModel.Hill> hills() {
        return hills;
    }

    /** What is being done, or why there is no run; empty when all is well. */
    public String words() {
        if (waiting.isPresent() && active().isEmpty()) {
            return waiting.get() == RunKind.REPLAY
                    ? "computing the replay"
                    : "computing the " + waiting.get().word() + "ing";
        }
        return trouble;
    }

    /** The sheet with the run that is shown on it. */
    public SheetBuilder.Page over(SheetBuilder.Page page, Results results, MachineScene scene) {
        if (shown().isEmpty()) {
            return page;
        }
        Reel reel = shown().get();
        Playing.Controls controls =
                reel.player().state() == Player.State.RUNNING
                        ? Playing.Controls.RUNNING
                        : Playing.Controls.STANDING;
        return PlayPage.live(reel, controls, larger()).over(page, results, scene);
    }

    /** What a title says of the run: its time and whether it runs. */
    public String title() {
        return shown().map(
                        r ->
                                ", "
                                        + r.run().kind().word()
                                        + " "
                                        + foldwright.study.Numerals.fixed(r.player().time(), 3)
                                        + " s"
                                        + (r.player().state() == Player.State.RUNNING
                                                ? ", running " + Player.words(r.player().speed())
                                                : ""))
                .orElse("");
    }

    @Override
    public void close() {
        thread.close();
    }
}
