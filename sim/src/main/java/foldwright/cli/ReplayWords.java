// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import foldwright.gantry.model.ErrorSplit;
import foldwright.gantry.replay.ReplayResult;
import foldwright.motion.IsoReader;
import foldwright.motion.ReadSummary;
import foldwright.study.Numerals;
import foldwright.study.Shown;
import java.util.ArrayList;
import java.util.List;

/** The lines of a replay's summary below its table. */
final class ReplayWords {
    private ReplayWords() {}

    static List<String> lines(ReplayResult r, ToolpathArgument toolpath) {
        List<String> out = new ArrayList<>();
        ErrorSplit e = r.worstError().error();
        out.add("the largest tool error is made of, as vectors:");
        out.add(
                "  belt stretch "
                        + mm(e.beltStretch())
                        + ", skew by play "
                        + mm(e.skewPlay())
                        + ", skew by flex "
                        + mm(e.skewFlex()));
        out.add(
                "  squareness "
                        + mm(e.squareness())
                        + ", motor lag "
                        + mm(e.motorLag())
                        + ", blocks sideways "
                        + mm(e.blockGive()));
        out.add("  beam bending " + mm(e.bending()) + ", carriage twist " + mm(e.carriageTwist()));
        out.add(
                "belts "
                        + Numerals.with(r.leastTension(), Shown.NEWTON)
                        + " to "
                        + Numerals.with(r.mostTension(), Shown.NEWTON)
                        + "; slack "
                        + r.events().slackSpells()
                        + " times, teeth climbing "
                        + r.events().toothJumps()
                        + " times, steps lost "
                        + r.events().lostSteps());
        out.add(
                "rails hold "
                        + Numerals.with(r.guideMoment(), Shown.NEWTON_METRE)
                        + " against skew; carriage blocks hold "
                        + Numerals.with(r.carriageForce(), Shown.NEWTON)
                        + " and "
                        + Numerals.with(r.carriageMoment(), Shown.NEWTON_METRE));
        out.add(
                r.steps()
                        + " steps of "
                        + Numerals.with(r.stability().step(), Shown.SECOND)
                        + ", halved "
                        + r.stability().halvings()
                        + " times to stay stable");
        toolpath.reader().map(IsoReader::summary).ifPresent(s -> read(s, out));
        return out;
    }

    private static void read(ReadSummary s, List<String> out) {
        long arcs = s.clockwiseArcs() + s.counterclockwiseArcs();
        out.add(
                "read "
                        + s.lines()
                        + " lines: "
                        + (s.rapidLines() + s.feedLines())
                        + " straight moves, "
                        + arcs
                        + " arcs, "
                        + s.pauses()
                        + " pauses");
        for (ReadSummary.Skipped word : s.skipped()) {
            out.add(
                    "left out "
                            + word.word()
                            + ", "
                            + word.count()
                            + " times, first in line "
                            + word.firstLine());
        }
    }

    private static String mm(ErrorSplit.Offset o) {
        return Numerals.with(o.size(), Shown.MILLIMETRE);
    }
}
