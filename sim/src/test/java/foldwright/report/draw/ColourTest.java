// SPDX-License-Identifier: Apache-2.0
package foldwright.report.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.lift.Cause;
import foldwright.study.Verdict;
import org.junit.jupiter.api.Test;

class ColourTest {
    /**
     * CIE L*a*b* of the sRGB primaries under D65, the values printed in most colour science tables
     * (e.g. B. Lindbloom's calculator), from memory: red 53.24, 80.09, 67.20; blue 32.30, 79.19,
     * -107.86.
     */
    @Test
    void labOfPrimaries() {
        double[] red = new Colour(255, 0, 0).lab();
        assertThat(red[0]).isCloseTo(53.24, within(0.02));
        assertThat(red[1]).isCloseTo(80.09, within(0.02));
        assertThat(red[2]).isCloseTo(67.20, within(0.02));
        double[] blue = new Colour(0, 0, 255).lab();
        assertThat(blue[0]).isCloseTo(32.30, within(0.02));
        assertThat(blue[1]).isCloseTo(79.19, within(0.02));
        assertThat(blue[2]).isCloseTo(-107.86, within(0.02));
    }

    @Test
    void endsOfAMixtureAreTheColoursThemselves() {
        Colour a = Colour.hex("#7F0E38");
        Colour b = Colour.hex("#2C8A8A");
        assertThat(a.towards(b, 0)).isEqualTo(a);
        assertThat(a.towards(b, 1)).isEqualTo(b);
    }

    @Test
    void loadScaleIsLinearInLightness() {
        Palette palette = Palette.of(Theme.LIGHT);
        double first = palette.load(0).lab()[0];
        double last = palette.load(1).lab()[0];
        for (double part = 0; part <= 1; part += 0.05) {
            // 0.9: stops are rounded to 8 bits, and the scale's own steps differ by 0.2.
            assertThat(palette.load(part).lab()[0])
                    .isCloseTo(first + part * (last - first), within(0.9));
        }
    }

    @Test
    void everyThemeHasEveryRole() {
        for (Theme theme : Theme.values()) {
            Palette palette = Palette.of(theme);
            for (Ground g : Ground.values()) {
                assertThat(palette.ground(g)).isNotNull();
            }
            for (Verdict v : Verdict.values()) {
                assertThat(palette.fill(v)).isNotNull();
                assertThat(palette.text(v)).isNotNull();
            }
            for (Cause c : Cause.values()) {
                assertThat(palette.cause(c)).isNotNull();
            }
        }
    }

    @Test
    void digitsAreTabularInEveryFace() {
        for (Face face : Face.values()) {
            FontMetrics metrics = FontMetrics.of(face);
            for (char c = '1'; c <= '9'; c++) {
                assertThat(metrics.width(Character.toString(c), 1))
                        .isEqualTo(metrics.width("0", 1));
            }
        }
    }

    /** 497 units of 1000: the advance of a figure in the regular sans, read from its hmtx table. */
    @Test
    void widthComesFromTheFontFile() {
        assertThat(FontMetrics.of(Face.SANS).width("10", 100)).isCloseTo(99.4, within(1e-9));
    }
}
