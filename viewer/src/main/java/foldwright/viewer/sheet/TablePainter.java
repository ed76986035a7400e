// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

import foldwright.viewer.paint.Align;
import foldwright.viewer.paint.Lettering;
import foldwright.viewer.render.View;
import foldwright.viewer.scene.MachineScene;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;

/**
 * What is written on the table: the outline of the box, the top of the travel, the ideal place of
 * what stands off it, the level line.
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
        if (scene.machine().box().isEmpty()) {
            return;
        }
        double[] c = TableView.nearestCorner(scene.machine().box().get(), scene, view);
        Lettering look = pen.over(pen.italic(pen.palette.ink2));
        double right = at.scaleX() - at.of(78, 60) - pen.canvas.width(look, words);
        double x = Math.min(right, view.x(c[0], c[1], 0) + at.of(12, 9));
        x = Math.max(at.of(46, 30), x);
        double y = Math.min(at.rulesTop() - at.of(8, 5), view.y(c[0], c[1], 0) + at.of(20, 15));
        pen.canvas.text(look, x, y, words);
    }

    /** Where the deck pins are at the top of the travel, while the deck is well below. */
    void topLine(SheetModel.Travel travel) {
        if (!table.home(view) || reached(travel)) {
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
        Lettering look = pen.italic(pen.palette.ink2);
        String words = "deck pins at the top of the travel";
        double x = from + at.of(3, 2);
        double foot = y - at.of(9, 7);
        double w = pen.canvas.width(look, words);
        if (pen.canvas.free(x, foot - look.em(), w, 1.2 * look.em())) {
            pen.canvas.text(look, x, foot, words);
        }
    }

    /** Whether the machine is drawn as high as the top of the travel. */
    private boolean reached(SheetModel.Travel travel) {
        return deckTop() < table.heights().at(travel.top()) + at.of(10, 8);
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
            words(stray);
        } else if (!stray.second().isEmpty()) {
            new NotePainter(pen).draw(List.of(stray.second()));
        }
    }

    /**
     * From above over the middle of the table; else at its left, where the raised deck leaves room
     * for one line, the others at its foot.
     */
    private void words(SheetPainter.Stray stray) {
        Lettering title = pen.strong(17, 13, pen.palette.ink);
        Lettering text = pen.text(pen.palette.ink2);
        if (view.above) {
            double x = (at.tableLeft() + at.tableRight()) / 2;
            double y = at.of(138, 92);
            pen.canvas.text(title, x, y, stray.title(), Align.CENTRE);
            pen.canvas.text(text, x, y + at.of(24, 17), stray.second(), Align.CENTRE);
            return;
        }
        List<String> more = Arrays.asList(stray.second().split("; "));
        if (at.little) {
            overALowDeck(stray.title(), more);
            return;
        }
        pen.canvas.text(pen.over(title), at.left(40, 27), at.of(132, 92), stray.title());
        // The last lies lowest.
        Collections.reverse(more);
        new NotePainter(pen).draw(more);
    }

    /** What a little sheet has room for; the answer below it tells the most of it too. */
    private void overALowDeck(String words, List<String> more) {
        double y = 100;
        double end = Math.min(deckTop(), table.heights().at(scene.shape().top())) - 4;
        Lettering look = pen.over(pen.strong(17, 13, pen.palette.ink));
        for (String line : Stream.concat(Stream.of(words), more.stream()).toList()) {
            if (y < end) {
                pen.canvas.text(look, at.left(40, 27), y, line);
            }
            look = pen.over(pen.text(pen.palette.ink2));
            y += 16;
        }
    }

    /** Where the highest of the deck is drawn [px]. */
    private double deckTop() {
        var deck = scene.machine().deck();
        double z = table.pinHeight() + scene.lift().joints().z[scene.shape().stages()];
        return view.y(0, deck.width() / 2, z + deck.topAbovePins());
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
}
