// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

import foldwright.viewer.gl.Target;
import foldwright.viewer.paint.Canvas;
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
    private Pen pen;
    private LoadPainter loads;
    private HeightPainter heights;

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
        if (pen == null || !pen.is(canvas, layout, palette)) {
            pen = new Pen(canvas, layout, palette);
            loads = new LoadPainter(pen);
            heights = new HeightPainter(pen, kept, hits);
        }
        kept.begin(sheet, canvas, pen, hits, clear);
        if (!layout.little) {
            cards(pen, model);
            rules(pen, model);
        }
        HeadPainter head = new HeadPainter(pen, hits);
        if (model.ink().isPresent()) {
            SheetModel.InkLegend ink = model.ink().get();
            kept.draw(
                    Kept.Area.LEGEND,
                    head.legendBox(),
                    ink,
                    HeadPainter::alike,
                    () -> head.legend(ink));
        }
        Optional<Playing> run = model.playing();
        boolean along = run.isPresent() && run.get().way().isPresent();
        if (!along) {
            heights.stay(model, scene);
        }
        TablePainter table = new TablePainter(pen, scene.table, scene.view, scene.machine);
        table.outline(model.notes().box());
        if (scene.machine.ground() == Ground.GRID) {
            new GroundPainter(pen, scene.view).draw(scene.machine);
        }
        new GhostPainter(pen, scene.view).draw(scene.marks.ghost);
        table.stray(scene.marks.stray);
        if (!along) {
            table.topLine(model.travel());
        }
        loads(scene);
        head.draw(model);
        if (along) {
            new WayPainter(pen, hits, run.get()).draw(scene);
        } else {
            heights.draw(table);
        }
        if (layout.little) {
            new AnswerPainter(pen).draw(model);
        } else if (run.isPresent()) {
            new ClockPainter(pen, hits).draw(run.get().clock());
        }
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

    private void loads(Scene scene) {
        loads.on(scene.view);
        if (!scene.view.above) {
            boolean stray = !scene.marks.stray.title().isEmpty();
            loads.needles(scene.marks.forces, scene.marks.strongest, keyY(stray));
        }
        loads.labels(scene.marks.labels);
    }

    /** Where the scale of the arrows stands: by the words at the head, above the raised deck. */
    private double keyY(boolean stray) {
        if (pen.at.little) {
            return 80;
        }
        return stray ? pen.at.of(168, 118) : pen.at.of(150, 106);
    }
}
