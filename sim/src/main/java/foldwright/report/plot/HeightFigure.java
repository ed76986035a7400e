// SPDX-License-Identifier: Apache-2.0
package foldwright.report.plot;

import foldwright.report.draw.Align;
import foldwright.report.draw.Box;
import foldwright.report.draw.Surface;
import foldwright.study.HeightPlot;

/** Margin ribbon and need side by side on one height axis, with their titles. */
public final class HeightFigure {
    /** Room above the axis for titles and tick labels. */
    public static final double HEAD = 62;

    /** Room below the axis. */
    public static final double FOOT = 40;

    private static final double AXIS = 88;
    private static final double RIBBON = 72;
    private static final double GAP = 34;

    private HeightFigure() {}

    /**
     * Draws the figure.
     *
     * @param frame the whole place, lettering included; at least 320 wide
     */
    public static void draw(Surface on, Box frame, HeightPlot plot) {
        double top = frame.y() + HEAD;
        double bottom = frame.bottom() - FOOT;
        Scale height = new Scale(plot.height().first(), plot.height().last(), bottom, top);
        Box ribbon = new Box(frame.x() + AXIS, top, RIBBON, bottom - top);
        double left = ribbon.right() + GAP;
        Box curve = new Box(left, top, frame.right() - left - 12, bottom - top);
        Type type = new Type(on.palette());
        on.text(ribbon.x(), frame.y() + 15, "Margin", type.title());
        String unit = plot.caption().unit().symbol();
        String title = plot.caption().title() + (unit.isEmpty() ? "" : ", " + unit);
        double room = frame.right() - left;
        if (type.title().width(title) <= room) {
            on.text(left, frame.y() + 15, title, type.title());
        } else {
            on.text(frame.right(), frame.y() + 15, title, type.title().aligned(Align.END));
        }
        if (type.subtitle().width(plot.caption().subtitle()) <= room) {
            on.text(left, frame.y() + 32, plot.caption().subtitle(), type.subtitle());
        }
        new MarginRibbon(on, height, ribbon).draw(plot);
        new NeedPlot(on, height, curve, plot).draw();
    }
}
