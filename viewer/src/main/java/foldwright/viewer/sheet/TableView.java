// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

import foldwright.machine.Box;
import foldwright.report.plot.Scale;
import foldwright.viewer.render.View;
import foldwright.viewer.scene.LiftShape;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.scene.Overhang;

/**
 * How the machine stands on the table of a layout: scale and origin so that the top pose fits, and
 * the height axis that goes with it. The picture does not zoom while the deck rises. Where the
 * travel is too short for a readable scale, the axis is drawn taller than the machine and the level
 * line bends; {@link #stretch} says by how much.
 */
public final class TableView {
    private final Layout at;
    private final double scale;
    private final double centreX;
    private final double x0;
    private final double y0;
    private final double pinY;
    private final double pinHeight;
    private final double stretch;
    private final Scale heights;
    private final double reach;
    private final double[] centre;
    private final double planScale;

    public TableView(Layout layout, MachineScene scene) {
        this(layout, scene, null, 0);
    }

    /**
     * With a second machine to the right of the first; heights are those of the first.
     *
     * @param second may be null
     * @param offset how far it stands to the right [m]
     */
    public TableView(Layout layout, MachineScene scene, MachineScene second, double offset) {
        at = layout;
        LiftShape shape = scene.shape();
        var machine = scene.machine();
        double flat = shape.flat();
        double top = shape.top();
        pinHeight = machine.base().pinHeight();
        double baseLeft = -machine.base().pinInset();
        double width = Math.max(machine.base().width(), machine.deck().width());
        double own = Math.max(machine.base().length(), machine.deck().length());
        double more = second == null ? 0 : right(second, offset) - right(scene, 0);
        Overhang out = (second == null ? scene : second).overhang();
        // Drawn deeper, the base's far corner stands out to the right as well.
        double beyond = Math.max(0, out.length() + homeX(out.swing()) - 0.5 * homeX(width));
        double length = own + Math.max(0, more);
        double tallest = second == null ? top : Math.max(top, second.shape().top());
        pinY = -shape.outside();
        double boxGrow = machine.box().map(b -> Math.max(0, b.length() - length) / 2).orElse(0.0);
        // What is drawn behind the end of the base must clear the tab, which the base runs below.
        double clear = beyond > 0 ? at.of(40, 27) : 0;
        double spanX = length + homeX(width) + Math.max(beyond, 1.2 * boxGrow);
        double rise = scene.machine().deck().topAbovePins() + 0.235 * (width / 2 - pinY);
        double boxDrop = machine.box().map(b -> Math.max(0, b.width() - width) / 2).orElse(0.0);
        double drop = flat + pinHeight + 0.235 * (width / 2 + boxDrop + pinY);
        double room = at.tableBottom() - at.of(24, 16) - at.tableTop();
        double s =
                Math.min(
                        (at.tableRight() - clear - at.tableLeft()) / spanX,
                        room / (tallest - flat + drop + rise));
        // The scale keeps its usual height where the machine allows it.
        scale = Math.min(s, (at.scaleFlat() - at.scaleTop()) / (top - flat));
        double yFlat = Math.min(at.scaleFlat(), at.tableBottom() - at.of(24, 16) - scale * drop);
        double least = 0.62 * (at.scaleFlat() - at.scaleTop());
        double tall = scale * (top - flat);
        if (tall < least) {
            stretch = (at.scaleFlat() - at.scaleTop()) / tall;
            heights = new Scale(flat, top, at.scaleFlat(), at.scaleTop());
            double slack =
                    at.tableBottom()
                            - at.of(24, 16)
                            - scale * (drop + top - flat + rise)
                            - at.tableTop();
            yFlat -= Math.max(0, 0.35 * slack);
        } else {
            stretch = 1;
            heights = new Scale(flat, top, yFlat, yFlat - tall);
        }
        y0 = yFlat + scale * (flat + pinHeight + 0.235 * pinY);
        double middle = baseLeft + (machine.base().length() + Math.max(0, more) + beyond) / 2;
        centreX = (at.tableLeft() + at.tableRight() - clear) / 2 - at.of(8, 4);
        x0 = centreX - scale * middle;
        reach = 1.6 * Math.max(length + width, 2 * (top + pinHeight));
        double planEnds = length + Math.max(beyond, 2 * out.length() - beyond);
        double planWide = Math.max(planEnds, machine.box().map(Box::length).orElse(0.0));
        double planHigh =
                Math.max(width, machine.box().map(Box::width).orElse(0.0))
                        + 0.3 * (top + pinHeight);
        planScale =
                0.94
                        * Math.min(
                                (at.tableRight() - at.tableLeft()) / planWide,
                                (at.tableBottom() - at.of(150, 100) - at.of(40, 24)) / planHigh);
        centre = new double[] {middle, 0, pinHeight + (flat + top) / 4};
    }

    private static double right(MachineScene scene, double offset) {
        var base = scene.machine().base();
        return offset + base.length() - base.pinInset();
    }

    /** How far to the right a depth is drawn at home [m]. */
    private static double homeX(double y) {
        return new View(View.Stance.home(), 1, 0, 0).x(0, y, 0);
    }

    /** Heights of the deck pins [m] to y [px]. */
    public Scale heights() {
        return heights;
    }

    /** How much taller the axis is drawn than the machine; 1 where level is level. */
    public double stretch() {
        return stretch;
    }

    /** Depths to be kept [m]. */
    public double reach() {
        return reach;
    }

    /** The view of a stance, enlarged about a point and moved. */
    public View view(View.Stance stance, double zoom, double moveX, double moveY) {
        boolean plan = stance.plan() == View.Stance.Plan.ABOVE;
        double s = (plan ? planScale : scale) * zoom;
        View plain = new View(stance, s, 0, 0);
        View home = new View(View.Stance.home(), scale, x0, y0);
        // The middle of the machine stays where it was at home; from above it lies in the middle of
        // the table.
        double cx = plan ? centreX : home.x(centre[0], centre[1], centre[2]);
        double cy =
                plan
                        ? (at.of(150, 100) + at.tableBottom()) / 2
                        : home.y(centre[0], centre[1], centre[2]);
        double x = cx - plain.x(centre[0], centre[1], centre[2]);
        double y = cy - plain.y(centre[0], centre[1], centre[2]);
        return new View(stance, s, x + moveX, y + moveY);
    }

    /** y across the machine of the pins the level line starts from [m]. */
    double pinY() {
        return pinY;
    }

    double pinHeight() {
        return pinHeight;
    }

    /**
     * The lowest of the corners of the box's outline in the picture, the front left one first [m].
     */
    static double[] nearestCorner(Box box, MachineScene scene, View view) {
        var base = scene.machine().base();
        double cx = -base.pinInset() + base.length() / 2;
        double lowestX = cx - 0.5 * box.length();
        double lowestY = -0.5 * box.width();
        for (int i = 1; i < 4; i++) {
            double x = cx + (i % 2 == 0 ? -0.5 : 0.5) * box.length();
            double y = (i / 2 == 0 ? -0.5 : 0.5) * box.width();
            if (view.y(x, y, 0) > view.y(lowestX, lowestY, 0) + 1) {
                lowestX = x;
                lowestY = y;
            }
        }
        return new double[] {lowestX, lowestY};
    }

    /** Whether machine and height scale share their heights in a view. */
    boolean home(View view) {
        double flat = heights.low();
        double top = heights.high();
        return stretch == 1
                && Math.abs(view.y(0, pinY, pinHeight + flat) - heights.at(flat)) < 1
                && Math.abs(view.y(0, pinY, pinHeight + top) - heights.at(top)) < 1;
    }
}
