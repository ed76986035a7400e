// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.spring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import foldwright.elements.table.UnknownNameException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Designs of springs and wire; the worked examples are in the proof chapter. */
class SpringDesignTest {
    private static final double MM = 1e-3;

    @Test
    void endsFollowShigleyTable10Dash1() {
        assertThat(EndCoils.PLAIN.solidLength(2 * MM, 10)).isCloseTo(22 * MM, within(1e-12));
        assertThat(EndCoils.PLAIN_GROUND.solidLength(2 * MM, 10)).isCloseTo(22 * MM, within(1e-12));
        assertThat(EndCoils.SQUARED.solidLength(2 * MM, 10)).isCloseTo(26 * MM, within(1e-12));
        assertThat(EndCoils.SQUARED_GROUND.solidLength(2 * MM, 10))
                .isCloseTo(24 * MM, within(1e-12));
    }

    @ParameterizedTest
    @EnumSource(EndSeats.class)
    void springOfLongestStableLengthJustBuckles(EndSeats seats) {
        CylindricalSpring spring =
                CylindricalSpring.wound(1 * MM, 10 * MM, 4, EndCoils.SQUARED_GROUND, 0.1, 81.5e9);
        double e = 206e9;
        double longest = spring.longestStableLength(e, seats);
        assertThat(withFreeLength(spring, longest * 0.999).bucklingDeflection(e, seats)).isEmpty();
        assertThat(withFreeLength(spring, longest * 1.001).bucklingDeflection(e, seats))
                .isPresent();
    }

    private static CylindricalSpring withFreeLength(CylindricalSpring s, double length) {
        return CylindricalSpring.wound(
                s.wireDiameter(),
                s.meanDiameter(),
                s.activeCoils(),
                EndCoils.SQUARED_GROUND,
                length,
                s.shearModulus());
    }

    @Test
    void bergstraesserIsTheFactorOfEn13906() {
        for (double w = 3; w <= 20; w += 0.5) {
            assertThat(CoilStress.bergstraesser(w))
                    .isCloseTo((w + 0.5) / (w - 0.75), within(1e-14));
        }
    }

    @Test
    void wireFactorsTendToOneForThinWire() {
        assertThat(CoilStress.wahl(1e6)).isCloseTo(1, within(1e-5));
        assertThat(CoilStress.innerBending(1e6)).isCloseTo(1, within(1e-5));
    }

    @Test
    void torsionSpringIsABentWire() {
        // wire of length pi D n bent by a moment: k = E I/l, I = pi d^4/64
        double d = 2.5 * MM;
        TorsionSpring spring =
                new TorsionSpring(d, 16 * MM, 5, 0, 206e9, TorsionSpring.RateForm.BARE_WIRE);
        double expected = 206e9 * Math.PI * Math.pow(d, 4) / 64 / (Math.PI * 16 * MM * 5);
        assertThat(spring.rate()).isCloseTo(expected, within(1e-9 * expected));
        TorsionSpring rubbing =
                new TorsionSpring(
                        d, 16 * MM, 5, 0, 206e9, TorsionSpring.RateForm.WITH_COIL_FRICTION);
        assertThat(rubbing.rate() / spring.rate()).isCloseTo(10.186 / 10.8, within(1e-4));
    }

    @Test
    void legsAddActiveCoilsAndWindingTightensTheBody() {
        TorsionSpring spring =
                new TorsionSpring(
                        2 * MM, 15 * MM, 4, 50 * MM, 206e9, TorsionSpring.RateForm.BARE_WIRE);
        // N_a = N_b + (l1 + l2)/(3 pi D), Shigley Eq. 10-48
        assertThat(spring.activeCoils()).isCloseTo(4 + 50 / (3 * Math.PI * 15), within(1e-12));
        // wire length is kept: D N_b = D' (N_b + turns)
        assertThat(spring.woundMeanDiameter(2 * Math.PI)).isCloseTo(12 * MM, within(1e-15));
        assertThat(spring.mandrelClearance(2 * Math.PI, 9 * MM)).isCloseTo(1 * MM, within(1e-12));
        LinearLaw law = spring.law(2, 0.5, Attachment.TOUCHING);
        assertThat(law.measure()).isEqualTo(SpringLaw.Measure.ANGLE);
        assertThat(law.force(1)).isCloseTo(spring.rate(), within(1e-12));
    }

    @Test
    void massIsThatOfTheStretchedWire() {
        CylindricalSpring spring =
                CylindricalSpring.wound(1 * MM, 10 * MM, 8, EndCoils.SQUARED_GROUND, 0.06, 81.5e9);
        // table of wire: 0.00617 kg/m at 1 mm; length pi D N_t
        assertThat(spring.mass(7850)).isCloseTo(0.0061654 * Math.PI * 0.01 * 10, within(1e-6));
    }

    @ParameterizedTest
    @ValueSource(strings = {"EN 10270-1 SH", "SH", "sh", "en 10270-1 sh"})
    void wireIsFoundByNameAndByClass(String name) {
        assertThat(WireGrade.get(name).strength()).isEqualTo(WireStrength.SH);
    }

    @Test
    void wireKnowsItsBandOfElasticConstants() {
        WireGrade music = WireGrade.get("music wire");
        // Shigley 9th ed. Table 10-5
        assertThat(music.shearModulus(0.5 * MM)).isEqualTo(82.7e9);
        assertThat(music.shearModulus(1.2 * MM)).isEqualTo(81.7e9);
        assertThat(music.shearModulus(2.5 * MM)).isEqualTo(81.0e9);
        assertThat(music.youngsModulus(4 * MM)).isEqualTo(193e9);
        assertThat(music.shearLimit(2.5 * MM)).isCloseTo(871.164e6, within(0.1e6));
    }

    @ParameterizedTest
    @CsvSource({"SH, 0.2", "SL, 0.5", "music wire, 8"})
    void wireRefusesDiametersItIsNotMadeIn(String grade, double mm) {
        assertThatThrownBy(() -> WireGrade.get(grade).minimumTensile(mm * MM))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("wire diameter of grade");
    }

    @Test
    void unknownWireNamesItsNeighbours() {
        assertThat(WireGrade.find("SX")).isEmpty();
        assertThatThrownBy(() -> WireGrade.get("musik wire A228"))
                .isInstanceOf(UnknownNameException.class)
                .hasMessageContaining("music wire A228");
    }

    @Test
    void strengthFallsWithDiameter() {
        List<WireSize> sizes = WireSize.all();
        for (WireGrade grade : WireGrade.catalog().all()) {
            double last = Double.POSITIVE_INFINITY;
            for (WireSize size : sizes) {
                double d = size.diameter();
                WireStrength s = grade.strength();
                if (d >= s.leastDiameter() && d <= s.mostDiameter()) {
                    assertThat(grade.minimumTensile(d)).as(grade.name()).isLessThan(last);
                    last = grade.minimumTensile(d);
                }
            }
        }
        assertThat(WireSize.nearest(1.58 * MM).diameter()).isCloseTo(1.6 * MM, within(1e-12));
    }

    @Test
    void everyShippedWireAnswers() {
        assertThat(WireGrade.catalog().names())
                .contains("EN 10270-1 SL", "EN 10270-1 DH", "hard drawn A227")
                .hasSize(9);
    }
}
