// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.session;

import foldwright.lift.ForceCurve;
import foldwright.machine.Machine;
import foldwright.machine.Tool;
import foldwright.machine.WhenFolded;
import foldwright.study.HeightPlot;
import foldwright.study.Numerals;
import foldwright.study.Question;
import foldwright.study.Shown;
import foldwright.viewer.render.MachineRenderer;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.scene.Part;
import foldwright.viewer.scene.PartKind;
import foldwright.viewer.scene.PartLook;
import foldwright.viewer.sheet.SheetModel;
import foldwright.viewer.sheet.SheetPainter;
import foldwright.viewer.sheet.Studio;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Makes the sheet of a machine at a height. */
public final class SheetBuilder {
    static final String KEYS = "drag the tab · wheel zooms · 1–6 question · ? all keys";
    static final String RULES =
            "The hill over each rule is the worst margin at that value. Drag to where it is high.";

    private final MachineScene scene;
    private final Machine machine;
    private final Map<Overlay, Optional<LoadField>> known = new EnumMap<>(Overlay.class);
    private final Map<Overlay, Optional<LoadField>> owned = new EnumMap<>(Overlay.class);
    private ForceCurve knownCurve;
    private final String box;
    private final List<SheetModel.NoGo> noGo;
    private final LoadMarks marks;
    private Steady steady;
    private Loads other = Loads.NONE;
    private LoadField theirs;
    private LoadField alike;

    /** Loads of a machine on scales of their own. */
    public interface Loads {
        Optional<LoadField> field(Overlay overlay);

        /** Those of no machine. */
        Loads NONE = overlay -> Optional.empty();
    }

    /** What stays on a sheet while the deck moves. */
    private record Steady(
            Results results, Question question, SheetModel.Cards cards, Optional<HeightPlot> plot) {
        boolean fits(Results other, Question open) {
            return results == other && question == open;
        }
    }

    /** What the user chose; {@code larger} is the factor skew is drawn with. */
    public record Choice(
            Question question,
            Overlay overlay,
            double height,
            int pointed,
            Forces forces,
            double larger) {
        /** At a height, with the overlay a question brings. */
        public static Choice of(Question question, double height) {
            return new Choice(
                    question, overlayOf(question), height, 0, Forces.SHOWN, StrayView.FITTING);
        }

        /** The same with a part pointed at. */
        public Choice pointing(int part) {
            return new Choice(question, overlay, height, part, forces, larger);
        }

        private static Overlay overlayOf(Question question) {
            return switch (question) {
                case FOLD, LEAN -> Overlay.ARM_BENDING;
                case STAY -> Overlay.SCREW_FORCE;
                case SKEW -> Overlay.BELT_TENSION;
                case ORDER -> Overlay.USED;
                default -> Overlay.NONE;
            };
        }
    }

    /** Whether force needles are drawn. */
    public enum Forces {
        SHOWN,
        HIDDEN
    }

    /** A sheet and the machine's moment that goes with it. */
    public record Page(SheetModel model, Studio.Moment moment, SheetPainter.Marks marks) {}

    public SheetBuilder(MachineScene scene) {
        this(scene, scene.machine());
    }

    /** A sheet whose numbers come from another machine of the same shape. */
    public SheetBuilder(MachineScene scene, Machine machine) {
        this.scene = scene;
        this.machine = machine;
        box = box();
        noGo = noGo();
        marks = new LoadMarks(scene, machine);
    }

    private Steady steady(Results results, Question question) {
        if (steady == null || !steady.fits(results, question)) {
            steady =
                    new Steady(
                            results, question, cards(results, question), plot(results, question));
        }
        return steady;
    }

    /** The sheet. */
    public Page page(Results results, Choice choice, List<SheetModel.Rule> rules, Words words) {
        Optional<LoadField> field = field(results, choice.overlay());
        StrayView stray = stray(results, choice);
        PartLook look = look(field, choice);
        Steady same = steady(results, choice.question());
        SheetModel model =
                new SheetModel(
                        new SheetModel.Head(
                                machine.name(), words.drawn(), words.dashed(), stray.factor()),
                        travel(choice.height(), words.caption()),
                        field.map(f -> legend(f, choice.height())),
                        same.plot(),
                        same.cards(),
                        rules,
                        new SheetModel.Notes(box, KEYS, RULES, words.film()));
        MachineRenderer.Ink ink =
                field.filter(LoadField::signed).isPresent()
                        ? MachineRenderer.Ink.SIGNED
                        : MachineRenderer.Ink.LOAD;
        Studio.Moment moment =
                new Studio.Moment(choice.height(), stray.place(), look, ink, stray.lean());
        return new Page(model, moment, marks(results, choice, field, stray));
    }

