// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.lift.SpringStroke;
import foldwright.machine.Machine;
import foldwright.machine.file.MachineFile;
import foldwright.machine.file.MachineText;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SpringStrengthTest {
    private static final Path SCENES = Path.of("../scenes");

    @TempDir private Path folder;

    private static Machine scene(String name) throws Exception {
        return MachineFile.read(SCENES.resolve(name + ".json")).machine();
    }

    /** The van bench with the law of its springs, and the room for them, replaced. */
    private Machine with(String law, double gapInMillimetres) throws Exception {
        String text = Files.readString(SCENES.resolve("van-bench.json"));
        int at = text.indexOf("\"law\"", text.indexOf("\"springs\": ["));
        int end = text.indexOf('}', at) + 1;
        String gap = String.format(Locale.ROOT, "\"gapAtPins\": \"%.6f mm\"", gapInMillimetres);
        Path file = folder.resolve("machine.json");
        String changed =
                text.substring(0, at)
                        + "\"law\": "
                        + law
                        + text.substring(end).replaceFirst("\"gapAtPins\": \"[^\"]*\"", gap);
        Files.writeString(file, changed.replaceFirst("\"springs\\[0\\][^\"]*\",", ""));
        return MachineFile.read(file).machine();
    }

    private static List<Check> checks(Machine m) {
        return new SpringStrength(m, SpringStroke.of(m)).checks();
    }

    private static Check room(Machine m) {
        SpringStroke stroke = SpringStroke.of(m).get(0);
        return new SpringRoom(new WorkedSpring(m, stroke)).check().orElseThrow();
    }

    /**
     * By hand, Shigley Eqs. 10-5 and 10-7: each coil is squeezed 115 - 34 - 6 = 75 mm at about
     * 0.155 N/mm, 11.6 N; w = 18.75, K = (4w + 2)/(4w - 3) = 1.069; tau = K 8 F D/(pi d^3) = 232
     * MPa.
     */
    @Test
    void stressLyingFlatIsThatOfTheHandbook() throws Exception {
        List<Check> checks = checks(scene("van-bench"));
        assertThat(checks).hasSize(1);
        assertThat(checks.get(0).outcome().required().value()).isCloseTo(232, within(5.0));
        assertThat(checks.get(0).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(checks.get(0).grounds().limits()).anyMatch(l -> l.contains("are guided"));
    }

    /**
     * Longer than 2.63 D/0.5 = 158 mm a coil of 30 mm bows out between plates (Shigley Eq. 10-12).
     */
    @Test
    void aSlenderCoilBowsOutWhereNothingGuidesIt() throws Exception {
        MachineText guided =
                MachineText.of(MachineFile.read(SCENES.resolve("van-bench.json")))
                        .with("springs[0].law.freeLength", "190 mm");
        assertThat(checks(guided.read().machine())).hasSize(1);
        Path file = folder.resolve("free.json");
        Files.writeString(
                file,
                Files.readString(SCENES.resolve("van-bench.json"))
                        .replace("\"freeLength\": \"115 mm\"", "\"freeLength\": \"190 mm\"")
                        .replaceFirst(",\\s*\"guideDiameter\": \"[^\"]*\"", ""));
        assertThat(checks(MachineFile.read(file).machine()))
                .anySatisfy(
                        c -> {
                            assertThat(c.text().title()).startsWith("Springs buckling");
                            assertThat(c.verdict()).isEqualTo(Verdict.FAILS);
                        });
    }

    /**
     * A cone of 1.2 mm wire, 10 to 22 mm, six coils over 40 mm: pressed by 27.8607 mm it gives 30
     * N, 3.0846 coils are still free, the largest of them 16.1692 mm across, strained with 785.06
     * MPa (constant pitch, summed over 200 000 slices of the wire; G = 81.5 GPa).
     */
    @Test
    void aConeIsStrainedMostInItsLargestFreeCoil() throws Exception {
        double flat = 1e3 * Bench.flat(scene("van-bench"));
        String cone =
                "{ \"kind\": \"conical\", \"wire\": \"1.2 mm\", \"smallDiameter\": \"10 mm\","
                        + " \"largeDiameter\": \"22 mm\", \"activeCoils\": 6,"
                        + " \"freeLength\": \"42.4 mm\", \"grade\": \"EN 10270-1 SH\" }";
        Machine m = with(cone, 42.4 - 27.8607 - flat);
        Check wire = checks(m).get(0);
        assertThat(wire.outcome().required().value()).isCloseTo(785.06, within(1.0));
        assertThat(SpringStroke.of(m).get(0).most()).isCloseTo(30, within(.02));
        assertThat(wire.finding()).contains("2.92 of its 6");
        // R_m = 2220 - 820 lg 1.2 = 2155 MPa, 0.56 of it
        assertThat(wire.outcome().available().value()).isCloseTo(1207, within(2.0));
    }

    /**
     * K = (4C^2 - C - 1)/(4C(C - 1)) = 1.131 at C = 6.4; 32 M/(pi d^3) = 717 MPa at 1.10 N·m and
     * 2.5 mm (Shigley Eqs. 10-43, 10-44). Hard drawn wire: 1783/2.5^0.190 = 1498 MPa (Table 10-4).
     */
    @Test
    void aTorsionSpringBendsItsWire() throws Exception {
        Check wire = checks(scene("field-printer")).get(0);
        assertThat(wire.outcome().required().value()).isCloseTo(1.131 * 717, within(2.0));
        assertThat(wire.outcome().available().value()).isCloseTo(.70 * 1498, within(3.0));
        assertThat(wire.verdict()).isEqualTo(Verdict.HOLDS);
    }

    /** Wound in by 42.14 degrees, five coils of 16 mm shrink to 16 x 5/5.117 mm. */
    @Test
    void aTorsionSpringWindsDownOnItsMandrel() throws Exception {
        Path file = folder.resolve("mandrel.json");
        Files.writeString(
                file,
                Files.readString(SCENES.resolve("field-printer.json"))
                        .replace(
                                "\"freeAngle\": \"50 deg\" },",
                                "\"freeAngle\": \"50 deg\" }, \"guideDiameter\": \"13.3 mm\","));
        Check mandrel = checks(MachineFile.read(file).machine()).get(1);
        assertThat(mandrel.outcome().available().value())
                .isCloseTo(16 * 5 / 5.117 - 2.5, within(.01));
        assertThat(mandrel.verdict()).isEqualTo(Verdict.FAILS);
    }

    /** F = F1/(1 - (1 - F1/F2) s/S) = 60/(1 - 0.25 x 75.02/80) = 78.4 N. */
    @Test
    void aGasSpringUsesUpItsStroke() throws Exception {
        String gas =
                "{ \"kind\": \"gas\", \"force\": \"60 N\", \"compressedForce\": \"80 N\","
                        + " \"extendedLength\": \"115 mm\", \"stroke\": \"80 mm\" }";
        Machine m = with(gas, 6);
        Check stroke = room(m);
        assertThat(stroke.outcome().required().value()).isCloseTo(75.02, within(.01));
        assertThat(stroke.outcome().available().value()).isCloseTo(80, within(1e-9));
        assertThat(stroke.finding()).contains("78.3");
        assertThat(stroke.grounds().limits()).anyMatch(l -> l.contains("not judged"));
        assertThat(checks(m)).isEmpty();
    }

    @Test
    void springsLyingDownKeepTheirCoilsOpenToo() throws Exception {
        Machine m = scene("class-plotter");
        Check closing = room(m);
        assertThat(closing.outcome().available().value()).isCloseTo(27, within(1e-6));
        assertThat(closing.outcome().required().value()).isCloseTo(22, within(1e-9));
        assertThat(closing.verdict()).isEqualTo(Verdict.HOLDS);
        Check load = checks(m).get(0);
        assertThat(load.verdict()).isEqualTo(Verdict.UNJUDGED);
        assertThat(load.outcome().required().value()).isCloseTo(180, within(.01));
    }
}
