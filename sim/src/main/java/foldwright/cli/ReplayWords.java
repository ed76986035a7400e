// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import foldwright.gantry.model.BlockLoads;
import foldwright.gantry.model.ErrorSplit;
import foldwright.gantry.replay.ReplayResult;
import foldwright.machine.Machine;
import foldwright.machine.gantry.Block;
import foldwright.machine.gantry.Gantry;
import foldwright.motion.IsoReader;
import foldwright.motion.ReadSummary;
import foldwright.motion.ReaderSettings;
import foldwright.study.Numerals;
import foldwright.study.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** The lines of a replay's summary below its table. */
final class ReplayWords {
    private ReplayWords() {}

    static List<String> lines(ReplayResult r, ToolpathArgument toolpath, Machine machine) {
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
        Gantry gantry = machine.gantry().orElseThrow();
        out.add(blocks(r.worstSkew().blocks(), gantry));
        out.add(
                r.steps()
                        + " steps of "
                        + Numerals.with(r.stability().step(), Shown.SECOND)
                        + ", halved "
                        + r.stability().halvings()
                        + " times to stay stable");
        toolpath.reader().map(IsoReader::summary).ifPresent(s -> read(s, out));
        out.add(
                "places are those of the carriage; X 0 Y 0 of the toolpath lies at "
                        + millimetres(gantry.bridge().travel().low())
                        + ", "
                        + millimetres(gantry.legs().travel().low())
                        + " mm");
        String deck = DeckWords.fixed(machine);
        if (!deck.isEmpty()) {
            out.add(Prose.forTerminal().of(deck));
        }
        return out;
    }

    private static String millimetres(double metres) {
        return Numerals.fixed(Shown.MILLIMETRE.fromSi(metres), 0);
    }

    /** Loads of one block at the largest skew beside its static ratings, where these are given. */
    private static String blocks(BlockLoads b, Gantry gantry) {
        Block leg = gantry.legs().guide().block();
        Block bridge = gantry.bridge().guide().block();
        double moment = Math.max(b.carriageYaw(), b.carriageTilt());
        return "at the largest skew each leg block takes "
                + load(b.legSide(), leg.staticRating(), Shown.NEWTON)
                + " and "
                + load(b.legYaw(), leg.staticMoment(), Shown.NEWTON_METRE)
                + ", each bridge block "
                + load(b.carriageSide(), bridge.staticRating(), Shown.NEWTON)
                + " and "
                + load(moment, bridge.staticMoment(), Shown.NEWTON_METRE);
    }

    private static String load(double value, OptionalDouble rating, Shown unit) {
        return Numerals.with(value, unit)
                + (rating.isPresent()
                        ? " of " + Numerals.with(rating.getAsDouble(), unit)
                        : " (no rating given)");
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
        if (s.movesBeforeFeed() > 0) {
            out.add(
                    s.movesBeforeFeed()
                            + " feed moves came before any F word and ran at "
                            + Numerals.with(
                                    ReaderSettings.standard().fallbackFeed(),
                                    Shown.MILLIMETRE_PER_SECOND));
        }
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
