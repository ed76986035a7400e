// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.beside;

import foldwright.machine.Machine;
import foldwright.machine.file.MachineFile;
import foldwright.run.RunColumn;
import foldwright.study.HeightPlot;
import foldwright.study.Numerals;
import foldwright.study.Series;
import foldwright.study.Shown;
import foldwright.viewer.play.PlayPage;
import foldwright.viewer.play.Reel;
import foldwright.viewer.scene.GantryMotion;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.scene.Part;
import foldwright.viewer.scene.PartKind;
import foldwright.viewer.scene.PartLook;
import foldwright.viewer.session.Overlay;
import foldwright.viewer.session.PartReading;
import foldwright.viewer.session.PartSplits;
import foldwright.viewer.session.Results;
import foldwright.viewer.session.SheetBuilder;
import foldwright.viewer.sheet.Ghost;
import foldwright.viewer.sheet.SheetModel;
import foldwright.viewer.sheet.SheetPainter;
import foldwright.viewer.sheet.Studio;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.joml.Vector3f;

/**
 * The second machine, B: at the same height as the first, A, or at the same place of the toolpath.
 */
public final class Second {
    private static final Set<PartKind> OUTLINED =
            EnumSet.of(
                    PartKind.ARM,
                    PartKind.DECK,
                    PartKind.BASE,
                    PartKind.MOTOR,
                    PartKind.BRIDGE,
                    PartKind.CARRIAGE);
    private static final Set<PartKind> GANTRY = EnumSet.of(PartKind.BRIDGE, PartKind.CARRIAGE);

    /** Free way between two machines on one table [m]. */
    private static final double GAP = 0.05;

    /** Way to the right that depth takes in the home view, a length of depth [1]. */
    private static final double SHEAR = 0.344;

    private final MachineFile file;
    private final MachineScene scene;
    private final Results results;
    private final SheetBuilder builder;
    private final SheetBuilder.Loads loads;
    private final Optional<Reel> reel;
    private Placing placing;
    private double held;

    /** Where B stands. */
    public enum Placing {
        /** In A's place, as dashed outlines. */
        OVER,
        /** To the right of A, whole. */
        BESIDE
    }

    /**
     * A second machine.
     *
     * @param results what is known of it
     * @param reel its run, where A shows one
     */
    public Second(MachineFile file, Results results, Optional<Reel> reel, Placing placing) {
        this.file = file;
        this.results = results;
        this.reel = reel;
        this.placing = placing;
        scene = new MachineScene(file.machine());
        builder = new SheetBuilder(scene);
        held = scene.shape().flat();
        loads = overlay -> builder.field(results, overlay);
    }

    /** What the machine is called. */
    public String name() {
        return file.machine().name();
    }

    /** Goes from A's place to A's side, or back. */
    public void change() {
        placing = placing == Placing.OVER ? Placing.BESIDE : Placing.OVER;
    }

    // ---- its parts, which can be read where it stands beside A

    /** What is known of a part by its id in the picture. */
    public Optional<PartReading> reading(int id, Function<Machine, PartSplits> splits) {
        return part(id).map(
                        p ->
                                builder.reading(results, splits.apply(scene.machine()), p, held)
                                        .titled("B: " + p.name()));
    }

    /** The middle of a part in the picture by its id there [m]. */
    public Optional<Vector3f> middle(int id, MachineScene a) {
        return part(id).map(
                        p -> scene.middle(p, new Vector3f()).add((float) offset(a, scene), 0, 0));
    }

    private Optional<Part> part(int id) {
        return beside().flatMap(b -> b.part(id - Studio.SECOND));
    }

    /** The id in the picture of a part by its name. */
    public Optional<Integer> find(String name) {
        return beside().flatMap(b -> b.part(name)).map(p -> p.id() + Studio.SECOND);
    }

    /** Its loads, where its parts show them beside A. */
    public SheetBuilder.Loads loads() {
        return placing == Placing.BESIDE ? loads : SheetBuilder.Loads.NONE;
    }

    /** Ids in the picture of the parts that carry a load, the most loaded first. */
    public List<Integer> order(Overlay overlay) {
        return beside().isEmpty()
                ? List.of()
                : builder.order(results, overlay, held).stream()
                        .map(id -> id + Studio.SECOND)
                        .toList();
    }

    // ---- on the sheet of A

    /** The machine that stands beside A as a whole. */
    public Optional<MachineScene> beside() {
        return placing == Placing.BESIDE ? Optional.of(scene) : Optional.empty();
    }

    /** Puts A into the picture and beside it B, where there is one that stands there. */
    public static void stand(Optional<Second> second, Studio studio, MachineScene a) {
        MachineScene b = second.flatMap(Second::beside).orElse(null);
        studio.machines(a, b, b == null ? 0 : offset(a, b));
    }

    /** How far B stands to the right of A [m]. */
    public static double offset(MachineScene a, MachineScene b) {
        double end = a.machine().base().length() - a.machine().base().pinInset();
        double right = end + a.overhang().length();
        double depth = 0.5 * (a.machine().deck().width() + b.machine().deck().width());
        return right + b.machine().base().pinInset() + GAP + 0.55 * SHEAR * depth;
    }

