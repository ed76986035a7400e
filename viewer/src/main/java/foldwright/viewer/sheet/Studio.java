// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

import foldwright.report.draw.Theme;
import foldwright.viewer.gl.Target;
import foldwright.viewer.paint.Canvas;
import foldwright.viewer.picture.Pixels;
import foldwright.viewer.render.MachineRenderer;
import foldwright.viewer.render.View;
import foldwright.viewer.scene.Batch;
import foldwright.viewer.scene.GantryMotion;
import foldwright.viewer.scene.Lean;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.scene.PartLook;
import foldwright.viewer.text.TextBox;
import foldwright.viewer.theme.Palette;
import java.util.ArrayList;
import java.util.List;
import org.lwjgl.opengl.GL20C;

/**
 * Draws sheets of one machine on the current GL context: machine layer, then the flat layer over a
 * copy of it. The machine layer is kept, so that a sheet whose machine has not moved costs only the
 * flat part.
 */
public final class Studio implements AutoCloseable {
    private final MachineRenderer renderer = new MachineRenderer();
    private final Canvas canvas = new Canvas();
    private final SheetPainter painter = new SheetPainter();

    /** What is added to ids of parts of the machine that stands beside the first. */
    public static final int SECOND = 1 << 16;

    private MachineScene scene;
    private MachineScene second;
    private double offset;
    private Target machineLayer;
    private Target sheet;
    private TableView table;
    private Layout layout;
    private View view;
    private TableView viewOf;
    private Look viewed;

    /** How a sheet is looked at. */
    public record Look(
            Theme theme,
            View.Stance stance,
            double zoom,
            double moveX,
            double moveY,
            MachineRenderer.Quality quality) {
        /** The home view at rest. */
        public static Look home(Theme theme) {
            return new Look(theme, View.Stance.home(), 1, 0, 0, MachineRenderer.Quality.REST);
        }

        /** The same at this quality. */
        public Look at(MachineRenderer.Quality other) {
            return new Look(theme, stance, zoom, moveX, moveY, other);
        }
    }

    /**
     * Where the parts are and what they show.
     *
     * @param beside what parts of the second machine show
     */
    public record Moment(
            double height,
            GantryMotion.Place gantry,
            PartLook look,
            MachineRenderer.Ink ink,
            Lean lean,
            PartLook beside) {
        /** One machine. */
        public Moment(
                double height,
                GantryMotion.Place gantry,
                PartLook look,
                MachineRenderer.Ink ink,
                Lean lean) {
            this(height, gantry, look, ink, lean, PartLook.PLAIN);
        }

        /** The same with a second machine. */
        public Moment with(PartLook other) {
            return new Moment(height, gantry, look, ink, lean, other);
        }

        /** The deck upright. */
        public Moment(
                double height, GantryMotion.Place gantry, PartLook look, MachineRenderer.Ink ink) {
            this(height, gantry, look, ink, Lean.NONE);
        }
    }

    /** Takes a machine; the one before is let go. */
    public void machine(MachineScene next) {
        machines(next, null, 0);
    }

    /**
     * Takes two machines that stand beside each other on one table; ids of the second one's parts
     * begin after {@link #SECOND}.
     *
     * @param away how far the second stands to the right [m]
     */
    public void machines(MachineScene next, MachineScene beside, double away) {
        scene = next;
        second = beside;
        offset = away;
        List<Batch> batches = new ArrayList<>(next.batches());
        if (beside != null) {
            batches.addAll(beside.batches());
        }
        renderer.parts(batches);
        table = null;
    }

    public MachineScene scene() {
        return scene;
    }

    /** Sets the size [px] and the user's text scale; cheap when nothing changed. */
    public void size(int width, int height, double textScale) {
        if (machineLayer == null || machineLayer.width != width || machineLayer.height != height) {
            closeTargets();
            machineLayer = new Target(Target.Form.COLOUR, width, height);
            sheet = new Target(Target.Form.COLOUR, width, height);
            table = null;
        }
        if (layout == null || !layout.is(width, height, textScale)) {
            layout = new Layout(width, height, textScale);
            table = null;
        }
        if (table == null) {
            table = new TableView(layout, scene, second, offset);
        }
    }

