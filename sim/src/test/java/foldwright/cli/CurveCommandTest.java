// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CurveCommandTest {
    private static final String BENCH = "../scenes/van-bench.json";

    @TempDir private Path folder;

    @Test
    void theFirstColumnsAndTheDirectionsAreFixed() throws IOException {
        Path csv = folder.resolve("curve.csv");
        Path svg = folder.resolve("curve.svg");
        Terminal.Result result =
                Terminal.run("curve", BENCH, "--csv", csv.toString(), "--svg", svg.toString());
        assertThat(result.exit()).isEqualTo(ExitCode.HOLDS);
        List<String> lines = Files.readAllLines(csv);
        assertThat(lines.get(0))
                .startsWith(
                        "direction,height [mm],foot force [N],motor torque [N·m],available torque"
                                + " [N·m],margin [1],");
        assertThat(lines.stream().skip(1).map(l -> l.substring(0, l.indexOf(','))).distinct())
                .containsExactly("raising", "lowering");
        assertThat(Files.readString(svg)).startsWith("<?xml").endsWith("</svg>\n");
    }

    /** By hand (no collar, no inertia): 0.140 N·m of 0.28 at 109 mm, margin 2.00; within 3 %. */
    @Test
    void jsonCarriesTheWorstPointAndTheQualityOfTheRun() throws IOException {
        Terminal.Result result = Terminal.run("curve", BENCH, "--json");
        JsonNode root = new ObjectMapper().readTree(result.out());
        JsonNode check = root.get("check");
        assertThat(check.get("margin").asDouble()).isCloseTo(2.00, Offset.offset(0.06));
        assertThat(check.get("worstHeight").asDouble()).isCloseTo(0.109, Offset.offset(0.001));
        assertThat(root.get("trust")).hasSize(2).allMatch(t -> t.get("met").asBoolean());
    }

    @Test
    void aMachineThatStallsReturnsOne() {
        Terminal.Result result = Terminal.run("curve", "../scenes/van-bench-binds.json");
        assertThat(result.exit()).isEqualTo(ExitCode.FAILS);
        assertThat(result.out()).containsPattern("stalls\\s+everywhere\\s+below\\s+99\u00a0mm");
        // Progress may be told on a slow machine.
        assertThat(result.err()).doesNotContain("foldwright:");
    }
}
