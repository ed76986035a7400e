// SPDX-License-Identifier: Apache-2.0
package foldwright.report;

import foldwright.report.draw.Box;
import foldwright.report.draw.Colour;
import foldwright.report.draw.Dash;
import foldwright.report.draw.Face;
import foldwright.report.draw.Fill;
import foldwright.report.draw.Ground;
import foldwright.report.draw.Path;
import foldwright.report.draw.Pen;
import foldwright.report.draw.Surface;
import foldwright.report.draw.TextStyle;

/** The machine from the side, to scale: flat in ink, open in dashes. */
final class ElevationDrawing {
    private final Surface on;
    private final Elevation e;
    private final double scale;
    private final double left;
    private final double pins;

    /**
     * A drawing.
     *
     * @param scale units a metre
     * @param left x of the left end of the base
     * @param pins y of the base pins
     */
    ElevationDrawing(Surface on, Elevation e, double scale, double left, double pins) {
        this.on = on;
        this.e = e;
        this.scale = scale;
        this.left = left;
        this.pins = pins;
    }

    void draw() {
        ghost();
        base();
        deckFlat();
        arms(e.flat());
        double table = pins + scale * e.base().pinHeight();
        on.stroke(
                Path.line(left - 6, table + 1, left + scale * longest() + 6, table + 1),
                Pen.of(ink(Ground.INK), 2));
        TextStyle hint = TextStyle.of(Face.SANS_ITALIC, 13, ink(Ground.INK2));
        on.text(left, table + 20, "to scale: flat, and dashed at the top of the travel", hint);
    }

    private double longest() {
        return Math.max(e.base().length(), e.base().inset() - e.deck().inset() + e.deck().length());
    }

    private double x(double metres) {
        return left + scale * metres;
    }

    private double y(double metres) {
        return pins - scale * metres;
    }

    private Colour ink(Ground role) {
        return on.palette().ground(role);
    }

    private void base() {
        double height = 0.62 * e.base().pinHeight();
        Box tray =
                new Box(
                        x(0),
                        y(-e.base().pinHeight() + height),
                        scale * e.base().length(),
                        scale * height);
        part(Path.box(tray), "frame");
        for (double foot :
                new double[] {
                    e.base().inset(),
                    e.base().inset() + e.linkage().geometry().spread(e.linkage().angle(e.flat()), 0)
                }) {
            double half = 0.5 * e.linkage().depth() + 0.004;
            part(
                    Path.polygon(
                            x(foot - half), tray.y(),
                            x(foot - half), y(0.3 * half),
                            x(foot + half), y(0.3 * half),
                            x(foot + half), tray.y()),
                    "steel");
        }
    }

    private void part(Path outline, String material) {
        on.fill(outline, Fill.of(on.palette().material(material)));
        on.stroke(outline, Pen.of(ink(Ground.INK), 1));
    }

    private double deckLeft() {
        return e.base().inset() - e.deck().inset();
    }

    private double plate() {
        return Math.min(0.010, 0.4 * (e.deck().topAbovePins() + e.deck().underside()));
    }

    private Path deckPlate(double height) {
        double low = height - e.deck().underside();
        return Path.box(
                new Box(
                        x(deckLeft()),
                        y(low + plate()),
                        scale * e.deck().length(),
                        scale * plate()));
    }

    /** Rails and bridge on the deck, up to its highest point. */
    private Path gantry(double height) {
        double low = height - e.deck().underside() + plate();
        double high = height + e.deck().topAbovePins();
        double rail = low + 0.3 * (high - low);
        double l = deckLeft();
        double length = e.deck().length();
        return Path.polygon(
                x(l + 0.18 * length), y(low),
                x(l + 0.18 * length), y(rail),
                x(l + 0.41 * length), y(rail),
                x(l + 0.41 * length), y(high),
                x(l + 0.59 * length), y(high),
                x(l + 0.59 * length), y(rail),
                x(l + 0.82 * length), y(rail),
                x(l + 0.82 * length), y(low));
    }

