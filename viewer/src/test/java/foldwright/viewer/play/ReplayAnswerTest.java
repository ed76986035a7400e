// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.play;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.machine.file.MachineFile;
import foldwright.run.RunColumn;
import foldwright.run.RunKind;
import foldwright.study.Check;
import foldwright.study.Numerals;
import foldwright.study.Question;
import foldwright.study.Shown;
import foldwright.study.Verdict;
import foldwright.viewer.Headless;
import foldwright.viewer.session.LiftEngine;
import foldwright.viewer.session.Results;
import foldwright.viewer.sheet.Playing;
import foldwright.viewer.sheet.SheetModel;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * While a replay is looked at, its numbers and those of the checks say of which moment they are.
 */
class ReplayAnswerTest {
    private static final double SPAN = 0.440;

    private static MachineFile plotter(String skewAllowed) throws Exception {
        MachineFile file = MachineFile.read(Headless.scene("class-plotter"));
        String text =
                file.text().replace("\"skew\": \"0.05 mm\"", "\"skew\": \"" + skewAllowed + '"');
        return MachineFile.read(file.name(), text);
    }

    private static SheetModel.Answer checks(MachineFile file) {
        LiftEngine engine = new LiftEngine();
        Results all = engine.whole(file.machine(), engine.curve(file.machine()), words -> {});
        return new SheetModel.Answer(Question.SKEW, all.of(Question.SKEW), "");
    }

    private static Playing.Mark mark(Reel reel, String words) {
        return reel.marks().stream().filter(m -> m.words().equals(words)).findFirst().orElseThrow();
    }

    /** The ringing of this path takes more than is allowed; steady starts do not. */
    @Test
    void theWorstSpeaksAndSaysWhereAndWhen() throws Exception {
        MachineFile file = plotter("0.05 mm");
        SheetModel.Answer checks = checks(file);
        assertThat(checks.verdict()).isEqualTo(Verdict.HOLDS);
        Reel reel = new Reel(RunMaker.run(file, RunKind.REPLAY, Optional.empty()));
        SheetModel.Answer answer = new ReplayAnswer(reel).with(checks);
        assertThat(answer.verdict()).isEqualTo(Verdict.FAILS);
        Playing.Mark worst = mark(reel, "largest skew");
        assertThat(worst.verdict()).contains(Verdict.FAILS);
        // The number is that of the run at the very moment that is named.
        reel.player().seek(worst.time());
        double then = SPAN * Math.abs(reel.now(RunColumn.SKEW));
        Check spoken = answer.worst().orElseThrow();
        assertThat(spoken.outcome().required().si()).isCloseTo(then, within(1e-12));
        String place =
                Numerals.fixed(worst.at(), 3) + "\u00a0m, " + Numerals.fixed(worst.time(), 2);
        assertThat(spoken.outcome().worst().text()).contains(place);
        String sum = checks.worst().orElseThrow().outcome().required().text();
        assertThat(answer.beside()).contains(place).endsWith("Without ringing " + sum + ".");
        // And the sheet opens at that moment.
        assertThat(reel.worst()).isEqualTo(worst.time());
    }

    @Test
    void aReplayThatHoldsStandsBesideTheCheck() throws Exception {
        MachineFile file = plotter("0.5 mm");
        Reel reel = new Reel(RunMaker.run(file, RunKind.REPLAY, Optional.empty()));
        SheetModel.Answer checks = checks(file);
        SheetModel.Answer answer = new ReplayAnswer(reel).with(checks);
        Check spoken = answer.worst().orElseThrow();
        assertThat(spoken.id()).isEqualTo("skew.end");
        double most = SPAN * reel.run().table().largest(RunColumn.SKEW);
        assertThat(answer.beside())
                .startsWith(
                        "Without ringing. In this replay up to "
                                + Numerals.with(most, Shown.MILLIMETRE))
                .contains(Numerals.fixed(mark(reel, "largest skew").at(), 3) + "\u00a0m");
    }

    @Test
    void theSameAnswersStayTheSameObjects() throws Exception {
        MachineFile file = plotter("0.05 mm");
        Reel reel = new Reel(RunMaker.run(file, RunKind.REPLAY, Optional.empty()));
        SheetModel.Cards cards =
                new SheetModel.Cards(
                        java.util.Arrays.stream(Question.values())
                                .map(q -> new SheetModel.Answer(q, java.util.List.of(), "waiting"))
                                .toList(),
                        Question.SKEW);
        assertThat(reel.answers(cards)).isSameAs(reel.answers(cards));
        // Before the checks are known the replay answers alone.
        assertThat(reel.answers(cards).of(Question.SKEW).verdict()).isEqualTo(Verdict.FAILS);
    }
}
