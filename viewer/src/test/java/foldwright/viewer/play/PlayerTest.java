// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.play;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.run.RunColumn;
import foldwright.run.RunTable;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The clock of a run: it needs no picture. */
class PlayerTest {
    private static RunTable table() {
        return new RunTable(
                List.of(RunColumn.TIME, RunColumn.HEIGHT),
                List.of(
                        new double[] {0, 0.03},
                        new double[] {1, 0.04},
                        new double[] {1, 0.05},
                        new double[] {4, 0.09},
                        new double[] {10, 0.10}));
    }

    private static Player player() {
        return new Player(table(), List.of(6.0, 2.5));
    }

    @Test
    void itRunsAtItsSpeedAndStandsAtTheEnd() {
        Player p = player();
        assertThat(p.pass(1)).isFalse();
        p.toggle();
        assertThat(p.pass(2.5)).isTrue();
        assertThat(p.time()).isEqualTo(2.5);
        p.faster(2);
        assertThat(p.speed()).isEqualTo(5);
        p.pass(1);
        assertThat(p.time()).isEqualTo(7.5);
        p.pass(1);
        assertThat(p.time()).isEqualTo(10);
        assertThat(p.state()).isEqualTo(Player.State.STANDING);
        p.toggle();
        assertThat(p.time()).isZero();
    }

    @Test
    void speedsGoFromAFiftiethToFiftyAndNotBeyond() {
        Player p = player();
        p.faster(-99);
        assertThat(p.speed()).isEqualTo(1 / 50.0);
        assertThat(Player.words(p.speed())).isEqualTo("50× slower");
        p.faster(99);
        assertThat(p.speed()).isEqualTo(50);
        assertThat(Player.words(p.speed())).isEqualTo("50× faster");
        p.speedShare(0.5);
        assertThat(p.speed()).isEqualTo(1);
        assertThat(Player.words(p.speed())).isEqualTo("at real speed");
        p.speedShare(0.21);
        assertThat(p.speed()).isEqualTo(1 / 10.0);
    }

    @Test
    void loopedItGoesRound() {
        Player p = player();
        p.toggleLoop();
        p.seek(9);
        p.toggle();
        p.pass(3);
        assertThat(p.time()).isCloseTo(2, within(1e-12));
        assertThat(p.state()).isEqualTo(Player.State.RUNNING);
        p.pass(25);
        assertThat(p.time()).isCloseTo(7, within(1e-12));
    }

    @Test
    void scrubbingHoldsWithinTheRun() {
        Player p = player();
        p.seek(-3);
        assertThat(p.time()).isZero();
        p.seek(33);
        assertThat(p.time()).isEqualTo(10);
        p.seek(Math.PI);
        assertThat(p.time()).isEqualTo(Math.PI);
    }

    @Test
    void aStepIsARowEachWayAndStops() {
        Player p = player();
        p.toggle();
        p.step(1);
        assertThat(p.state()).isEqualTo(Player.State.STANDING);
        assertThat(p.time()).isEqualTo(1);
        p.step(1);
        assertThat(p.time()).isEqualTo(4);
        p.seek(3.9);
        p.step(-1);
        assertThat(p.time()).isEqualTo(1);
        p.step(-1);
        assertThat(p.time()).isZero();
        p.step(-1);
        assertThat(p.time()).isZero();
        p.seek(10);
        p.step(1);
        assertThat(p.time()).isEqualTo(10);
    }

    @Test
    void marksComeInOrderAndGoRound() {
        Player p = player();
        p.nextMark(1);
        assertThat(p.time()).isEqualTo(2.5);
        p.nextMark(1);
        assertThat(p.time()).isEqualTo(6);
        p.nextMark(1);
        assertThat(p.time()).isEqualTo(2.5);
        p.nextMark(-1);
        assertThat(p.time()).isEqualTo(6);
        p.nextMark(-1);
        assertThat(p.time()).isEqualTo(2.5);
        Player none = new Player(table(), List.of());
        none.nextMark(1);
        assertThat(none.time()).isZero();
    }
}
