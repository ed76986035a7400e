// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.window;

import foldwright.machine.Machine;
import foldwright.machine.file.BadMachineFile;
import foldwright.machine.file.MachineFile;
import foldwright.run.BadRunFile;
import foldwright.run.Run;
import foldwright.run.RunFile;
import foldwright.run.RunKind;
import foldwright.study.HeightPlot;
import foldwright.study.Question;
import foldwright.viewer.play.Playback;
import foldwright.viewer.scene.Ground;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.session.Calculator;
import foldwright.viewer.session.Dial;
import foldwright.viewer.session.Engine;
import foldwright.viewer.session.Overlay;
import foldwright.viewer.session.PartReading;
import foldwright.viewer.session.Results;
import foldwright.viewer.session.SheetBuilder;
import foldwright.viewer.session.Splitter;
import foldwright.viewer.sheet.Studio;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.joml.Vector3f;

/**
 * What lies before the user: a machine file, the numbers tried instead of the file's, the height,
 * the open question. No graphics; the window asks {@link #page} for what to draw. All calls on one
 * thread; computing goes on on another.
 */
public final class Desk implements AutoCloseable {
    private final Answers answers;
    private final Splitter splitter;
    private final Playback playback;
    private Path path;
    private Machine machine;
    private MachineScene scene;
    private SheetBuilder builder;
    private Numbers numbers;
    private Optional<HeightPlot> kept = Optional.empty();
    private Question question = Question.FOLD;
    private Overlay overlay = Overlay.ARM_BENDING;
    private SheetBuilder.Forces forces = SheetBuilder.Forces.SHOWN;
    private double height;
    private double larger;
    private int pointed;
    private final Companion companion = new Companion();
    private final DeckGlide glide = new DeckGlide();
    private boolean heightChosen;
    private long sceneNumber;
    private Optional<Trouble> trouble = Optional.empty();

    public Desk(Engine engine, Runnable wake) {
        answers = new Answers(engine, wake);
        splitter = new Splitter(engine, wake);
        playback = new Playback(wake);
    }

    /** What answers are computed by. */
    Calculator calculator() {
        return answers.calculator();
    }

    // ---- files

    /** Opens a machine or a run; what was there before stays when this one cannot be read. */
    public void open(Path next) throws CannotOpenException {
        boolean same = next.equals(path);
        try {
            if (RunFile.isRun(next)) {
                Run run = RunFile.read(next);
                open(next, run.machine(), same);
                playback.show(run);
                ask(run.kind() == RunKind.REPLAY ? Question.SKEW : Question.FOLD);
            } else {
                open(next, MachineFile.read(next), same);
            }
        } catch (BadMachineFile | BadRunFile e) {
            throw new CannotOpenException(e.getMessage());
        }
    }

    private void open(Path next, MachineFile read, boolean same) {
        path = next;
        trouble = Optional.empty();
        numbers = same ? numbers.on(read) : new Numbers(read);
        if (!same) {
            kept = Optional.empty();
            answers.clear();
            heightChosen = false;
            glide.stop();
        }
        Machine before = machine;
        put();
        // Computed while the parts are made.
        answers.open(machine, numbers.ofLift());
        build(before);
        playback.clear();
        lookAlong();
    }

    /** Reads the file again; a bad one is told and the machine stays. */
    public void reload() {
        try {
            open(path);
        } catch (CannotOpenException e) {
            trouble(path, e.getMessage());
        }
    }

    /** Tells why a file cannot be shown; the machine stays. */
    public void trouble(Path bad, String message) {
        trouble = Optional.of(new Trouble(bad.getFileName() + " cannot be read", message));
    }

    /** Something that cannot be used, while the last good machine is shown. */
    public record Trouble(String title, String message) {}

    /** Why the file on disk or a number cannot be used. */
    public Optional<Trouble> trouble() {
        return trouble;
    }

    public Optional<Path> path() {
        return Optional.ofNullable(path);
    }

    /**
     * Writes the tried numbers into a copy of the file, comments and order kept, and goes on with
     * that: at the same height, beside the same kept curve.
     */
    public void save(Path to) throws BadMachineFile, IOException, CannotOpenException {
        numbers.text().save(to);
        Optional<HeightPlot> a = kept;
        double before = height;
        open(to);
        kept = a;
        height(before);
    }