    /**
     * The sheet of A with B on it.
     *
     * @param larger factor by which errors of runs are drawn
     */
    public SheetBuilder.Page over(
            SheetBuilder.Page page, MachineScene a, Optional<Reel> shown, double larger) {
        double height = page.moment().height();
        boolean replays = shown.filter(Reel::alongPath).isPresent();
        Optional<Reel> along = reel.filter(r -> r.alongPath() && replays);
        place(height, along, shown, larger);
        SheetModel m = page.model();
        SheetModel.Head head =
                new SheetModel.Head(
                        m.head().title() + " and " + file.machine().name(),
                        (placing == Placing.OVER ? "drawn: A, " : "left: A, ") + a.machine().name(),
                        Optional.of(words(along)),
                        m.head().larger());
        SheetModel model = m.with(head, m.travel(), curve(m));
        if (placing == Placing.OVER) {
            Set<PartKind> kinds = along.isPresent() ? GANTRY : OUTLINED;
            SheetPainter.Marks ghost =
                    page.marks().with(Ghost.of(scene, p -> kinds.contains(p.kind())));
            return new SheetBuilder.Page(model, page.moment(), ghost);
        }
        if (along.isPresent()) {
            SheetPainter.Marks marks = page.marks().with(letters(a, height, offset(a, scene)));
            return PlayPage.beside(
                    new SheetBuilder.Page(model, page.moment(), marks),
                    shown.orElseThrow(),
                    along.get());
        }
        Studio.Moment moment = page.moment();
        int pointed = Math.max(0, moment.look().pointed() - Studio.SECOND);
        PartLook look = builder.alike(results, moment.look(), held, pointed);
        List<SheetPainter.Label> labels = new ArrayList<>(page.marks().labels());
        labels.addAll(labels(a, height, look));
        SheetPainter.Marks marks = page.marks().with(labels);
        return new SheetBuilder.Page(darker(model, look), moment.with(look), marks);
    }

    /** The legend tells the larger load of both machines. */
    private SheetModel darker(SheetModel m, PartLook look) {
        Optional<SheetModel.InkLegend> a = m.ink();
        Optional<SheetModel.InkLegend> b = builder.legend(look, held);
        if (a.isEmpty() || b.isEmpty()) {
            return m;
        }
        boolean more = Math.abs(b.get().now()) > Math.abs(a.get().now());
        SheetModel.InkLegend told = more ? b.get() : a.get();
        return m.ink(
                new SheetModel.InkLegend(
                        told.title(),
                        told.end(),
                        told.now(),
                        told.darkest() + (more ? " of B" : " of A"),
                        told.ends()));
    }

    /** B's curve dashed beside A's, where both are of the same kind and no run lies there. */
    private Optional<HeightPlot> curve(SheetModel m) {
        Optional<HeightPlot> own = results.plot();
        boolean same =
                own.isPresent()
                        && m.playing().isEmpty()
                        && m.plot()
                                .filter(p -> quantity(p).equals(quantity(own.get())))
                                .isPresent();
        return same ? m.plot().map(p -> both(p, own.get())) : m.plot();
    }

    /** What a plot shows, whatever it is measured at: a motor, the busiest of two, a crank. */
    private static String quantity(HeightPlot plot) {
        String title = plot.caption().title();
        int at = title.indexOf(" at ");
        return (at < 0 ? title : title.substring(0, at)) + ", " + plot.caption().unit().symbol();
    }

    private static HeightPlot both(HeightPlot a, HeightPlot b) {
        int n = a.height().size();
        double[] needed = new double[n];
        double[] margin = new double[n];
        for (int i = 0; i < n; i++) {
            double h = a.height().at(i);
            boolean there = h >= b.height().first() && h <= b.height().last();
            needed[i] = there ? b.needed().over(b.height(), h) : Double.NaN;
            margin[i] = there ? b.margin().over(b.height(), h) : Double.NaN;
        }
        return new HeightPlot(
                a.caption(),
                a.height(),
                a.needed(),
                a.available(),
                a.margin(),
                a.layers(),
                List.of(new HeightPlot.Beside("B", Series.of(needed), Series.of(margin))));
    }

    private void place(double height, Optional<Reel> along, Optional<Reel> shown, double larger) {
        held = Math.max(scene.shape().flat(), Math.min(scene.shape().top(), height));
        if (along.isEmpty()) {
            scene.place(held);
            return;
        }
        // At the same place of the path, not at the same time: the paths are the same.
        along.get().timeAt(shown.orElseThrow().place()).ifPresent(along.get().player()::seek);
        GantryMotion.Place place = along.get().place(larger);
        scene.place(held, place);
    }

    private String words(Optional<Reel> along) {
        String which = placing == Placing.OVER ? "dashed: B, " : "right: B, ";
        String name = which + file.machine().name();
        if (along.isEmpty()) {
            return name;
        }
        double span = file.machine().gantry().orElseThrow().legs().span();
        double skew = Math.abs(along.get().now(RunColumn.SKEW)) * span;
        return name + ", skew " + Numerals.with(skew, Shown.MILLIMETRE);
    }

    /** A letter above each machine, and the largest load of B. */
    private List<SheetPainter.Label> labels(MachineScene a, double height, PartLook look) {
        double away = offset(a, scene);
        List<SheetPainter.Label> out = new ArrayList<>(letters(a, height, away));
        for (SheetPainter.Label l : builder.labels(results, look, held)) {
            SheetPainter.Point p = l.at();
            out.add(
                    new SheetPainter.Label(
                            new SheetPainter.Point(p.x() + away, p.y(), p.z()), l.words()));
        }
        return out;
    }

    private List<SheetPainter.Label> letters(MachineScene a, double height, double away) {
        return List.of(letter(a, 0, height, "A"), letter(scene, away, held, "B"));
    }

    private static SheetPainter.Label letter(
            MachineScene of, double offset, double height, String words) {
        var machine = of.machine();
        double x = offset - machine.deck().pinInset() + 0.25 * machine.deck().length();
        double z = machine.base().pinHeight() + height + of.deckTop();
        return new SheetPainter.Label(
                new SheetPainter.Point(x, machine.deck().width() / 2, z), words);
    }
}
