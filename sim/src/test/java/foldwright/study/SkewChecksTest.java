// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.machine.Machine;
import foldwright.machine.file.BadMachineFile;
import foldwright.machine.file.MachineFile;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The class plotter and its sick twin. By hand, single loop, M = m_c a B/2 = 0.42 x 4 x 0.22 =
 * 0.370 N·m: 0.915 mm (play 0.176, flex 0.740) as built badly, 0.023 mm cured, all with point
 * wheels and without the inertia of idlers. Wheels of their real size and their inertia add 8 %.
 */
class SkewChecksTest {
    private static List<Check> checks(String scene) throws BadMachineFile {
        Machine machine = MachineFile.read(Path.of("../scenes/" + scene + ".json")).machine();
        return new SkewChecks(machine).checks();
    }

    @Test
    void curedPlotterMovesSquare() throws BadMachineFile {
        Check skew = checks("class-plotter").get(0);
        assertThat(skew.outcome().required().value()).isCloseTo(0.023, within(0.0025));
        assertThat(skew.verdict()).isEqualTo(Verdict.HOLDS);
    }

    @Test
    void sickPlotterSkewsByPlayAndFlexAndIsCuredByTwoBlocks() throws BadMachineFile {
        Check skew = checks("class-plotter-skews").get(0);
        assertThat(skew.outcome().required().value()).isCloseTo(0.915, within(0.08));
        assertThat(skew.finding()).contains("play 0.176\u00a0mm");
        assertThat(skew.verdict()).isEqualTo(Verdict.FAILS);
        Remedy best = skew.remedies().get(skew.remedies().size() - 1);
        assertThat(best.words()).contains("two blocks 60 mm apart");
        assertThat(best.outcome().margin()).isGreaterThan(1);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "class-plotter",
                "class-plotter-skews",
                "field-printer",
                "gantry-one-end",
                "gantry-riding-motors",
                "van-bench"
            })
    void theCurveDrawnReachesTheSkewToldAndNoMore(String scene) throws BadMachineFile {
        Check skew = checks(scene).get(0);
        SignedCurve curve = (SignedCurve) skew.plot().orElseThrow();
        double most = Math.max(curve.values().max(), -curve.values().min());
        assertThat(most).isCloseTo(skew.outcome().required().si(), within(1e-15));
        assertThat(skew.outcome().worst().words()).startsWith(curve.caption().subtitle());
    }

    /** K (s/B - γ)/(m_c B/2) = 7200 (0.05/440)/(0.42 x 0.22) = 8.85 m/s2 by hand. */
    @Test
    void theCardInvertsTheSkewFormulaOfTheSingleLoop() throws BadMachineFile {
        Check allowed = checks("class-plotter").get(2);
        assertThat(allowed.grounds().byHand().steps().get(0).numbers())
                .endsWith("= 8.85\u00a0m/s²");
    }

    @Test
    void noFormulaIsClaimedWhereAnotherLimitIsMetFirst() throws BadMachineFile {
        Check allowed = checks("field-printer").get(2);
        assertThat(allowed.finding()).contains("motor torque sets it");
        assertThat(allowed.grounds().byHand().steps())
                .allSatisfy(step -> assertThat(step.formula()).isEmpty());
    }

    @Test
    void playAloneLeavesNoAcceleration() throws BadMachineFile {
        Check allowed =
                checks("class-plotter-skews").stream()
                        .filter(c -> c.id().equals("skew.acceleration"))
                        .findFirst()
                        .orElseThrow();
        assertThat(allowed.outcome().available().si()).isLessThan(0.01);
    }
}
