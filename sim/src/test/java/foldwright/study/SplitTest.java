// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.lift.Cause;
import foldwright.lift.Direction;
import foldwright.lift.ForceCurve;
import foldwright.lift.HoldResult;
import foldwright.lift.LiftSolver;
import foldwright.lift.PartShares;
import foldwright.machine.Machine;
import foldwright.machine.file.BadMachineFile;
import foldwright.machine.file.MachineFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Shares by cause of the most loaded pin and arm, as checks tell them. */
class SplitTest {
    private static final double G = 9.81;

    @TempDir private Path folder;

    /**
     * One stage without friction, all of the deck's weight W at half the span, arms of weight w: at
     * flat the most loaded pin is a foot of the fixed end, across with the foot force (W +
     * Wa/2)/tan a of the single-stage relation (Spackman, Mathematical Analysis of Scissor Lifts,
     * Naval Ocean Systems Center TD 1550, 1989) and upward with half of all weights; the arm bends
     * by L cos a (W/4 + w/8) a side (moments of the free arm about its centre pin). Tolerance:
     * ideal pins give by some 1e-6.
     */
    @Test
    void oneStageIsTheClosedForm() throws Exception {
        Machine machine = read(smooth());
        Assessment a = assess(machine);
        double angle = Math.toRadians(6);
        double plate = .5 * 1.2 * G;
        double carried = .5 * 1.5 * G;
        double arm = .06 * G;
        double across = (plate + carried + arm) / Math.tan(angle);
        double up = (plate + carried) / 2 + arm;
        Split pin = split(a, "order.pins");
        assertThat(pin.words())
                .matches("force on the (front|back) fixed-side pin 1 at 25 mm, raising");
        double force = Math.hypot(across, up);
        assertThat(pin.whole().si()).isCloseTo(force, within(1e-5 * force));
        for (Share s : pin.told()) {
            double own =
                    switch (s.name()) {
                        case "weight of plate" -> plate;
                        case "weight of what it carries" -> carried;
                        case "weight of arms" -> arm;
                        default -> throw new AssertionError(s.name());
                    };
            double rise = s.cause() == Cause.ARMS ? own : own / 2;
            double share = (own / Math.tan(angle) * across + rise * up) / force;
            near(pin, s.name(), share);
        }
        assertThat(pin.told()).hasSize(3);
        double lever = machine.lift().arm().length() * Math.cos(angle);
        Split bent = split(a, "order.arms");
        near(bent, "weight of plate", lever * plate / 4);
        near(bent, "weight of what it carries", lever * carried / 4);
        near(bent, "weight of arms", lever * arm / 8);
    }

    /** With friction, springs and a gantry too: together they are the load that is checked. */
    @Test
    void sharesAddUpToTheLoadThatIsChecked() throws Exception {
        for (String scene : List.of("van-bench", "van-bench-binds", "class-plotter")) {
            Machine machine = MachineFile.read(Path.of("../scenes/" + scene + ".json")).machine();
            Assessment a = assess(machine);
            for (String id : List.of("order.pins", "order.arms")) {
                Split split = split(a, id);
                double sum = split.shares().stream().mapToDouble(s -> s.amount().si()).sum();
                assertThat(sum).as(scene + id).isCloseTo(split.whole().si(), within(1e-9 * sum));
                Check check = check(a, id);
                assertThat(check.finding()).contains(split.whole().text());
                assertThat(split.told()).anyMatch(s -> s.cause() == Cause.PINS);
            }
        }
    }

    /** Small weights are one row; of a whole that is small beside its pieces no part is told. */
    @Test
    void smallWeightsAreToldTogether() {
        PartShares.Split part =
                new PartShares.Split(
                        105,
                        List.of(
                                new PartShares.Share(Cause.DECK, "plate", 100),
                                new PartShares.Share(Cause.DECK, "lamp", 2),
                                new PartShares.Share(Cause.DECK, "wires", 3),
                                new PartShares.Share(Cause.SPRINGS, "coils", .1),
                                new PartShares.Share(Cause.PINS, "friction in pins", -.1)));
        Split split = Split.of("force", part, Shown.NEWTON);
        assertThat(split.told())
                .extracting(Share::name)
                .containsExactly("weight of plate", "weight of other things on the deck");
        assertThat(split.told().get(1).amount().si()).isEqualTo(5);
        assertThat(split.part(split.told().get(1))).hasValue(5 / 105.);
        PartShares.Split balanced =
                new PartShares.Split(
                        1,
                        List.of(
                                new PartShares.Share(Cause.DECK, "plate", 100),
                                new PartShares.Share(Cause.SPRINGS, "coils", -99)));
        Split left = Split.of("force", balanced, Shown.NEWTON);
        assertThat(left.part(left.told().get(0))).isEmpty();
    }

    private Machine read(String text) throws IOException, BadMachineFile {
        Path file = folder.resolve("machine.json");
        Files.writeString(file, text);
        return MachineFile.read(file).machine();
    }

    /** The starter with its load in the middle of the span and nothing that rubs in the linkage. */
    private static String smooth() throws IOException {
        String middle = "\"" + 120 * Math.cos(Math.toRadians(6)) + " mm\"";
        String text = Files.readString(Path.of("../seeds/one-stage.json"));
        text = with(text, "\"at\": [\"110 mm\"", "\"at\": [" + middle);
        text = with(text, "\"240 mm\",   ", "\"240 mm\", \"mass\": \"60 g\",");
        text = with(text, "\"bush\", \"friction\": 0.12", "\"bush\", \"friction\": 0");
        return with(text, "\"rollers\", \"friction\": 0.005", "\"rollers\", \"friction\": 0");
    }

    private static String with(String text, String old, String now) {
        assertThat(text).contains(old);
        return text.replace(old, now);
    }

    private static Assessment assess(Machine machine) {
        return Assess.machine(machine, new Solved(), words -> {});
    }

    private static Check check(Assessment a, String id) {
        return a.checks().stream().filter(c -> c.id().equals(id)).findFirst().orElseThrow();
    }

    private static Split split(Assessment a, String id) {
        return check(a, id).grounds().split().orElseThrow();
    }

    private static void near(Split split, String name, double wanted) {
        double found =
                split.shares().stream()
                        .filter(s -> s.name().equals(name))
                        .mapToDouble(s -> s.amount().si())
                        .sum();
        assertThat(found).as(name).isCloseTo(wanted, within(1e-5 * split.whole().si()));
    }

    /** The lift's solver; changes are not tried, nothing is held. */
    private static final class Solved implements Runs {
        @Override
        public ForceCurve curve(Machine machine) {
            return new LiftSolver(machine).curve(20);
        }

        @Override
        public Optional<HoldResult> hold(Machine machine) {
            return Optional.empty();
        }

        @Override
        public Optional<PartShares> shares(Machine machine, double height, Direction way) {
            return new LiftSolver(machine).shares(height, way);
        }
    }
}
