// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.window;

import foldwright.machine.Machine;
import foldwright.machine.file.BadMachineFile;
import foldwright.machine.file.MachineFile;
import foldwright.machine.file.MachineText;
import foldwright.study.HeightPlot;
import foldwright.study.Question;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.scene.Part;
import foldwright.viewer.session.Calculator;
import foldwright.viewer.session.Dial;
import foldwright.viewer.session.Engine;
import foldwright.viewer.session.Overlay;
import foldwright.viewer.session.PartReading;
import foldwright.viewer.session.Results;
import foldwright.viewer.session.RuleSet;
import foldwright.viewer.session.SheetBuilder;
import foldwright.viewer.sheet.SheetModel;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What lies before the user: a machine file, the numbers tried instead of the file's, the height,
 * the open question. No graphics; the window asks {@link #page} for what to draw. All calls on one
 * thread; computing goes on on another.
 */
public final class Desk implements AutoCloseable {
    private final Calculator calculator;
    private Path path;
    private MachineFile file;
    private MachineFile triedFile;
    private Machine machine;
    private MachineScene scene;
    private SheetBuilder builder;
    private List<Dial> dials = List.of();
    private Map<String, Double> tried = new LinkedHashMap<>();
    private final Deque<Map<String, Double>> undo = new ArrayDeque<>();
    private final Deque<Map<String, Double>> redo = new ArrayDeque<>();
    private Results results = Results.NONE;
    private List<SheetModel.Hill> hills = List.of();
    private Optional<HeightPlot> kept = Optional.empty();
    private Question question = Question.FOLD;
    private Overlay overlay = Overlay.ARM_BENDING;
    private SheetBuilder.Forces forces = SheetBuilder.Forces.SHOWN;
    private double height;
    private double larger;
    private int pointed;
    private boolean heightChosen;
    private long sceneNumber;
    private Optional<Trouble> trouble = Optional.empty();

    public Desk(Engine engine, Runnable wake) {
        calculator = new Calculator(engine, wake);
    }

    // ---- files

    /** Opens a file; the one before stays when this one cannot be read. */
    public void open(Path next) throws BadMachineFile {
        MachineFile read = MachineFile.read(next);
        boolean same = next.equals(path);
        path = next;
        file = read;
        trouble = Optional.empty();
        if (!same) {
            tried.clear();
            undo.clear();
            redo.clear();
            kept = Optional.empty();
            heightChosen = false;
        }
        rebuild();
        ask(Calculator.Depth.WHOLE);
    }

    /** Reads the file again; a bad one is told and the machine stays. */
    public void reload() {
        try {
            open(path);
        } catch (BadMachineFile e) {
            trouble =
                    Optional.of(
                            new Trouble(path.getFileName() + " cannot be read", e.getMessage()));
        }
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

    /** Writes the tried numbers into a copy of the file, comments and order kept. */
    public void save(Path to) throws BadMachineFile, IOException {
        text().save(to);
    }

    private MachineText text() {
        MachineText text = MachineText.of(file);
        for (Map.Entry<String, Double> e : tried.entrySet()) {
            for (Dial dial : dials) {
                if (dial.path().equals(e.getKey())) {
                    text = dial.write(text, e.getValue(), file.machine());
                }
            }
        }
        return text;
    }

    private void rebuild() {
        Machine before = machine;
        trouble = Optional.empty();
        try {
            triedFile = tried.isEmpty() ? file : text().read();
            machine = triedFile.machine();
        } catch (BadMachineFile | RuntimeException e) {
            trouble =
                    Optional.of(
                            new Trouble(
                                    "This number cannot be used", String.valueOf(e.getMessage())));
            triedFile = file;
            machine = file.machine();
        }
        dials = Dial.of(file.machine());
        if (before == null
                || !before.lift().equals(machine.lift())
                || !before.springs().equals(machine.springs())
                || !before.equals(machine) && tried.isEmpty()) {
            scene = new MachineScene(machine);
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

    private void ask(Calculator.Depth depth) {
        calculator.ask(machine, triedFile, dials, depth);
    }

    /** Takes finished results; returns whether there were any. */
    public boolean takeResults() {
        Calculator.Done done = calculator.take();
        if (done == null) {
            return false;
        }
        boolean whole = done.results().whole();
        results = done.results().after(results);
        if (!done.hills().isEmpty()) {
            hills = done.hills();
        }
        if (!heightChosen && whole) {
            worst().ifPresent(h -> height = h);
        }
        return true;
    }

    // ---- numbers

    public List<Dial> dials() {
        return dials;
    }

    /** The value of a dial now [SI]. */
    public double value(Dial dial) {
        return tried.getOrDefault(dial.path(), dial.value().applyAsDouble(file.machine()));
    }

    /** Begins a change that one undo takes back. */
    public void mark() {
        undo.push(new LinkedHashMap<>(tried));
        redo.clear();
    }

    /** Tries a value; results follow while it is dragged. */
    public void tryValue(Dial dial, double si) {
        if (Math.abs(si - value(dial)) < 1e-12) {
            return;
        }
        double own = dial.value().applyAsDouble(file.machine());
        if (Math.abs(si - own) < 1e-9 * Math.max(1, Math.abs(own))) {
            tried.remove(dial.path());
        } else {
            tried.put(dial.path(), si);
        }
        rebuild();
        ask(Calculator.Depth.QUICK);
    }

    /** The hand has let go: everything is computed. */
    public void settle() {
        ask(Calculator.Depth.WHOLE);
    }

    public void undo() {
        step(undo, redo);
    }

    public void redo() {
        step(redo, undo);
    }

    private void step(Deque<Map<String, Double>> from, Deque<Map<String, Double>> to) {
        if (from.isEmpty()) {
            return;
        }
        to.push(tried);
        tried = from.pop();
        rebuild();
        ask(Calculator.Depth.WHOLE);
    }

    /** Whether any number differs from the file. */
    public boolean changed() {
        return !tried.isEmpty();
    }

    // ---- looking

    public MachineScene scene() {
        return scene;
    }

    /** Grows when the scene was built anew. */
    public long sceneNumber() {
        return sceneNumber;
    }

    public double height() {
        return height;
    }

    /** Moves the deck [m]. */
    public void height(double next) {
        heightChosen = true;
        height = Math.max(scene.shape().flat(), Math.min(scene.shape().top(), next));
    }

    public Question question() {
        return question;
    }

    /** Opens a question: it brings its ink. */
    public void ask(Question next) {
        question = next;
        overlay = SheetBuilder.Choice.of(next, height).overlay();
    }

    public void nextOverlay() {
        overlay = builder.nextOverlay(results, overlay);
    }

    /** Draws skew larger (or smaller) by ten times, from 1 to 1000. */
    public void larger(int steps) {
        // Zero stands for the factor that fits the picture, about a hundred.
        double now = larger == 0 ? 100 : larger;
        larger = Math.max(1, Math.min(1000, now * Math.pow(10, steps)));
    }

    public void toggleForces() {
        forces =
                forces == SheetBuilder.Forces.SHOWN
                        ? SheetBuilder.Forces.HIDDEN
                        : SheetBuilder.Forces.SHOWN;
    }

    /** Where the open question is worst [m]. */
    public OptionalDouble worst() {
        return results.worst(question);
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

    /** What is known of a part now. */
    public PartReading reading(Part part) {
        return builder.reading(results, part, height);
    }

    /** Parts in the order in which the keyboard walks them: the most loaded first. */
    public List<Integer> order() {
        return builder.order(results, overlay, height);
    }

    public Results results() {
        return results;
    }

    /** Keeps the drawn curve as A, to compare with; again lets it go. */
    public void keep() {
        kept = kept.isPresent() ? Optional.empty() : results.plot();
    }

    /** What to draw now. */
    public SheetBuilder.Page page(String caption) {
        String drawn = changed() ? "drawn: with changed numbers" : "as in the file";
        Optional<String> dashed = kept.map(k -> "dashed: A, kept before");
        SheetBuilder.Choice choice =
                new SheetBuilder.Choice(question, overlay, height, pointed, forces, larger);
        Results shown = kept.map(a -> results.beside(a, "A")).orElse(results);
        return builder.page(
                shown,
                choice,
                rules(),
                new SheetBuilder.Words(drawn, dashed, caption, Optional.empty()));
    }

    private List<SheetModel.Rule> rules() {
        return RuleSet.rules(file.machine(), dials, tried, hills);
    }

    @Override
    public void close() {
        calculator.close();
    }
}
