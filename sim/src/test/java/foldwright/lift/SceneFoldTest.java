// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import static org.assertj.core.api.Assertions.assertThat;

import foldwright.machine.Machine;
import foldwright.machine.file.MachineFile;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every demo machine, unfolding and folding, over its whole travel. */
class SceneFoldTest {
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
}
