// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
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

    /** Every row: causes add up to the error in x and in y, skew times the span is end to end. */
    @Test
    void rowsOverTimeAddUp() throws Exception {
        Path csv = folder.resolve("rows.csv");
        Terminal.run("replay", SKEWS, "--probe", "square", "--csv", csv.toString(), "--rate", "50");
        List<String> lines = Files.readAllLines(csv);
        List<String> head = List.of(lines.get(0).split(","));
        assertThat(head)
                .contains("torque left motor [N·m]", "leg block moment [N·m]")
                .contains("full steps lost right motor")
                .anyMatch(h -> h.startsWith("tension "));
        int error = head.indexOf("error x [mm]");
        int skew = head.indexOf("skew [mrad]");
        assertThat(lines).hasSizeGreaterThan(100);
        for (String line : lines.subList(1, lines.size())) {
            double[] row =
                    Arrays.stream(line.split(",")).mapToDouble(Double::parseDouble).toArray();
            assertThat(row).hasSize(head.size());
            for (int axis = 0; axis < 2; axis++) {
                double sum = 0;
                for (int cause = error + 2 + axis; cause < skew; cause += 2) {
                    sum += row[cause];
                }
                assertThat(sum).isCloseTo(row[error + axis], within(1e-7));
            }
            assertThat(row[skew + 1]).isCloseTo(0.44 * row[skew], within(1e-7));
        }
    }

    /** Play of 0.176 mm beside 0.05 mm allowed: nought in the table is explained below it. */
    @Test
    void limitsTellsWhenThePlayAloneIsTooMuch() {
        Terminal.Result result = Terminal.run("limits", SKEWS);
        assertThat(result.exit()).isEqualTo(ExitCode.FAILS);
        assertThat(result.out())
                .contains("The play alone, 0.176\u00a0mm to each side")
                .contains("no acceleration is small");
        assertThat(Terminal.run("limits", "../scenes/class-plotter.json").out())
                .doesNotContain("The play alone");
    }

    @Test
    void limitsTellsModesAndBeltMass() throws Exception {
        Terminal.Result result = Terminal.run("limits", "../scenes/class-plotter.json", "--json");
        JsonNode root = new ObjectMapper().readTree(result.out());
        assertThat(root.get("modes")).hasSize(5);
        double before = 0;
        for (JsonNode shape : root.at("/modes/0/shapes")) {
            assertThat(shape.get("frequency").asDouble()).isGreaterThan(before);
            before = shape.get("frequency").asDouble();
        }
        double racking = root.at("/beltMass/racking").asDouble();
        assertThat(racking).isCloseTo(4 * 0.22 * 0.0125, within(2e-4));
    }

    @Test
    void aToolpathWithoutMovesIsRefused() throws Exception {
        Path empty = Files.writeString(folder.resolve("empty.nc"), "(nothing)\n");
        Terminal.Result result = Terminal.run("replay", SKEWS, empty.toString());
        assertThat(result.exit()).isEqualTo(2);
        assertThat(result.err()).contains("holds no move");
    }
}
