// SPDX-License-Identifier: Apache-2.0
package foldwright.report.plot;

import foldwright.report.draw.Box;
import foldwright.report.draw.Surface;
import foldwright.study.HeightPlot;

/** Scales and titles for figures put together outside this package. */
public final class Scales {
    private Scales() {}

    /** Heights of a plot over a box: flat at its bottom, top of the travel at its top. */
    public static Scale height(HeightPlot plot, Box box) {
        return new Scale(plot.height().first(), plot.height().last(), box.bottom(), box.y());
    }

    /** The two lines over a plot. */
    public static void title(Surface on, double x, String title, String subtitle) {
        Type type = new Type(on.palette());
        on.text(x, 15, title, type.title());
        on.text(x, 32, subtitle, type.subtitle());
    }
}
