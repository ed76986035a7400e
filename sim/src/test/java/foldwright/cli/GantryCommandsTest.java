// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What scripts read from {@code replay} and {@code limits}. */
class GantryCommandsTest {
    private static final String SKEWS = "../scenes/class-plotter-skews.json";
    private static final String PATH = "../scenes/class-plotter.nc";

    @TempDir Path folder;

    @Test
    void replayTellsCausesMapAndWorstMomentsAsNumbers() throws Exception {
        Terminal.Result result = Terminal.run("replay", SKEWS, PATH, "--causes", "--json");
        assertThat(result.exit()).isEqualTo(ExitCode.FAILS);
        JsonNode root = new ObjectMapper().readTree(result.out());
        JsonNode worst = root.at("/skewEndToEnd");
        assertThat(worst.get("line").asInt()).isPositive();
        JsonNode parts = root.at("/atLargestToolError/toolError");
        double sum = 0;
        for (String part :
                new String[] {
                    "beltStretch",
                    "squareness",
                    "skewPlay",
                    "skewFlex",
                    "blockGive",
                    "bending",
                    "carriageTwist",
                    "motorLag"
                }) {
            sum += parts.get(part).get("x").asDouble();
        }
        double total = parts.get("total").get("x").asDouble();
        assertThat(sum).isCloseTo(total, org.assertj.core.data.Offset.offset(1e-3 * 1e-3));
        assertThat(root.get("errorMap").size() > 100).isTrue();
        assertThat(root.findValuesAsText("ringing")).isNotEmpty();
    }

    @Test
    void theErrorMapIsATableOrADrawing() throws Exception {
        Path csv = folder.resolve("map.csv");
        Path svg = folder.resolve("map.svg");
        Terminal.run("replay", SKEWS, PATH, "--map", csv.toString());
        Terminal.run("replay", SKEWS, PATH, "--map", svg.toString());
        assertThat(Files.readString(csv)).startsWith("x [mm],y [mm],largest tool error [mm],looks");
        assertThat(Files.readString(svg))
                .contains("<svg")
                .contains("Largest tool error")
                .contains("</svg>");
    }

    @Test
    void limitsTellsEveryDirectionAndPlace() throws Exception {
        Terminal.Result result = Terminal.run("limits", "../scenes/class-plotter.json", "--json");
        assertThat(result.exit()).isEqualTo(ExitCode.HOLDS);
        assertThat(new ObjectMapper().readTree(result.out()).toString()).contains("setBy");
    }
}
