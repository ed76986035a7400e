// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.play;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import foldwright.machine.file.MachineFile;
import foldwright.run.RunColumn;
import foldwright.run.RunKind;
import foldwright.study.Verdict;
import foldwright.viewer.Headless;
import foldwright.viewer.scene.GantryMotion;
import foldwright.viewer.sheet.Playing;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What of a run is put on the sheet, without drawing it. */
class ReelTest {
    private static Reel replay;
    private static Reel stalls;

    @BeforeAll
    static void run() throws Exception {
        MachineFile skews = MachineFile.read(Headless.scene("class-plotter-skews"));
        replay = new Reel(RunMaker.run(skews, RunKind.REPLAY, Optional.empty()));
        MachineFile binds = MachineFile.read(Headless.scene("van-bench-binds"));
        stalls = new Reel(RunMaker.run(binds, RunKind.UNFOLD, Optional.empty()));
    }

    private static Playing.Way way() {
        return replay.track().orElseThrow().sheet(replay.player().time(), 20, List.of());
    }

    @Test
    void theWayIsThatOfTheToolpath() {
        // Corner of the travel to (60, 150), the outline, two quick moves and the hole.
        double outline = 80 + 90 + 120 + 90 + 80 + 80 + 80 + 40 + 120 + 40 + 80 + 80;
        double quick = Math.hypot(60, 150) + Math.hypot(100, 40) + Math.hypot(100, 40);
        double hole = 2 * Math.PI * 40;
        // Corners are rounded by up to 0.02 mm and the circle is seen in chords.
        assertThat(way().end() * 1e3).isCloseTo(outline + quick + hole, within(1.0));
    }

    @Test
    void cornersAreNumberedWhereThePathTurns() {
        List<Playing.Corner> corners = way().corners();
        // Start, start of the outline, its twelve corners (the last is the first again), the hole's
        // start and end.
        assertThat(corners).hasSize(16);
        assertThat(corners.get(2).x()).isCloseTo(-0.200 + 0.140, within(2e-4));
        assertThat(corners.get(2).y()).isCloseTo(0.050 + 0.150, within(2e-4));
        assertThat(corners.get(3).way() - corners.get(2).way()).isCloseTo(0.090, within(2e-4));
    }

    @Test
    void placeAndTimeBelongTogether() {
        for (double place : new double[] {0.1, 0.4, 0.9, 1.3}) {
            double time = replay.timeAt(place).orElseThrow();
            assertThat(replay.track().orElseThrow().wayAt(time)).isCloseTo(place, within(1e-9));
        }
    }

    @Test
    void largerDrawingMovesTheToolByItsErrorTimesTheFactor() {
        replay.player().seek(replay.worst());
        GantryMotion.Place sent = replay.place(0);
        assertThat(sent.skew()).isZero();
        GantryMotion.Place drawn = replay.place(10);
        double x = Math.cos(drawn.skew()) * drawn.x();
        double y = drawn.y() + Math.sin(drawn.skew()) * drawn.x();
        // To the first order in the drawn angle of 0.05 rad.
        assertThat(x - sent.x()).isCloseTo(10 * replay.now(RunColumn.ERROR_X), within(3e-4));
        assertThat(y - sent.y()).isCloseTo(10 * replay.now(RunColumn.ERROR_Y), within(6e-4));
    }

    @Test
    void theFittingFactorKeepsTheBridgeWithinThePicture() {
        double turn = replay.fitting() * replay.run().table().largest(RunColumn.SKEW);
        assertThat(turn).isBetween(0.02, 0.25);
    }

    @Test
    void aStallIsAMarkThatFails() {
        assertThat(stalls.run().outcome()).isEqualTo("stalled");
        assertThat(stalls.marks())
                .anyMatch(
                        m ->
                                m.words().equals("stalls")
                                        && m.verdict().equals(Optional.of(Verdict.FAILS)));
        // The deck never gets to 200 mm.
        assertThat(stalls.timeAt(0.200)).isEmpty();
        assertThat(stalls.words()).isEqualTo("unfolding as computed: stalled");
    }

    @Test
    void whatCannotBeRunIsSaidInOneSentence() throws Exception {
        MachineFile skews = MachineFile.read(Headless.scene("class-plotter-skews"));
        assertThatThrownBy(
                        () ->
                                RunMaker.run(
                                        skews, RunKind.REPLAY, Optional.of(Path.of("no-such.nc"))))
                .isInstanceOf(RunMaker.NoRunException.class)
                .hasMessageContaining("no-such.nc: no such file");
    }

    @Test
    void theMarginOfAReplayFallsWithTheAcceleration() throws Exception {
        MachineFile good = MachineFile.read(Headless.scene("class-plotter"));
        double asked = RunMaker.margin(good, Optional.empty());
        String slow =
                good.text().replace("\"acceleration\": \"4 m/s2\"", "\"acceleration\": \"1 m/s2\"");
        double slower = RunMaker.margin(MachineFile.read(good.name(), slow), Optional.empty());
        assertThat(slower).isGreaterThan(1.1 * asked);
    }
}
