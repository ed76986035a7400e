// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

import foldwright.report.draw.Face;
import foldwright.viewer.paint.Align;
import foldwright.viewer.paint.Lettering;
import foldwright.viewer.render.View;
import foldwright.viewer.scene.MachineScene;
import java.util.List;

/**
 * What is written on the table: the outline of the box, the top of the travel, force needles, the
 * level line.
 */
final class TablePainter {
    private final Pen pen;
    private final Layout at;
    private final TableView table;
    private final View view;
    private final MachineScene scene;

    TablePainter(Pen pen, TableView table, View view, MachineScene scene) {
        this.pen = pen;
        at = pen.at;
        this.table = table;
        this.view = view;
        this.scene = scene;
    }

    /** Words beside the outline it must fit into. */
    void outline(String words) {
        scene.machine()
                .box()
                .ifPresent(
                        box -> {
                            double[] c = TableView.outlineCorner(box, scene);
                            Lettering look = pen.italic(pen.palette.ink2).over(pen.palette.paper);
                            double x =
                                    Math.max(at.of(46, 30), view.x(c[0], c[1], 0) + at.of(12, 9));
                            pen.canvas.text(look, x, view.y(c[0], c[1], 0) + at.of(20, 15), words);
                        });
    }

    /** Where the deck pins are at the top of the travel, while the deck is well below. */
    void topLine(SheetModel.Travel travel) {
        if (travel.share() > 0.8 || table.stretch() != 1 || view.above) {
            return;
        }
        double y = table.heights().at(travel.top());
        double from = view.x(-scene.machine().base().pinInset() + 0.06, table.pinY(), 0);
        double to = at.scaleX() - at.of(78, 60);
        float[] xs = {(float) from, (float) to};
        float[] ys = {(float) y, (float) y};
        pen.canvas.path().dashes(xs, ys, 2, 14, 4, 2, 4);
        pen.canvas.stroke(pen.palette.ink3, pen.line(1.1));
        pen.canvas.upright(from, y - at.of(4, 3), y + at.of(4, 3), pen.palette.ink3, pen.line(1.1));
        pen.canvas.text(
                pen.italic(pen.palette.ink2),
                from + at.of(3, 2),
                y - at.of(9, 7),
                "deck pins at the top of the travel");
    }

    /** The ideal bridge as a dashed outline, and how far the real one is off, in words. */
    void stray(SheetPainter.Stray stray) {
        int n = stray.ideal().size();
        if (n > 0) {
            float[] xs = new float[n + 1];
            float[] ys = new float[n + 1];
            for (int i = 0; i <= n; i++) {
                SheetPainter.Point p = stray.ideal().get(i % n);
                xs[i] = (float) view.x(p.x(), p.y(), p.z());
                ys[i] = (float) view.y(p.x(), p.y(), p.z());
            }
            int colour = pen.palette.dark() ? pen.palette.pine : pen.palette.ink2;
            pen.canvas.path().dashes(xs, ys, n + 1, 5, 4);
            pen.canvas.stroke(pen.palette.paper, pen.line(3.4), 0.8);
            pen.canvas.path().dashes(xs, ys, n + 1, 5, 4);
            pen.canvas.stroke(colour, pen.line(1.6));
        }
        if (!stray.title().isEmpty()) {
            double x = (at.tableLeft() + at.tableRight()) / 2;
            double y = at.of(138, 92);
            pen.canvas.text(pen.strong(17, 13, pen.palette.ink), x, y, stray.title(), Align.CENTRE);
            pen.canvas.text(
                    pen.text(pen.palette.ink2), x, y + at.of(24, 17), stray.second(), Align.CENTRE);
        }
    }

    /** From the deck pins through the tab to the curve; bends where level is not level. */
    void level(SheetModel.Travel travel, double curve) {
        var joints = scene.lift().joints();
        int n = scene.shape().stages();
        double x = Math.max(joints.fixedX[n], joints.slidingX[n]);
        double z = table.pinHeight() + joints.z[n];
        double px = view.x(x, table.pinY(), z);
        double py = view.y(x, table.pinY(), z);
        double ty = table.heights().at(travel.height());
        double tabLeft = at.scaleX() - at.of(112, 84);
        double w = pen.line(1.6);
        double from = px + at.of(14, 10);
        if (from > tabLeft - at.of(8, 6) && Math.abs(py - ty) < 1) {
            from = tabLeft - at.of(24, 16);
        }
        double snapped = Math.floor(ty) + 0.5;
        pen.canvas.path();
        if (view.above) {
            pen.canvas.moveTo(tabLeft, snapped);
        } else if (Math.abs(py - ty) < 1) {
            pen.canvas.moveTo(from, snapped);
        } else {
            double bend = Math.min(tabLeft - at.of(20, 14), at.tableRight() + at.of(10, 8));
            pen.canvas
                    .moveTo(Math.min(from, bend), py)
                    .lineTo(Math.max(Math.min(from, bend), bend - at.of(60, 40)), py);
            pen.canvas.lineTo(bend, snapped);
        }
        pen.canvas.lineTo(curve, snapped).strokeRound(pen.palette.pine, w);
    }

