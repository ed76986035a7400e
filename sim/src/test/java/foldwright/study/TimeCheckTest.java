// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.machine.Machine;
import foldwright.machine.file.MachineFile;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TimeCheckTest {
    @TempDir private Path folder;

    /** A trapezoid of speed takes h/v + v/a (uniform acceleration, any textbook of mechanics). */
    @Test
    void aSteadyRiseTakesItsWayOverItsSpeedAndOneRamp() throws Exception {
        Machine machine = read("59.9 s");
        double way = Bench.top(machine) - Bench.flat(machine);
        double time = way / .004 + .004 / .02;
        Check check = new TimeCheck(machine).check().orElseThrow();
        assertThat(check.outcome().required().si()).isCloseTo(time, within(1e-3 * time));
        assertThat(time).isCloseTo(60.03, within(.02));
        assertThat(check.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(new TimeCheck(read("61 s")).check().orElseThrow().verdict())
                .isEqualTo(Verdict.HOLDS);
    }

    @Test
    void withoutALimitNothingIsSaid() throws Exception {
        Path scene = Path.of("..", "scenes", "van-bench.json");
        assertThat(new TimeCheck(MachineFile.read(scene).machine()).check()).isEmpty();
    }

    private Machine read(String allowed) throws Exception {
        String text = Files.readString(Path.of("..", "scenes", "van-bench.json"));
        assertThat(text).contains("\"limits\": {");
        Path file = folder.resolve("timed.json");
        String limit = "\"limits\": { \"unfoldTime\": \"" + allowed + "\",";
        Files.writeString(file, text.replace("\"limits\": {", limit));
        return MachineFile.read(file).machine();
    }
}