    private StrayView stray(Results results, Choice choice) {
        StrayView stray =
                switch (choice.question()) {
                    case LEAN -> LeanView.of(scene, machine, results, choice);
                    case FIT -> FitView.of(scene, machine);
                    default -> SkewView.of(scene, machine, results, choice);
                };
        return choice.overlay().ofGantry() && results.gantry().isPresent()
                ? stray.noted(results.gantry().get().instant())
                : stray;
    }

    private SheetPainter.Marks marks(
            Results results, Choice choice, Optional<LoadField> field, StrayView stray) {
        Optional<LoadField> screws = own(results, Overlay.SCREW_FORCE);
        // Before the curve is known there is no scale on which arrows would keep their length.
        boolean shown = choice.forces() == Forces.SHOWN && results.curve().isPresent();
        List<SheetPainter.Force> forces = shown ? marks.forces(screws, choice.height()) : List.of();
        boolean labelled =
                field.isPresent()
                        && (field.get().overlay() != Overlay.SCREW_FORCE || forces.isEmpty());
        List<SheetPainter.Label> labels =
                labelled
                        ? marks.labels(field.get(), choice.height(), results.gantry(), stray)
                        : List.of();
        return new SheetPainter.Marks(forces, marks.strongest(screws), stray.marks(), labels);
    }

    /** Scales hold the loads of another machine as well from now on. */
    public void shareScales(Loads next) {
        if (next != other) {
            other = next;
            known.clear();
        }
    }

    /**
     * What this machine's parts show while another's show that: the same load on the same scale.
     *
     * @param pointed id of the part pointed at
     */
    public PartLook alike(Results results, PartLook look, double height, int pointed) {
        if (!(look instanceof InkLook ink) || ink.field() == null) {
            return pointed > 0 ? new PartLook.Pointed(pointed) : PartLook.PLAIN;
        }
        if (theirs != ink.field()) {
            theirs = ink.field();
            alike = field(results, theirs.overlay()).map(f -> f.sharing(theirs)).orElse(null);
        }
        return new InkLook(alike, height, machine.lift().arm().centrePin(), pointed);
    }

    /** The legend of the loads that {@link #alike} shows; empty where it shows none. */
    public Optional<SheetModel.InkLegend> legend(PartLook look, double height) {
        return look instanceof InkLook ink && ink.field() != null
                ? Optional.of(legend(ink.field(), height))
                : Optional.empty();
    }

    /** The largest of the loads that {@link #alike} shows, beside their parts. */
    public List<SheetPainter.Label> labels(Results results, PartLook look, double height) {
        return look instanceof InkLook ink && ink.field() != null
                ? marks.labels(ink.field(), height, results.gantry(), StrayView.none(null))
                : List.of();
    }

    /** The field of a load, made once for each curve. */
    public Optional<LoadField> field(Results results, Overlay overlay) {
        current(results);
        Optional<LoadField> field = known.get(overlay);
        if (field == null) {
            Optional<LoadField> with = other.field(overlay);
            field = own(results, overlay).map(f -> with.isPresent() ? f.sharing(with.get()) : f);
            known.put(overlay, field);
        }
        return field;
    }

    /** The field of a load on a scale for this machine alone. */
    private Optional<LoadField> own(Results results, Overlay overlay) {
        current(results);
        Optional<LoadField> field = owned.get(overlay);
        if (field == null) {
            field = results.curve().flatMap(c -> made(results, c, overlay));
            owned.put(overlay, field);
        }
        return field;
    }

    /** Lets fields of an earlier curve go. */
    private void current(Results results) {
        ForceCurve curve = results.curve().orElse(null);
        if (curve != knownCurve) {
            known.clear();
            owned.clear();
            knownCurve = curve;
        }
    }

    private Optional<LoadField> made(Results results, ForceCurve curve, Overlay overlay) {
        if (overlay.ofGantry()) {
            return results.gantry().flatMap(g -> g.field(overlay));
        }
        Map<String, Double> also = results.gantry().map(GantryLoads::used).orElse(Map.of());
        return new CurveFields(machine, curve, also).field(overlay);
    }

