// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

import foldwright.report.plot.Scale;
import foldwright.study.Numerals;
import foldwright.viewer.gl.Target;
import foldwright.viewer.paint.Canvas;
import foldwright.viewer.paint.Lettering;
import foldwright.viewer.render.View;
import foldwright.viewer.scene.Ground;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.theme.Palette;
import java.util.List;
import java.util.Optional;

/** Draws the whole sheet over a finished machine picture. */
public final class SheetPainter implements AutoCloseable {
    private final Hits hits = new Hits();
    private final Kept kept = new Kept();

    /** What the sheet is drawn from besides its model. */
    public record Scene(MachineScene machine, TableView table, View view, Marks marks) {}

    /**
     * How the gantry stands off its ideal, drawn larger.
     *
     * @param ideal corners of the ideal bridge, world frame [m]; empty when nothing is drawn larger
     * @param title e.g. "skew 0.915 mm end to end"
     * @param second what goes with it, in smaller letters
     */
    public record Stray(List<Point> ideal, String title, String second) {
        /** None. */
        public static final Stray NONE = new Stray(List.of(), "", "");

        public Stray {
            ideal = List.copyOf(ideal);
        }
    }

    /**
     * What is marked on the machine.
     *
     * @param forces drawn as needles, to scale with one another
     * @param strongest force that the longest needle stands for, over the whole travel [N]
     * @param stray how it stands off its ideal place
     * @param labels values written beside parts
     * @param ghost something drawn dashed
     */
    public record Marks(
            List<Force> forces, double strongest, Stray stray, List<Label> labels, Ghost ghost) {
        public Marks {
            forces = List.copyOf(forces);
            labels = List.copyOf(labels);
        }

        /** Without a ghost. */
        public Marks(List<Force> forces, double strongest, Stray stray, List<Label> labels) {
            this(forces, strongest, stray, labels, Ghost.NONE);
        }

        /** Forces beside one another, the largest as the longest needle. */
        public Marks(List<Force> forces, Stray stray) {
            this(
                    forces,
                    forces.stream().mapToDouble(f -> Math.abs(f.newtons)).max().orElse(1),
                    stray,
                    List.of());
        }

        /** The same with something drawn dashed. */
        public Marks with(Ghost other) {
            return new Marks(forces, strongest, stray, labels, other);
        }

        /** The same with other values written beside parts. */
        public Marks with(List<Label> others) {
            return new Marks(forces, strongest, stray, others, ghost);
        }

        /** Nothing. */
        public static final Marks NONE = new Marks(List.of(), Stray.NONE);
    }

    /** A value beside a part: where the part is (world frame [m]), words. */
    public record Label(Point at, String words) {}

    /**
     * A force shown as a needle: head where it acts (world frame [m]), direction, size [N], words.
     */
    public record Force(Point at, Point along, double newtons, String words) {}

    /** A point or direction. */
    public record Point(double x, double y, double z) {}

    /** How many rules find room on a layout. */
    public static int rulesIn(Layout layout) {
        return RulePainter.room(layout);
    }

    /** What can be taken hold of on the sheet drawn last. */
    public Hits hits() {
        return hits;
    }

    /** Draws; the canvas has begun and is finished by the caller. */
    void draw(
            Target sheet,
            Kept.Clear clear,
            Canvas canvas,
            Layout layout,
            Palette palette,
            SheetModel model,
            Scene scene) {
        hits.clear();
        Pen pen = new Pen(canvas, layout, palette);
        kept.begin(sheet, canvas, pen, hits, clear);
        cards(pen, model);
        rules(pen, model);
        TablePainter table = new TablePainter(pen, scene.table, scene.view, scene.machine);
        table.outline(model.notes().box());
        if (scene.machine.ground() == Ground.GRID) {
            new GroundPainter(pen, scene.view).draw(scene.machine);
        }
        new GhostPainter(pen, scene.view).draw(scene.marks.ghost);
        table.stray(scene.marks.stray);
        table.topLine(model.travel());
        loads(pen, scene);
        new HeadPainter(pen, hits).draw(model);
        Optional<Playing> run = model.playing();
        if (run.isPresent() && run.get().way().isPresent()) {
            new WayPainter(pen, hits, run.get()).draw(scene);
        } else {
            heightScale(pen, model, scene, table);
        }
        run.ifPresent(r -> new ClockPainter(pen, hits).draw(r.clock()));
    }

