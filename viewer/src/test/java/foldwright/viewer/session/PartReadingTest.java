// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.lift.Cause;
import foldwright.lift.PartShares;
import foldwright.machine.Machine;
import foldwright.viewer.Headless;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.scene.Part;
import foldwright.viewer.scene.PartKind;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is read of a part: its own shares by cause, when they are there. */
class PartReadingTest {
    private static final LiftEngine ENGINE = new LiftEngine();

    /** Every pin and arm has shares; their percentages add up to the whole. */
    @ParameterizedTest
    @MethodSource("foldwright.viewer.Headless#scenes")
    void everyPinAndArmTellsItsOwnShares(String scene) {
        Machine machine = Headless.machine(scene);
        MachineScene drawn = new MachineScene(machine);
        Results results = ENGINE.quick(machine);
        SheetBuilder builder = new SheetBuilder(drawn);
        PartSplits splits = computed(machine);
        int read = 0;
        for (double share : new double[] {0.3, 0.9}) {
            double h = drawn.shape().flat() + share * (drawn.shape().top() - drawn.shape().flat());
            for (Part part : drawn.parts()) {
                if (part.kind() != PartKind.ARM && part.kind() != PartKind.PIN) {
                    continue;
                }
                PartReading reading = builder.reading(results, splits, part, h);
                if (reading.facts().get(0).value().startsWith("no load")) {
                    continue;
                }
                read++;
                assertThat(reading.split()).as(part.name()).contains("by cause, ");
                assertThat(percentages(reading)).as(part.name()).isCloseTo(100, within(6.0));
                assertThat(reading.spoken()).as(part.name()).contains("% weight of ");
            }
        }
        assertThat(read).isGreaterThan(16);
    }

    /** The rows stay, without numbers, while shares of another height are being computed. */
    @Test
    void rowsKeepTheirRoomWhileSharesAreComputed() {
        Machine machine = Headless.machine("van-bench");
        MachineScene drawn = new MachineScene(machine);
        Results results = ENGINE.quick(machine);
        SheetBuilder builder = new SheetBuilder(drawn);
        Part pin = part(drawn, "front centre pin 1");
        PartReading known = builder.reading(results, computed(machine), pin, 0.1);
        Optional<PartShares> other = ENGINE.shares(machine, 0.1);
        PartSplits coming = h -> new PartSplits.Answer(PartSplits.State.COMING, other);
        PartReading waiting = builder.reading(results, coming, pin, 0.1);
        assertThat(waiting.split()).isEqualTo("force by cause: being computed");
        assertThat(waiting.shares()).extracting(PartReading.Share::value).containsOnly("…");
        assertThat(waiting.shares()).hasSameSizeAs(known.shares());
        assertThat(waiting.facts()).isEqualTo(known.facts());
    }

    /** Shares of another machine or height never stand beside a value. */
    @Test
    void sharesThatDoNotBelongToTheValueAreNotShown() {
        Machine machine = Headless.machine("van-bench");
        MachineScene drawn = new MachineScene(machine);
        Optional<PartShares> other = ENGINE.shares(machine, 0.2);
        PartSplits wrong = h -> new PartSplits.Answer(PartSplits.State.KNOWN, other);
        PartReading reading =
                new SheetBuilder(drawn)
                        .reading(
                                ENGINE.quick(machine),
                                wrong,
                                part(drawn, "front centre pin 1"),
                                0.05);
        assertThat(reading.split()).contains("being computed");
    }

    /** Springs say that they have no shares; screws show the push at the feet. */
    @Test
    void springsHaveNoSharesAndScrewsShowThePush() {
        Machine machine = Headless.machine("van-bench");
        MachineScene drawn = new MachineScene(machine);
        Results results = ENGINE.quick(machine);
        SheetBuilder builder = new SheetBuilder(drawn);
        for (Part part : drawn.parts()) {
            PartReading r = builder.reading(results, computed(machine), part, 0.09);
            if (part.kind() == PartKind.SPRING) {
                assertThat(r.shares()).isEmpty();
                assertThat(r.note()).contains("no shares");
            } else if (part.kind() == PartKind.SCREW) {
                assertThat(r.split()).startsWith("push at the feet by cause, ");
            }
        }
    }

    /** Asked on one thread, computed on another, told once. */
    @Test
    void splitterComputesElsewhereAndTellsOnce() throws InterruptedException {
        Machine machine = Headless.machine("van-bench");
        CountDownLatch rung = new CountDownLatch(1);
        try (Splitter splitter = new Splitter(ENGINE, rung::countDown)) {
            assertThat(splitter.of(machine).at(0.1).state()).isEqualTo(PartSplits.State.COMING);
            assertThat(rung.await(60, TimeUnit.SECONDS)).isTrue();
            assertThat(splitter.take()).isTrue();
            assertThat(splitter.take()).isFalse();
            PartSplits.Answer answer = splitter.of(machine).at(0.1);
            assertThat(answer.state()).isEqualTo(PartSplits.State.KNOWN);
            assertThat(answer.shares().orElseThrow().height()).isEqualTo(0.1);
            // At another height the old ones keep the room.
            PartSplits.Answer next = splitter.of(machine).at(0.2);
            assertThat(next.state()).isEqualTo(PartSplits.State.COMING);
            assertThat(next.shares()).isPresent();
        }
    }

    private static PartSplits computed(Machine machine) {
        return h -> new PartSplits.Answer(PartSplits.State.KNOWN, ENGINE.shares(machine, h));
    }

    private static Part part(MachineScene scene, String name) {
        return scene.part(name).orElseThrow();
    }

    private static double percentages(PartReading reading) {
        List<PartReading.Share> shares = reading.shares();
        assertThat(shares).allMatch(s -> s.cause().filter(c -> c != Cause.WIND_UP).isPresent());
        return shares.stream()
                .mapToDouble(
                        s ->
                                Double.parseDouble(
                                        s.percent().replace("\u00a0%", "").replace('\u2212', '-')))
                .sum();
    }
}