    /** The next overlay that this machine has loads for. */
    public Overlay nextOverlay(Results results, Overlay now) {
        Overlay next = now.next();
        while (next != Overlay.NONE && field(results, next).isEmpty()) {
            next = next.next();
        }
        return next;
    }

    /** What is known of a part at a height, with its shares from {@code splits}. */
    public PartReading reading(Results results, PartSplits splits, Part part, double height) {
        return new PartReader(machine, results, splits, height).read(part);
    }

    /**
     * Ids of the parts that carry the shown load, the most loaded first; of all parts with a name
     * of their own where none is shown.
     */
    public List<Integer> order(Results results, Overlay overlay, double height) {
        LoadField field = field(results, overlay).orElse(null);
        if (field == null) {
            return scene.parts().stream()
                    .filter(p -> p.kind() != PartKind.OUTLINE && p.kind() != PartKind.GRID)
                    .map(Part::id)
                    .toList();
        }
        return scene.parts().stream()
                .filter(p -> overlay.on(p.kind()))
                .filter(p -> !Double.isNaN(field.at(p.name(), height)))
                .sorted(Comparator.comparingDouble(p -> -field.steps(p.name(), height)))
                .map(Part::id)
                .toList();
    }

    /** What the parts show. */
    public PartLook look(Results results, Choice choice) {
        return look(field(results, choice.overlay()), choice);
    }

    private PartLook look(Optional<LoadField> field, Choice choice) {
        double centre = machine.lift().arm().centrePin();
        return new InkLook(field.orElse(null), choice.height(), centre, choice.pointed());
    }

    /**
     * Words that depend on what is open.
     *
     * @param drawn what is drawn with full lines
     * @param dashed what is drawn dashed
     * @param caption below the tab
     * @param film caption of a film
     */
    public record Words(
            String drawn, Optional<String> dashed, String caption, Optional<String> film) {}

    private SheetModel.Travel travel(double height, String caption) {
        return new SheetModel.Travel(
                scene.shape().flat(), scene.shape().top(), height, caption, noGo);
    }

    private List<SheetModel.NoGo> noGo() {
        double flat = scene.shape().flat();
        List<SheetModel.NoGo> noGo = new ArrayList<>();
        double work = scene.shape().workLow();
        boolean off =
                machine.tool()
                        .map(Tool::whenFolded)
                        .filter(w -> w == WhenFolded.TAKEN_OFF)
                        .isPresent();
        if (off && work > flat + 0.001) {
            noGo.add(
                    new SheetModel.NoGo(
                            flat,
                            work,
                            "tool off",
                            "below",
                            Numerals.fixed(work * 1000, 0) + "\u00a0mm"));
        }
        return List.copyOf(noGo);
    }

    private SheetModel.InkLegend legend(LoadField field, double height) {
        Shown unit = field.overlay().unit();
        String part = field.darkest(height).orElse(null);
        double now = part == null ? Double.NaN : field.at(part, height);
        String where =
                part == null
                        ? "no load anywhere at this height"
                        : largest(field.overlay()) + field.words(now) + ", " + part;
        return new SheetModel.InkLegend(
                field.title(), unit.fromSi(field.end()), unit.fromSi(now), where, field.ends());
    }

    /**
     * Loads of the lift are those at the height drawn; of the gantry in the instant of its check.
     */
    private static String largest(Overlay overlay) {
        return overlay.ofGantry() ? "largest: " : "largest now ";
    }

    /** The curve of the fold may have another beside it, which that of its check knows not. */
    private static Optional<HeightPlot> plot(Results results, Question question) {
        if (question == Question.FOLD) {
            return results.plot();
        }
        return results.of(question).stream()
                .flatMap(c -> c.heightPlot().stream())
                .findFirst()
                .or(results::plot);
    }

    private static SheetModel.Cards cards(Results results, Question open) {
        List<SheetModel.Answer> answers = new ArrayList<>();
        for (Question q : Question.values()) {
            answers.add(new SheetModel.Answer(q, results.of(q), results.waiting(q)));
        }
        return new SheetModel.Cards(answers, open);
    }

    private String box() {
        return machine.box()
                .map(
                        b ->
                                b.name()
                                        + " "
                                        + Numerals.fixed(b.length() * 1000, 0)
                                        + " × "
                                        + Numerals.fixed(b.width() * 1000, 0)
                                        + " × "
                                        + Numerals.fixed(b.height() * 1000, 0)
                                        + "\u00a0mm")
                .orElse("");
    }
}
