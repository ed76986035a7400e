// SPDX-License-Identifier: Apache-2.0
package foldwright.report;

import foldwright.report.draw.Palette;
import foldwright.study.Numerals;
import foldwright.study.Share;
import foldwright.study.Split;
import java.util.List;
import java.util.Locale;

/** What makes the load of one part: a bar, a value and a percentage a cause, and their sum. */
final class ShareTable {
    /** Units of the drawing across which the bars may reach. */
    private static final double ROOM = 100;

    private final Html out;
    private final Palette palette;
    private final Split split;

    /** Units of the drawing for each SI unit of the load. */
    private final double scale;

    /** Where a load of nothing lies. */
    private final double zero;

    private ShareTable(Html out, Palette palette, Split split) {
        this.out = out;
        this.palette = palette;
        this.split = split;
        double most = 0;
        double least = 0;
        for (Share s : split.told()) {
            most = Math.max(most, s.amount().si());
            least = Math.min(least, s.amount().si());
        }
        scale = most > least ? ROOM / (most - least) : 0;
        zero = -least * scale;
    }

    /** Writes the table. */
    static void write(Html out, Palette palette, Split split) {
        new ShareTable(out, palette, split).write();
    }

    private void write() {
        List<Share> told = split.told();
        boolean relieved = told.stream().anyMatch(s -> s.amount().si() < 0);
        out.open("table.causes").open("caption").text("What makes the " + split.words());
        out.text(relieved ? "; bars to the left relieve it" : "").close("caption").open("tbody");
        for (Share s : told) {
            out.open("tr").leaf("td", s.name());
            bar(s.amount().si(), palette.cause(s.cause()).hex());
            out.leaf("td.n", s.amount().text()).leaf("td.n", percent(s)).close("tr");
        }
        out.open("tr.sum").leaf("td", "together").leaf("td", "");
        out.leaf("td.n", split.whole().text()).leaf("td", "").close("tr");
        out.close("tbody", "table");
    }

    private String percent(Share share) {
        return split.part(share).isPresent()
                ? Numerals.percent(split.part(share).getAsDouble())
                : "";
    }

    private void bar(double load, String hex) {
        double from = zero + scale * Math.min(0, load);
        double width = Math.max(0.5, scale * Math.abs(load));
        out.open("td.bar");
        out.raw(
                String.format(
                        Locale.ROOT,
                        "<svg viewBox=\"0 0 100 10\" preserveAspectRatio=\"none\""
                                + " aria-hidden=\"true\"><path d=\"M%.1f 1h%.1fv8h-%.1fz\""
                                + " fill=\"%s\"/><path d=\"M%.1f 0v10\" class=\"zero\"/></svg>",
                        from,
                        width,
                        width,
                        hex,
                        zero));
        out.close("td");
    }
}
