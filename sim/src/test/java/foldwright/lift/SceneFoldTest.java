// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.machine.Machine;
import foldwright.machine.file.MachineFile;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** Every demo machine, unfolding and folding, over its whole travel. */
class SceneFoldTest {
    private static final Path CRANK = Path.of("..", "seeds", "hand-crank.json");

    @TempDir private Path folder;

    private static final Path SCENES = Path.of("..", "scenes");

    @ParameterizedTest
    @CsvSource({
        "van-bench, RAISING, ARRIVED",
        "van-bench, LOWERING, ARRIVED",
        "van-bench-binds, RAISING, STALLED",
        "van-bench-binds, LOWERING, ARRIVED",
        "class-plotter, RAISING, ARRIVED",
        "class-plotter, LOWERING, ARRIVED",
        "class-plotter-skews, RAISING, ARRIVED",
        "class-plotter-skews, LOWERING, ARRIVED",
        "field-printer, RAISING, ARRIVED",
        "field-printer, LOWERING, ARRIVED"
    })
    void theEnergyIsAccountedFor(String scene, Direction way, FoldResult.Outcome outcome)
            throws Exception {
        Machine machine = MachineFile.read(SCENES.resolve(scene + ".json")).machine();
        FoldResult run = FoldRun.run(machine, way, FoldRun.STEP);
        assertThat(run.outcome()).isEqualTo(outcome);
        assertThat(run.ledger().turnedOver()).isGreaterThan(0.05);
        assertThat(run.ledger().relativeError()).isLessThan(1e-3);
    }

    /** A hand turns the crank as told: what it puts in is the rise and friction, nothing else. */
    @ParameterizedTest
    @EnumSource(Direction.class)
    void theHandAtACrankPaysForTheRiseAndForFriction(Direction way) throws Exception {
        paid(MachineFile.read(CRANK).machine(), way);
    }

    /**
     * The same with a screw end that gives, where the crank winds up a thread that still sticks.
     */
    @ParameterizedTest
    @EnumSource(Direction.class)
    void soItIsWhereTheEndOfTheScrewGives(Direction way) throws Exception {
        String text = Files.readString(CRANK);
        String stiff = "\"ends\": \"fixed-supported\"";
        assertThat(text).contains(stiff);
        Path file = folder.resolve("gives.json");
        Files.writeString(file, text.replace(stiff, stiff + ", \"endStiffness\": \"8000 N/mm\""));
        paid(MachineFile.read(file).machine(), way);
    }

    private static void paid(Machine machine, Direction way) {
        FoldResult.Ledger l = FoldRun.run(machine, way, FoldRun.STEP).ledger();
        double paid = l.potential() + l.springs() + l.friction();
        assertThat(l.motor()).isCloseTo(paid, within(1e-3 * l.turnedOver()));
        assertThat(Math.abs(l.damping())).isLessThan(1e-3 * l.turnedOver());
        assertThat(l.turnedOver()).isLessThan(100);
    }

    /** Torque times angle, added up over the run, is the work of the hand in the ledger. */
    @ParameterizedTest
    @EnumSource(Direction.class)
    void theTorqueAtACrankDoesTheHandsWork(Direction way) throws Exception {
        Path seed = Path.of("..", "seeds", "hand-crank.json");
        Machine machine = MachineFile.read(seed).machine();
        FoldResult run = FoldRun.run(machine, way, FoldRun.STEP);
        double work = 0;
        double most = 0;
        for (int i = 1; i < run.samples().size(); i++) {
            FoldResult.MotorState before = run.samples().get(i - 1).motor();
            FoldResult.MotorState m = run.samples().get(i).motor();
            // A sample's torque is the mean since the one before.
            work += m.torque() * Math.abs(m.turned() - before.turned());
            most = Math.max(most, Math.abs(m.torque()) / m.pullOut());
        }
        assertThat(work).isCloseTo(run.ledger().motor(), within(0.01 * run.ledger().motor()));
        assertThat(run.convergence().worstMargin()).isCloseTo(1 / most, within(1e-9));
    }
}