    public Layout layout() {
        return layout;
    }

    /** The place along a path of a length [m] at a height of the picture [px]. */
    public static double wayAt(Layout layout, double length, double y) {
        return WayPainter.scale(layout, length).value(y);
    }

    public TableView table() {
        return table;
    }

    /** The view drawn last. */
    public View view() {
        return view;
    }

    /** What can be taken hold of on the sheet drawn last. */
    public Hits hits() {
        return painter.hits();
    }

    /** Texts of the sheet drawn last. */
    public List<TextBox> boxes() {
        return canvas.boxes();
    }

    /** Poses and draws the machine into the kept layer. */
    public void drawMachine(Moment moment, Look look) {
        if (moment.gantry() == null) {
            scene.place(moment.height());
        } else {
            scene.place(moment.height(), moment.gantry());
        }
        scene.lean(moment.lean());
        scene.write(moment.look());
        if (second != null) {
            second.write(moment.beside());
            for (int i = 0; i < second.batches().size(); i++) {
                second.batches().get(i).shift((float) offset, SECOND);
            }
        }
        view(look);
        renderer.update(view, table.reach());
        renderer.draw(
                new MachineRenderer.Shot(
                        view,
                        Palette.of(look.theme()),
                        look.quality(),
                        moment.ink(),
                        4 * table.reach(),
                        layout.u),
                machineLayer);
    }

    private void view(Look look) {
        if (view == null
                || viewOf != table
                || !viewed.stance().equals(look.stance())
                || viewed.zoom() != look.zoom()
                || viewed.moveX() != look.moveX()
                || viewed.moveY() != look.moveY()) {
            view = table.view(look.stance(), look.zoom(), look.moveX(), look.moveY());
            viewOf = table;
        }
        viewed = look;
    }

    /** Draws the flat part over the kept machine layer. */
    public void drawSheet(SheetModel model, SheetPainter.Marks marks, Look look, Overlay overlay) {
        machineLayer.copyTo(sheet);
        canvas.begin(sheet, layout.u);
        painter.draw(
                sheet,
                box ->
                        renderer.clearOf(
                                box.x(),
                                layout.height - box.y() - box.height(),
                                box.x() + box.width(),
                                layout.height - box.y()),
                canvas,
                layout,
                Palette.of(look.theme()),
                model,
                new SheetPainter.Scene(scene, table, view, marks));
        overlay.draw(canvas, layout, Palette.of(look.theme()));
        canvas.finish();
    }

    /** Something drawn over the sheet: help, a reading, a question. */
    public interface Overlay {
        void draw(Canvas canvas, Layout layout, Palette palette);

        /** Nothing. */
        Overlay NONE = (canvas, layout, palette) -> {};
    }

    /** The id of the part at a pixel, y from above; 0 for none. */
    public int pick(double x, double y) {
        return renderer.pick(
                view,
                layout.width,
                layout.height,
                4 * table.reach(),
                (int) Math.round(x),
                (int) Math.round(y));
    }

    /** Draws the parts nearly in paper colour, for a machine whose file can no longer be read. */
    public void pale(double share) {
        renderer.pale(share);
    }

    /** The finished sheet, to be closed by the caller. */
    public Pixels pixels() {
        return Pixels.of(sheet);
    }

    /** Reads the finished sheet into a buffer of its size. */
    public void read(Pixels into) {
        sheet.read(into.data);
    }

    /** Shows the finished sheet in the window. */
    public void present() {
        sheet.copyToWindow();
    }

    private void closeTargets() {
        if (machineLayer != null) {
            machineLayer.close();
            sheet.close();
        }
    }

    @Override
    public void close() {
        // A program in use is only marked by its deletion.
        GL20C.glUseProgram(0);
        closeTargets();
        canvas.close();
        painter.close();
        renderer.close();
    }
}
