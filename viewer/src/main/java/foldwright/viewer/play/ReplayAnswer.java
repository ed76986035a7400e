// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.play;

import foldwright.machine.Limits;
import foldwright.machine.Machine;
import foldwright.run.RunColumn;
import foldwright.run.RunEvent;
import foldwright.run.RunTable;
import foldwright.study.Amount;
import foldwright.study.Check;
import foldwright.study.Grounds;
import foldwright.study.HandCard;
import foldwright.study.Numerals;
import foldwright.study.Outcome;
import foldwright.study.Place;
import foldwright.study.Question;
import foldwright.study.Remedy;
import foldwright.study.Shown;
import foldwright.viewer.sheet.Playing;
import foldwright.viewer.sheet.SheetModel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The answer to how far it skews while a replay is looked at. The checks of the machine know steady
 * starts, the replay its own ringing, so they find different sizes at different moments: the worst
 * speaks, says where and when it was found, and what the other found stands below it.
 */
final class ReplayAnswer {
    private static final String SUM = "skew.end";

    private final Reel reel;
    private final Machine machine;

    ReplayAnswer(Reel reel) {
        this.reel = reel;
        machine = reel.run().machine().machine();
    }

    /** The answer of the checks with that of the replay. */
    SheetModel.Answer with(SheetModel.Answer checks) {
        List<Check> all = new ArrayList<>(checks.checks());
        Optional<Check> sum = all.stream().filter(c -> c.id().equals(SUM)).findFirst();
        Limits limits = machine.limits();
        double span = machine.gantry().orElseThrow().legs().span();
        RunTable table = reel.run().table();
        double skew = span * table.largest(RunColumn.SKEW);
        Check mine =
                check(
                        RunEvent.Kind.LARGEST_SKEW,
                        "Skew in this replay",
                        skew,
                        limits.skew().orElse(Double.NaN),
                        sum.map(Check::remedies).orElse(List.of()));
        Check tool =
                check(
                        RunEvent.Kind.LARGEST_ERROR,
                        "Tool beside its command in this replay",
                        reel.track().orElseThrow().largest(),
                        limits.toolError().orElse(Double.NaN),
                        List.of());
        all.add(mine);
        all.add(tool);
        SheetModel.Answer answer =
                new SheetModel.Answer(checks.question(), all, checks.waiting(), "");
        boolean replaySpeaks =
                answer.worst().map(Check::id).filter(id -> id.startsWith("replay.")).isPresent();
        String beside = replaySpeaks ? found(answer.worst().orElseThrow(), sum) : other(mine);
        return new SheetModel.Answer(checks.question(), all, checks.waiting(), beside);
    }

    private static String found(Check spoken, Optional<Check> sum) {
        String here = "In this " + spoken.outcome().worst().words() + ".";
        return sum.map(c -> here + " Without ringing " + c.outcome().required().text() + ".")
                .orElse(here);
    }

    private String other(Check mine) {
        return "Without ringing. In this replay up to "
                + mine.outcome().required().text()
                + ", at "
                + at(RunEvent.Kind.LARGEST_SKEW)
                + ".";
    }

    private Check check(
            RunEvent.Kind kind, String title, double found, double allowed, List<Remedy> remedies) {
        Shown unit = Shown.MILLIMETRE;
        return new Check(
                "replay." + kind.word(),
                Question.SKEW,
                new Check.Text(title, strays()),
                Outcome.of(
                        Amount.of(found, unit),
                        Amount.of(allowed, unit),
                        Place.anywhere("replay at " + at(kind))),
                Grounds.of(new HandCard(List.of(), "")),
                remedies,
                Optional.empty());
    }

    private String strays() {
        return "The tool strays up to "
                + Numerals.with(reel.track().orElseThrow().largest(), Shown.MILLIMETRE)
                + ", at "
                + at(RunEvent.Kind.LARGEST_ERROR)
                + ".";
    }

    /** Way and time of an event of the run, e.g. "0.161 m, 2.140 s". */
    private String at(RunEvent.Kind kind) {
        return reel.marks().stream()
                .filter(m -> m.words().equals(kind.words()))
                .findFirst()
                .map(ReplayAnswer::place)
                .orElse("an unknown place");
    }

    private static String place(Playing.Mark mark) {
        return Numerals.fixed(mark.at(), 3)
                + "\u00a0m, "
                + Numerals.fixed(mark.time(), 2)
                + "\u00a0s";
    }
}
