// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.text;

import static org.assertj.core.api.Assertions.assertThat;

import foldwright.report.draw.Face;
import foldwright.report.draw.FontMetrics;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Metrics without a GL context, held against a second reader of the same font files. */
class FontsTest {
    private final Fonts fonts = Fonts.standard();

    @ParameterizedTest
    @EnumSource(Face.class)
    void widthsAgreeWithTheReportsMetrics(Face face) {
        String text = "Torque at the motor, N·m: 0.140 − 25 % θ µ ≤ → 109.0 mm";
        double other = FontMetrics.of(face).width(text, 15);
        // Both read the same advance table; floats against doubles over 55 letters.
        assertThat((double) fonts.width(face, 15, text))
                .isCloseTo(other, org.assertj.core.data.Offset.offset(2e-3));
    }

    @Test
    void digitsAreEquallyWide() {
        float width = fonts.width(Face.SANS, 15, "0");
        for (char digit = '1'; digit <= '9'; digit++) {
            assertThat(fonts.width(Face.SANS, 15, String.valueOf(digit))).isEqualTo(width);
        }
    }

    @Test
    void aSignTheFaceLacksComesFromTheFallback() {
        assertThat(fonts.holder(Face.SANS, 'a')).isEqualTo(Face.SANS);
        assertThat(fonts.holder(Face.SANS, '\u2300')).isEqualTo(Face.FALLBACK);
    }

    @Test
    void linesBreakAtBlanksAndFit() {
        var lines =
                fonts.lines(
                        Face.SANS,
                        15,
                        "The hill over each rule is the worst margin at that value.",
                        150);
        assertThat(lines).hasSizeGreaterThan(2);
        assertThat(lines)
                .allSatisfy(
                        l -> assertThat(fonts.width(Face.SANS, 15, l)).isLessThanOrEqualTo(150));
        assertThat(String.join(" ", lines))
                .isEqualTo("The hill over each rule is the worst margin at that value.");
    }

    @Test
    void aTextThatDoesNotFitIsCutWithAnEllipsis() {
        String cut = fonts.fit(Face.SANS, 15, "springs, bushes, rollers, 3:1", 100);
        assertThat(cut).endsWith("…").hasSizeLessThan(29);
        assertThat(fonts.width(Face.SANS, 15, cut)).isLessThanOrEqualTo(100);
    }
}
