// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.machine.Machine;
import foldwright.machine.file.MachineFile;
import foldwright.machine.file.MachineText;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class CoilChecksTest {
    private static final Path SCENE = Path.of("../scenes/van-bench.json");

    /**
     * By hand, Shigley Eqs. 10-5 and 10-7: each coil is squeezed 115 - 34 - 6 = 75 mm at about
     * 0.155 N/mm, 11.6 N; w = 18.75, K = (4w + 2)/(4w - 3) = 1.069; tau = K 8 F D/(pi d^3) = 232
     * MPa.
     */
    @Test
    void stressLyingFlatIsThatOfTheHandbook() throws Exception {
        List<Check> checks = new CoilChecks(MachineFile.read(SCENE).machine()).checks();
        assertThat(checks).hasSize(1);
        assertThat(checks.get(0).outcome().required().value()).isCloseTo(232, within(5.0));
        assertThat(checks.get(0).verdict()).isEqualTo(Verdict.HOLDS);
    }

    /**
     * Longer than 2.63 D/0.5 = 158 mm a coil of 30 mm bows out between plates (Shigley Eq. 10-12).
     */
    @Test
    void aSlenderCoilBowsOut() throws Exception {
        Machine slender =
                MachineText.of(MachineFile.read(SCENE))
                        .with("springs[0].law.freeLength", "190 mm")
                        .read()
                        .machine();
        assertThat(new CoilChecks(slender).checks())
                .anySatisfy(
                        c -> {
                            assertThat(c.text().title()).startsWith("Springs bowing out");
                            assertThat(c.verdict()).isEqualTo(Verdict.FAILS);
                        });
    }
}