    /** Needles of forces, largest first. */
    void needles(List<Needle> needles) {
        double longest = needles.stream().mapToDouble(Needle::newtons).max().orElse(1);
        for (Needle n : needles) {
            double len = at.of(140, 92) * Math.sqrt(n.newtons() / longest) * 0.6;
            double hx = view.x(n.at()[0], n.at()[1], n.at()[2]);
            double hy = view.y(n.at()[0], n.at()[1], n.at()[2]);
            double dx =
                    view.x(
                                    n.at()[0] + n.along()[0],
                                    n.at()[1] + n.along()[1],
                                    n.at()[2] + n.along()[2])
                            - hx;
            double dy =
                    view.y(
                                    n.at()[0] + n.along()[0],
                                    n.at()[1] + n.along()[1],
                                    n.at()[2] + n.along()[2])
                            - hy;
            double d = Math.max(1e-9, Math.hypot(dx, dy));
            needle(hx, hy, dx / d, dy / d, len, n);
        }
    }

    /** One needle: a ring at its tail, a stem that swells, a blunt head at the point of attack. */
    private void needle(double hx, double hy, double dx, double dy, double len, Needle n) {
        double tx = hx - dx * len;
        double ty = hy - dy * len;
        double sx = -dy;
        double sy = dx;
        double head = at.of(13, 9.5);
        double half = at.of(5.2, 4);
        double stem = at.of(1.5, 1.1);
        double bx = hx - dx * head;
        double by = hy - dy * head;
        for (int pass = 0; pass < 2; pass++) {
            double grow = pass == 0 ? at.of(2, 1.6) : 0;
            int colour = pass == 0 ? pen.palette.paper : pen.palette.ink;
            double s0 = 0.6 * stem + grow;
            double s1 = 1.4 * stem + grow;
            pen.canvas.path().moveTo(tx + sx * s0, ty + sy * s0).lineTo(bx + sx * s1, by + sy * s1);
            pen.canvas.lineTo(bx + sx * (half + grow), by + sy * (half + grow));
            pen.canvas.lineTo(
                    hx + dx * grow + sx * (0.6 + grow), hy + dy * grow + sy * (0.6 + grow));
            pen.canvas.lineTo(
                    hx + dx * grow - sx * (0.6 + grow), hy + dy * grow - sy * (0.6 + grow));
            pen.canvas.lineTo(bx - sx * (half + grow), by - sy * (half + grow));
            pen.canvas
                    .lineTo(bx - sx * s1, by - sy * s1)
                    .lineTo(tx - sx * s0, ty - sy * s0)
                    .closePath();
            pen.canvas.fill(colour, pass == 0 ? 0.85 : 1);
        }
        double ring = at.of(3.2, 2.6);
        pen.canvas.path().disc(tx, ty, ring).fill(pen.palette.paper);
        pen.canvas.path().disc(tx, ty, ring).stroke(pen.palette.ink, pen.line(1.5));
        Lettering look =
                new Lettering(
                        Face.SANS_SEMIBOLD, at.type(15, 13), pen.palette.ink, pen.palette.paper);
        boolean upright = Math.abs(dy) > Math.abs(dx);
        double lx = upright ? tx + at.of(12, 9) : (tx + hx) / 2;
        double ly = upright ? ty + at.of(20, 16) : Math.max(ty, hy) + at.of(24, 19);
        pen.canvas.text(look, lx, ly, n.words(), upright ? Align.LEFT : Align.CENTRE);
    }

    /**
     * A force to draw: the head of the needle is where it acts.
     *
     * @param at where it acts, world frame [m]
     * @param along direction in which it acts, any length
     * @param newtons its size [N]
     */
    record Needle(double[] at, double[] along, double newtons, String words) {}
}