    private void deckFlat() {
        part(gantry(e.flat()), "aluminium");
        part(deckPlate(e.flat()), "frame");
    }

    /** x of the pin at the fixed end of a level [m]. */
    private double start(double angle, int level) {
        return e.base().inset() + e.linkage().geometry().levelStart(angle, level);
    }

    /** x of the pin at the sliding end of a level [m]. */
    private double end(double angle, int level) {
        return start(angle, level) + e.linkage().geometry().spread(angle, level);
    }

    private double level(double angle, int level) {
        return e.linkage().geometry().levelHeight(angle, level);
    }

    private void arms(double height) {
        double a = e.linkage().angle(height);
        double r = 0.5 * scale * e.linkage().depth();
        for (int k = 0; k < e.linkage().stages(); k++) {
            capsule(x(end(a, k)), y(level(a, k)), x(start(a, k + 1)), y(level(a, k + 1)), r);
            capsule(x(start(a, k)), y(level(a, k)), x(end(a, k + 1)), y(level(a, k + 1)), r);
        }
        for (int k = 0; k <= e.linkage().stages(); k++) {
            pin(x(start(a, k)), y(level(a, k)), r);
            pin(x(end(a, k)), y(level(a, k)), r);
            if (k < e.linkage().stages()) {
                crossing(a, k, r);
            }
        }
    }

    /** The centre pin: where the two arms of a stage cross. */
    private void crossing(double a, int k, double r) {
        double below = end(a, k) - start(a, k);
        double above = end(a, k + 1) - start(a, k + 1);
        double part = below / (below + above);
        double across = start(a, k) + part * (end(a, k + 1) - start(a, k));
        pin(x(across), y(level(a, k) + part * (level(a, k + 1) - level(a, k))), r);
    }

    private void capsule(double xa, double ya, double xb, double yb, double r) {
        double along = Math.atan2(yb - ya, xb - xa);
        Path path = new Path();
        for (int i = 0; i <= 10; i++) {
            double a = along - Math.PI / 2 + Math.PI * i / 10;
            path.point(xb + r * Math.cos(a), yb + r * Math.sin(a));
        }
        for (int i = 0; i <= 10; i++) {
            double a = along + Math.PI / 2 + Math.PI * i / 10;
            path.point(xa + r * Math.cos(a), ya + r * Math.sin(a));
        }
        part(path.close(), "aluminium");
    }

    private void pin(double x, double y, double r) {
        on.fillCircle(x, y, 0.62 * r, Fill.of(on.palette().material("bronze")));
        on.strokeCircle(x, y, 0.62 * r, Pen.of(ink(Ground.INK), 0.8));
    }

    private void ghost() {
        Pen pen = Pen.of(ink(Ground.INK3), 1.2).dashed(Dash.DASHED);
        on.stroke(deckPlate(e.top()), pen);
        on.stroke(gantry(e.top()), pen);
        double a = e.linkage().angle(e.top());
        Path lines = new Path();
        for (int k = 0; k < e.linkage().stages(); k++) {
            lines.start(x(start(a, k)), y(level(a, k)));
            lines.point(x(end(a, k + 1)), y(level(a, k + 1)));
            lines.start(x(end(a, k)), y(level(a, k)));
            lines.point(x(start(a, k + 1)), y(level(a, k + 1)));
        }
        on.stroke(lines, pen);
        e.tool().ifPresent(reach -> tool(reach, pen));
    }

    private void tool(double reach, Pen pen) {
        double middle = deckLeft() + 0.5 * e.deck().length();
        double high = e.top() - e.deck().underside();
        double half = Math.min(0.022, 0.5 * reach + 0.006);
        on.stroke(
                Path.polygon(
                        x(middle - half), y(high),
                        x(middle + half), y(high),
                        x(middle + half), y(high - 0.7 * reach),
                        x(middle + 0.3 * half), y(high - 0.7 * reach),
                        x(middle), y(high - reach),
                        x(middle - 0.3 * half), y(high - 0.7 * reach),
                        x(middle - half), y(high - 0.7 * reach)),
                pen);
    }
}
