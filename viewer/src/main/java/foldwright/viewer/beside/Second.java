// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.beside;

import foldwright.machine.file.MachineFile;
import foldwright.run.RunColumn;
import foldwright.study.HeightPlot;
import foldwright.study.Numerals;
import foldwright.study.Series;
import foldwright.study.Shown;
import foldwright.viewer.play.Reel;
import foldwright.viewer.scene.GantryMotion;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.scene.PartKind;
import foldwright.viewer.session.SheetBuilder;
import foldwright.viewer.sheet.Ghost;
import foldwright.viewer.sheet.SheetModel;
import foldwright.viewer.sheet.SheetPainter;
import foldwright.viewer.sheet.Studio;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

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
    private final Optional<HeightPlot> plot;
    private final Optional<Reel> reel;
    private final Placing placing;

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
     * @param plot its torque over the height, where it is known
     * @param reel its run, where A shows one
     */
    public Second(
            MachineFile file, Optional<HeightPlot> plot, Optional<Reel> reel, Placing placing) {
        this.file = file;
        this.plot = plot;
        this.reel = reel;
        this.placing = placing;
        scene = new MachineScene(file.machine());
    }

    /** What the machine is called. */
    public String name() {
        return file.machine().name();
    }

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
        double right = a.machine().base().length() - a.machine().base().pinInset();
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
        Optional<Reel> along = reel.filter(r -> r.alongPath() && shown.isPresent());
        place(height, along, shown, larger);
        SheetModel m = page.model();
        SheetModel.Head head =
                new SheetModel.Head(
                        m.head().title() + " and " + file.machine().name(),
                        (placing == Placing.OVER ? "drawn: A, " : "left: A, ") + a.machine().name(),
                        Optional.of(words(along)),
                        m.head().larger());
        SheetModel model = m.with(head, m.travel(), curve(m));
        SheetPainter.Marks marks = page.marks();
        if (placing == Placing.OVER) {
            Set<PartKind> kinds = along.isPresent() ? GANTRY : OUTLINED;
            marks = marks.with(Ghost.of(scene, p -> kinds.contains(p.kind())));
        } else {
            marks = marks.with(letters(a, height));
        }
        return new SheetBuilder.Page(model, page.moment(), marks);
    }

    /** B's curve dashed beside A's, where both are of the same kind and no run lies there. */
    private Optional<HeightPlot> curve(SheetModel m) {
        boolean same =
                plot.isPresent()
                        && m.playing().isEmpty()
                        && m.plot()
                                .filter(
                                        p ->
                                                p.caption()
                                                        .title()
                                                        .equals(plot.get().caption().title()))
                                .isPresent();
        return same ? m.plot().map(p -> both(p, plot.get())) : m.plot();
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
        double held = Math.max(scene.shape().flat(), Math.min(scene.shape().top(), height));
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

    /** A letter above each machine. */
    private List<SheetPainter.Label> letters(MachineScene a, double height) {
        double away = offset(a, scene);
        return List.of(
                letter(a, 0, height, "A"),
                letter(scene, away, Math.min(scene.shape().top(), height), "B"));
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