    private void rebuild() {
        Machine before = machine;
        put();
        build(before);
    }

    private void put() {
        trouble = numbers.put().map(why -> new Trouble("This number cannot be used", why));
        machine = numbers.tried().machine();
    }

    private void build(Machine before) {
        if (before == null
                || !before.lift().equals(machine.lift())
                || !before.springs().equals(machine.springs())
                || !before.equals(machine) && !numbers.changed()) {
            Ground ground = scene == null ? Ground.PLAIN : scene.ground();
            scene = new MachineScene(machine).on(ground);
            builder = new SheetBuilder(scene);
            sceneNumber++;
        } else {
            builder = new SheetBuilder(scene, machine);
        }
        height =
                Math.max(
                        scene.shape().flat(),
                        Math.min(
                                scene.shape().top(), heightChosen ? height : scene.shape().flat()));
    }

    /** Takes finished results; returns whether there were any. */
    public boolean takeResults() {
        boolean runs = playback.take() | splitter.take();
        Answers.News news = answers.take();
        if (news == Answers.News.TELLING && !heightChosen) {
            worst().ifPresent(h -> glide.to(height, h));
        }
        return runs || news != Answers.News.NONE;
    }

    /** What is said where the open question has no answer yet; empty where it has one. */
    public Optional<String> waiting() {
        return answers.waiting(question);
    }

    /** Lets time pass [s]; whether the deck moved of its own accord. */
    public boolean pass(double seconds) {
        if (!glide.moves()) {
            return false;
        }
        height = glide.pass(seconds);
        return true;
    }

    // ---- numbers

    /** The numbers of the open question. */
    public List<Dial> dials() {
        return playback.along() ? numbers.ofGantry() : numbers.ofLift();
    }

    /** The value of a dial now [SI]. */
    public double value(Dial dial) {
        return numbers.value(dial);
    }

    /** Begins a change that one undo takes back. */
    public void mark() {
        numbers.mark();
    }

    /** Tries a value; results follow while it is dragged. */
    public void tryValue(Dial dial, double si) {
        if (Math.abs(si - value(dial)) < 1e-12) {
            return;
        }
        numbers.set(dial, si);
        rebuild();
        answers.ask(machine, numbers.ofLift(), Calculator.Depth.QUICK);
        if (playback.along()) {
            playback.changed(numbers.tried(), numbers.ofGantry());
        }
    }

    /** The hand has let go: everything is computed. */
    public void settle() {
        answers.ask(machine, numbers.ofLift(), Calculator.Depth.WHOLE);
        playback.changed(numbers.tried(), numbers.ofGantry());
    }

    public void undo() {
        if (numbers.undo()) {
            rebuild();
            settle();
        }
    }

    public void redo() {
        if (numbers.redo()) {
            rebuild();
            settle();
        }
    }

    /** Whether any number differs from the file. */
    public boolean changed() {
        return numbers.changed();
    }

    // ---- looking

    /** The machine as it is tried now. */
    public Machine machine() {
        return machine;
    }

    public MachineScene scene() {
        return scene;
    }

    /** Grows when what stands on the table changed. */
    public long sceneNumber() {
        return sceneNumber + companion.changes();
    }

    public double height() {
        return height;
    }

    /** Moves the deck [m]; a run of the lift goes there with it. */
    public void height(double next) {
        heightChosen = true;
        glide.stop();
        if (!playback.along()) {
            playback.seek(next);
        }
        height = Math.max(scene.shape().flat(), Math.min(scene.shape().top(), next));
    }

    public Question question() {
        return question;
    }

    /** Opens a question: it brings its ink. */
    public void ask(Question next) {
        question = next;
        lookAlong();
        overlay = SheetBuilder.Choice.of(next, height).overlay();
    }

    /** The skew question looks along a toolpath, the others along the height. */
    private void lookAlong() {
        playback.along(question == Question.SKEW && machine.gantry().isPresent());
        if (playback.along() && playback.active().isEmpty()) {
            playback.ask(numbers.tried(), numbers.ofGantry());
        }
    }

    public void nextOverlay() {
        overlay = builder.nextOverlay(results(), overlay);
    }

