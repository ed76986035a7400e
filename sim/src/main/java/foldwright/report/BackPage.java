// SPDX-License-Identifier: Apache-2.0
package foldwright.report;

import foldwright.report.draw.SvgSurface;
import foldwright.study.Assessment;
import foldwright.study.Assumption;
import foldwright.study.Caution;
import foldwright.study.Fact;
import java.util.List;

/** What can hurt, what was assumed, how far the numbers can be trusted, what the marks mean. */
final class BackPage {
    private final Html out;
    private final Assessment assessment;

    BackPage(Html out, Assessment assessment) {
        this.out = out;
        this.assessment = assessment;
    }

    void write() {
        out.raw("<section class=\"page\" id=\"cautions\">");
        cautions();
        facts();
        assumptions();
        trust();
        out.leaf(
                "p.legend",
                "A disc rests: holds. A lozenge stands on its point: tight, enough but less than the"
                        + " rule. A snapped square: fails, below 1×. An empty ring: not known."
                        + " Margin is what there is divided by what is needed, rounded down."
                        + " Heights are heights of the deck pins above the base pins.");
        out.close("section");
    }

    private void cautions() {
        out.leaf("h2", "Cautions");
        out.open("dl.cautions");
        for (Caution c : assessment.cautions()) {
            out.leaf("dt", c.title()).open("dd").text(c.words());
            if (!c.source().isEmpty()) {
                out.text(" ").leaf("small", c.source());
            }
            out.close("dd");
        }
        out.close("dl");
        out.leaf(
                "p",
                "These figures do not replace a risk assessment. Local codes and the rules of your"
                        + " trade apply; work on mains voltage and guards belongs to people licensed"
                        + " for it. Unplug, and block the deck, before reaching into the lift.");
    }

    private void facts() {
        out.leaf("h2", "Sizes and speeds").open("table.facts").open("tbody");
        for (Fact f : assessment.facts()) {
            out.open("tr").leaf("td", f.words()).leaf("td.n", f.value());
            out.open("td.w").formula(f.how()).close("td", "tr");
        }
        out.close("tbody", "table");
    }

    private void assumptions() {
        List<Assumption> all = assessment.assumptions();
        if (all.isEmpty()) {
            return;
        }
        out.leaf("h2", "Assumed, please measure");
        out.open("table.assumed").open("tbody");
        for (Assumption a : all) {
            out.open("tr").leaf("td", a.words()).leaf("td.n", a.value());
            out.leaf("td.w", a.measure())
                    .open("td.key")
                    .raw(breakable(a.keyPath()))
                    .close("td", "tr");
        }
        out.close("tbody", "table");
    }

    /** A key path that may be broken after its dots and nowhere else. */
    private static String breakable(String path) {
        return SvgSurface.escape(path).replace(".", ".<wbr>");
    }

    private void trust() {
        if (assessment.trust().isEmpty()) {
            return;
        }
        out.leaf("h2", "How far to trust the numbers").open("ul");
        for (Assessment.Trust t : assessment.trust()) {
            out.leaf("li", t.run() + ": " + t.words() + (t.met() ? "." : ". Beyond its bound."));
        }
        out.close("ul");
    }
}
