// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.beam;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import foldwright.elements.beam.Section.Bending;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

/** Beams and sections; the worked examples are in the proof chapter. */
class BeamTest {
    private static final String SEED = "20261125";

    @Property(tries = 300, seed = SEED)
    void shortFormOfTorsionStressIsNearButLow(
            @ForAll @Scale(4) @DoubleRange(min = 1, max = 10) double ratio) {
        Section.Rectangle bar = new Section.Rectangle(ratio * 0.01, 0.01);
        double full = bar.torsionStress(1);
        assertThat(bar.shortFormTorsionStress(1)).isBetween(0.955 * full, 1.005 * full);
    }

    /** Independent of every fit: the Saint-Venant series itself, 200 terms. */
    @Property(tries = 100, seed = SEED)
    void torsionConstantIsTheSumOfTheSeries(
            @ForAll @Scale(4) @DoubleRange(min = 1, max = 10) double ratio) {
        // J = a b^3 (1/3)(1 - 192/pi^5 b/a sum tanh(n pi a/2b)/n^5), n odd
        double sum = 0;
        for (int n = 1; n < 400; n += 2) {
            sum += Math.tanh(n * Math.PI * ratio / 2) / Math.pow(n, 5);
        }
        double series = (1 - 192 / Math.pow(Math.PI, 5) / ratio * sum) / 3;
        Section bar = new Section.Rectangle(ratio * 0.01, 0.01);
        assertThat(bar.torsionConstant() / (ratio * 1e-8))
                .isCloseTo(series, within(0.006 * series));
    }

    @Property(tries = 300, seed = SEED)
    void turningASectionSwapsItsBendingOnly(
            @ForAll @Scale(4) @DoubleRange(min = 1, max = 50) double b,
            @ForAll @Scale(4) @DoubleRange(min = 1, max = 50) double h) {
        Section s = new Section.Rectangle(b, h);
        Section turned = new Section.Rectangle(h, b);
        assertThat(turned.secondMoment(Bending.ALONG_WIDTH))
                .isEqualTo(s.secondMoment(Bending.ALONG_HEIGHT));
        assertThat(turned.torsionConstant()).isEqualTo(s.torsionConstant());
        assertThat(turned.area()).isEqualTo(s.area());
    }

    @Test
    void tubesTendToTheirThinWallAndSolidLimits() {
        // thin ring: I = pi r^3 t, J = 2 I
        Section thin = new Section.RoundTube(0.02, 1e-6);
        double ring = Math.PI * 1e-6 * 1e-6;
        assertThat(thin.secondMoment(Bending.ALONG_HEIGHT)).isCloseTo(ring, within(1e-3 * ring));
        Section nearlySolid = new Section.RoundTube(0.02, 0.01 - 1e-9);
        Section solid = new Section.Round(0.02);
        assertThat(nearlySolid.torsionConstant()).isCloseTo(solid.torsionConstant(), within(1e-15));
        assertThat(nearlySolid.area()).isCloseTo(solid.area(), within(1e-12));
        Section box = new Section.RectangularTube(0.03, 0.015, 0.0075 - 1e-9);
        Section bar = new Section.Rectangle(0.03, 0.015);
        for (Bending way : Bending.values()) {
            assertThat(box.secondMoment(way)).isCloseTo(bar.secondMoment(way), within(1e-15));
        }
    }

    @Test
    void roundBarStressesFollowTheTextbook() {
        // 16 T/(pi d^3) and 32 M/(pi d^3)
        Section s = new Section.Round(0.01);
        assertThat(s.torsionStress(1)).isCloseTo(16 / (Math.PI * 1e-6), within(1e-3));
        assertThat(s.bendingStress(1, Bending.ALONG_WIDTH))
                .isCloseTo(32 / (Math.PI * 1e-6), within(1e-3));
    }

    /** Independent of the closed forms: the curvature M/(EI) summed twice along the beam. */
    @Test
    void deflectionsAreTheTwiceIntegratedCurvature() {
        Beam beam = new Beam(new Section.Rectangle(0.02, 0.006), 0.12, 70e9, 26e9);
        double ei = beam.bendingStiffness(Bending.ALONG_HEIGHT);
        int parts = 20_000;
        double dx = 0.12 / parts;
        double slope = 0;
        double tip = 0;
        double even = 0;
        double evenSlope = 0;
        for (int i = 0; i < parts; i++) {
            double left = 0.12 - (i + 0.5) * dx;
            double before = slope;
            slope += 10 * left / ei * dx;
            tip += (before + slope) / 2 * dx;
            before = evenSlope;
            evenSlope += 50 * left * left / 2 / ei * dx;
            even += (before + evenSlope) / 2 * dx;
        }
        assertThat(beam.tipSlope(10, Bending.ALONG_HEIGHT)).isCloseTo(slope, within(1e-7 * slope));
        assertThat(beam.tipDeflection(10, Bending.ALONG_HEIGHT)).isCloseTo(tip, within(1e-7 * tip));
        assertThat(beam.tipDeflectionUnderEvenLoad(50, Bending.ALONG_HEIGHT))
                .isCloseTo(even, within(1e-7 * even));
        // half a simply supported beam is a cantilever of half the length under half the force
        Beam half = new Beam(beam.section(), 0.06, 70e9, 26e9);
        assertThat(beam.middleDeflection(10, Bending.ALONG_HEIGHT))
                .isCloseTo(half.tipDeflection(5, Bending.ALONG_HEIGHT), within(1e-15));
    }

    @Test
    void armPushedSidewaysGivesAsTheJobSheetSays() {
        // 190 x 16 x 6 arm from its centre pin, 5 N: 0.07 mm in aluminium, 2.2 mm at 2.3 GPa
        Section flat = new Section.Rectangle(0.006, 0.016);
        Beam aluminium = new Beam(flat, 0.095, 70e9, 26e9);
        Beam plastic = new Beam(flat, 0.095, 2.3e9, 0.8e9);
        assertThat(aluminium.tipDeflection(5, Bending.ALONG_WIDTH))
                .isCloseTo(0.07e-3, within(0.005e-3));
        assertThat(plastic.tipDeflection(5, Bending.ALONG_WIDTH))
                .isCloseTo(2.2e-3, within(0.05e-3));
    }

    @Test
    void impossibleSectionsAreRefusedByName() {
        for (double bad : List.of(0.0, -1.0, Double.NaN, Double.POSITIVE_INFINITY)) {
            assertThatThrownBy(() -> new Section.Rectangle(bad, 1))
                    .hasMessageContaining("section width");
        }
        assertThatThrownBy(() -> new Section.RoundTube(0.01, 0.005))
                .hasMessageContaining("section wall is 0.005 m, allowed: below half the side");
    }
}
