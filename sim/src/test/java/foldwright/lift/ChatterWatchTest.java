// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import static org.assertj.core.api.Assertions.assertThat;

import foldwright.machine.Machine;
import foldwright.machine.file.MachineFile;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ChatterWatchTest {
    @TempDir private Path folder;

    /** 300 halvings in each of 20 steps, as in the hardest stall: a jolt. */
    @Test
    void aJoltIsNoChatter() {
        ChatterWatch watch = new ChatterWatch();
        long halved = 0;
        for (int step = 1; step < 10_000; step++) {
            halved += step > 500 && step <= 520 ? 300 : 0;
            assertThat(watch.begins(step, halved)).isFalse();
        }
        assertThat(watch.hopeless()).isFalse();
    }

    /** Few halvings now and then are told once and followed; many are told first, then ended. */
    @Test
    void whatComesAgainAndAgainIsToldOnceAndEndedWhereItCosts() {
        for (int each : new int[] {1, 300}) {
            ChatterWatch watch = new ChatterWatch();
            long halved = 0;
            int told = 0;
            int ended = 0;
            for (int step = 1; step < 3000 && ended == 0; step++) {
                halved += step % 10 == 0 ? each : 0;
                told += watch.begins(step, halved) ? 1 : 0;
                ended = watch.hopeless() ? step : 0;
            }
            assertThat(told).isEqualTo(1);
            assertThat(ended > 0).isEqualTo(each == 300);
            assertThat(ended).isLessThan(9 * ChatterWatch.STRETCH);
        }
    }

    /**
     * A self-locking screw lowers 30 kg with friction 0.5 in the thread; with steps of 1 ms, short
     * enough for it to show, the drive chatters (sign of m r tan(a) tan(phi' - a) against the
     * screw's inertia: Vahid-Araghi, Golnaraghi, Friction-Induced Vibration in Lead Screw Drives,
     * 2011, from memory). The run says when, and its energy still adds up.
     */
    @Test
    void aHeavyLoadOnARoughThreadChattersAndSaysWhen() throws Exception {
        FoldResult run = FoldRun.run(heavyOnRoughThread(), Direction.LOWERING, .2733, .25, 1e-3);
        assertThat(run.events())
                .filteredOn(e -> e.kind() == FoldResult.EventKind.CHATTERS)
                .singleElement()
                .satisfies(e -> assertThat(e.sentence()).contains("pivot height of 27"));
        assertThat(run.ledger().relativeError()).isLessThan(1e-3);
    }

    private Machine heavyOnRoughThread() throws Exception {
        String text = Files.readString(Path.of("..", "scenes", "van-bench.json"));
        text =
                with(
                        text,
                        "\"friction\": 0.15, \"frictionLow\"",
                        "\"friction\": 0.5, \"frictionLow\"");
        text = with(text, "\"frictionHigh\": 0.20", "\"frictionHigh\": 0.60");
        text = with(text, "\"1.90 kg\"", "\"30 kg\"");
        text = with(text, "\"torque\": \"0.28 N*m\"", "\"torque\": \"4 N*m\"");
        text = with(text, "\"0.40 N*m\"", "\"5 N*m\"");
        Path file = folder.resolve("heavy.json");
        Files.writeString(file, text);
        return MachineFile.read(file).machine();
    }

    private static String with(String text, String old, String now) {
        assertThat(text).contains(old);
        return text.replace(old, now);
    }
}