    private void cards(Pen pen, SheetModel model) {
        Layout at = pen.at;
        kept.draw(
                Kept.Area.CARDS,
                Kept.Box.between(at.cardsLeft() - at.of(22, 16), 0, at.width, at.height),
                model,
                (a, b) -> a.cards().shows(b.cards()) && a.notes().keys().equals(b.notes().keys()),
                () -> new CardPainter(pen, model.cards(), hits).draw(model.notes().keys()));
    }

    private void rules(Pen pen, SheetModel model) {
        Layout at = pen.at;
        kept.draw(
                Kept.Area.RULES,
                Kept.Box.between(0, at.rulesTop() - 1, at.cardsLeft() - at.of(24, 17), at.height),
                model,
                (a, b) -> a.rules().equals(b.rules()) && a.notes().equals(b.notes()),
                () -> new RulePainter(pen, hits).draw(model.rules(), model.notes()));
    }

    @Override
    public void close() {
        kept.close();
    }

    private static void loads(Pen pen, Scene scene) {
        LoadPainter loads = new LoadPainter(pen, scene.view);
        if (!scene.view.above) {
            boolean stray = !scene.marks.stray.title().isEmpty();
            double keyY = stray ? pen.at.of(206, 148) : pen.at.of(150, 106);
            loads.needles(scene.marks.forces, scene.marks.strongest, keyY);
        }
        loads.labels(scene.marks.labels);
    }

    private void heightScale(Pen pen, SheetModel model, Scene scene, TablePainter table) {
        Layout layout = pen.at;
        Scale heights = scene.table.heights();
        ScalePainter scale = new ScalePainter(pen, heights, model.travel());
        scale.draw(model);
        double curve = layout.scaleX() + 2;
        PlotPainter plot = null;
        if (model.plot().isPresent()) {
            plot =
                    new PlotPainter(
                            pen,
                            heights,
                            model.travel(),
                            model.plot().get(),
                            model.playing().isPresent()
                                    ? PlotPainter.Second.RINGS
                                    : PlotPainter.Second.DASHED);
            PlotPainter drawn = plot;
            kept.draw(
                    Kept.Area.PLOT,
                    Kept.Box.between(
                            layout.plotLeft() - layout.of(6, 4),
                            heights.at(model.travel().top()) - layout.of(100, 76),
                            layout.cardsLeft() - layout.of(24, 17),
                            heights.at(model.travel().flat()) + layout.of(50, 38)),
                    plot,
                    PlotPainter::shows,
                    drawn::draw);
            curve = plot.curveAt(model.travel().height());
        }
        model.playing().ifPresent(r -> new MarkPainter(pen).draw(r, heights));
        table.level(model.travel(), curve);
        scale.tab();
        if (plot != null) {
            plot.worst();
        }
        stretched(pen, scene.table);
        grips(layout, heights, model.travel());
        model.playing().ifPresent(r -> new MarkPainter(pen).grips(r, heights, hits));
    }

    private static void stretched(Pen pen, TableView table) {
        if (table.stretch() == 1) {
            return;
        }
        Lettering look = pen.italic(pen.palette.ink2);
        String words =
                "heights drawn " + Numerals.fixed(table.stretch(), 1) + "× taller than the machine";
        double x = pen.at.scaleX();
        double y = table.heights().from() + pen.at.of(50, 38);
        pen.canvas.text(
                look, x, y, pen.fit(look, words, pen.at.plotRight() + pen.at.of(30, 20) - x));
    }

    private void grips(Layout at, Scale heights, SheetModel.Travel travel) {
        double top = heights.at(travel.top());
        double bottom = heights.at(travel.flat());
        hits.add(
                Hits.Kind.SCALE, 0, at.scaleX() - at.of(50, 36), top, at.of(130, 90), bottom - top);
        double tab = heights.at(travel.height());
        hits.add(
                Hits.Kind.PLOT,
                0,
                at.plotLeft(),
                top,
                at.plotRight() - at.plotLeft(),
                bottom - top);
        hits.add(
                Hits.Kind.TAB,
                0,
                at.scaleX() - at.of(112, 84),
                tab - at.of(18, 13),
                at.of(118, 88),
                at.of(36, 26));
    }
}
