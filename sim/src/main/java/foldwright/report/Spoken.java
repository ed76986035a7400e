// SPDX-License-Identifier: Apache-2.0
package foldwright.report;

import foldwright.study.HeightPlot;
import foldwright.study.Numerals;
import foldwright.study.Shown;

/** What a plot says, in a sentence for those who do not see it. */
final class Spoken {
    private Spoken() {}

    static String of(HeightPlot plot) {
        int worst = plot.worst();
        String what = plot.caption().title() + " over the height, " + plot.caption().subtitle();
        if (worst < 0) {
            return what;
        }
        return what
                + "; worst margin "
                + Numerals.margin(plot.margin().at(worst))
                + " at "
                + Numerals.with(plot.height().at(worst), Shown.MILLIMETRE)
                + ", where "
                + Numerals.with(plot.needed().at(worst), plot.caption().unit())
                + " is needed";
    }
}