    /** Draws skew larger (or smaller) by ten times, from 1 to 1000. */
    public void larger(int steps) {
        if (playback.along()) {
            playback.larger(steps);
            return;
        }
        // Zero stands for the factor that fits the picture, about a hundred.
        double now = larger == 0 ? 100 : larger;
        larger = Math.max(1, Math.min(1000, now * Math.pow(10, steps)));
    }

    /** Takes the factor at a place of its rule: 1 at 0, 1000 at 1. */
    public void largerShare(double share) {
        larger = Math.pow(10, Math.round(3 * Math.max(0, Math.min(1, share))));
    }

    /** Grid on the table, or bare paper. */
    public void nextGround() {
        scene.on(scene.ground() == Ground.GRID ? Ground.PLAIN : Ground.GRID);
    }

    public void toggleForces() {
        forces =
                forces == SheetBuilder.Forces.SHOWN
                        ? SheetBuilder.Forces.HIDDEN
                        : SheetBuilder.Forces.SHOWN;
    }

    /** Where the open question is worst [m]. */
    public OptionalDouble worst() {
        return answers.results().worst(question);
    }

    public void point(int part) {
        pointed = part;
    }

    public int pointed() {
        return pointed;
    }

    public Overlay overlay() {
        return overlay;
    }

    /** What is known of a part of either machine now, by its id in the picture. */
    public Optional<PartReading> reading(int id) {
        return scene.part(id)
                .map(p -> builder.reading(results(), splitter.of(machine), p, height))
                .or(() -> companion.reading(id, splitter::of));
    }

    /** The middle of a part of either machine [m]. */
    public Optional<Vector3f> middle(int id) {
        return scene.part(id)
                .map(p -> scene.middle(p, new Vector3f()))
                .or(() -> companion.middle(id, scene));
    }

    /**
     * Parts in the order in which the keyboard walks them: the most loaded first, then those of the
     * second machine.
     */
    public List<Integer> order() {
        List<Integer> order = new ArrayList<>(builder.order(results(), overlay, height));
        order.addAll(companion.order(overlay));
        return order;
    }

    public Results results() {
        return answers.results();
    }

    /** Keeps the drawn curve as A, to compare with; again lets it go. */
    public void keep() {
        kept = kept.isPresent() ? Optional.empty() : results().plot();
    }

    /** The runs of the machine on the table. */
    public Playback playback() {
        return playback;
    }

    /** Runs or stands; the other way than before where asked. */
    public void play(Way way) {
        if (way == Way.OTHER) {
            playback.otherWay(numbers.tried(), numbers.ofGantry());
        } else {
            playback.toggle(numbers.tried(), numbers.ofGantry());
        }
    }

    /** Which way a lift runs. */
    public enum Way {
        SAME,
        OTHER
    }

    private String caption() {
        boolean left = playback.active().isPresent() && playback.shown().isEmpty();
        if (!playback.words().isEmpty()) {
            return playback.words();
        }
        return left ? "not in this run" : scene.shape().openness(height);
    }

    /** What to draw now. */
    public SheetBuilder.Page page() {
        height = playback.shown().map(r -> r.height(height)).orElse(height);
        String drawn = changed() ? "drawn: with changed numbers" : "as in the file";
        Optional<String> dashed =
                companion.missing().or(() -> kept.map(k -> "dashed: A, kept before"));
        SheetBuilder.Choice choice =
                new SheetBuilder.Choice(question, overlay, height, pointed, forces, larger);
        Results shown = kept.map(a -> results().beside(a, "A")).orElse(results());
        builder.shareScales(companion.loads());
        SheetBuilder.Page page =
                builder.page(
                        shown,
                        choice,
                        numbers.rules(
                                dials(), playback.along() ? playback.hills() : answers.hills()),
                        new SheetBuilder.Words(drawn, dashed, caption(), Optional.empty()));
        return companion.over(playback.over(page, shown, scene), scene, playback);
    }

    /** The second machine. */
    public Companion companion() {
        return companion;
    }

    /** Puts what there is on the table. */
    void stand(Studio studio) {
        companion.stand(studio, scene);
    }

    @Override
    public void close() {
        answers.close();
        splitter.close();
        playback.close();
    }
}
