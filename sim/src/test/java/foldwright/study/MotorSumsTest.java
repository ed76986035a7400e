// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import foldwright.lift.ForceCurve;
import foldwright.lift.LiftSolver;
import foldwright.machine.Machine;
import foldwright.machine.file.BadMachineFile;
import foldwright.machine.file.MachineFile;
import foldwright.machine.file.Seed;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The sum by hand on the card against the force curve. Where springs take part, the curve has more:
 * they press on the pins, which the hand sum leaves out, by a sixth in the worst of the scenes.
 */
class MotorSumsTest {
    private static Machine scene(String name) throws BadMachineFile {
        return MachineFile.read(Path.of("../scenes/" + name + ".json")).machine();
    }

    /** The number before the unit at the end of the last step that works something out. */
    private static double byHand(Check check) {
        List<HandCard.Step> steps = check.grounds().byHand().steps();
        String worked = steps.get(steps.size() - 2).numbers();
        return Double.parseDouble(worked.substring(worked.lastIndexOf("= ") + 2).split(" ")[0]);
    }

    private static Check check(Machine machine) {
        ForceCurve curve = new LiftSolver(machine).curve();
        return Assess.motor(machine, curve);
    }

    @ParameterizedTest
    @CsvSource({"van-bench-binds, 3", "van-bench, 3", "class-plotter, 16", "field-printer, 9"})
    void theCardReachesWhatTheCurveNeeds(String name, double percent) throws BadMachineFile {
        Check check = check(scene(name));
        assertThat(byHand(check))
                .isCloseTo(check.outcome().required().si(), withPercentage(percent));
    }

    @Test
    void aCrankIsCalledACrankAndItsCollarCounts() throws BadMachineFile {
        Machine machine = MachineFile.read("seed", Seed.HAND_CRANK.text()).machine();
        Check check = check(machine);
        assertThat(check.title()).isEqualTo("Crank torque");
        assertThat(check.finding()).contains("at the crank", "the hand gives");
        assertThat(check.finding()).doesNotContain("motor");
        assertThat(byHand(check)).isCloseTo(check.outcome().required().si(), withPercentage(1));
    }
}
