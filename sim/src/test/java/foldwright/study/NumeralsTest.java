// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class NumeralsTest {
    @Test
    void threeSignificantDigitsWithThinSpaceAndUnit() {
        assertThat(Numerals.with(1.2934, Shown.NEWTON_METRE)).isEqualTo("1.29\u00a0N·m");
        assertThat(Numerals.with(2388.4, Shown.NEWTON)).isEqualTo("2\u202f388\u00a0N");
        assertThat(Numerals.with(-112, Shown.NEWTON)).isEqualTo("\u2212112\u00a0N");
        assertThat(Numerals.with(Math.toRadians(5.13), Shown.DEGREE)).isEqualTo("5.13°");
        assertThat(Numerals.with(9.995, Shown.NEWTON)).isEqualTo("10.0\u00a0N");
        assertThat(Numerals.with(0, Shown.NEWTON)).isEqualTo("0\u00a0N");
    }

    @Test
    void lengthsStopAtAMicrometre() {
        assertThat(Numerals.with(23.44e-6, Shown.MILLIMETRE)).isEqualTo("0.023\u00a0mm");
    }

    @Test
    void unknownIsNeverZero() {
        assertThat(Numerals.with(Double.NaN, Shown.NEWTON)).isEqualTo("unknown");
        assertThat(Numerals.margin(Double.NaN)).isEqualTo("unknown");
        assertThat(Numerals.margin(Double.POSITIVE_INFINITY)).isEqualTo("no load here");
    }

    @Test
    void marginsAreRoundedDown() {
        assertThat(Numerals.margin(1.4996)).isEqualTo("1.49×");
        assertThat(Numerals.margin(0.9999)).isEqualTo("0.99×");
        assertThat(Numerals.margin(1.9999999999999998)).isEqualTo("2.00×");
        assertThat(Numerals.margin(13.07)).isEqualTo("13.0×");
        assertThat(Numerals.margin(100)).isEqualTo(">100×");
        assertThat(Numerals.margin(-2.025)).isEqualTo("\u22122.03×");
    }

    @Property
    void aPrintedMarginHasTheVerdictOfTheMargin(@ForAll @DoubleRange(min = 0, max = 99) double m) {
        String printed = Numerals.margin(m).replace("×", "");
        assertThat(Verdict.of(Double.parseDouble(printed))).isEqualTo(Verdict.of(m));
    }

    @Test
    void pointIsTheDecimalSignInEveryLocale() {
        Locale before = Locale.getDefault();
        try {
            for (String tag : new String[] {"de", "tr", "ar-EG"}) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertThat(Numerals.with(1.2934, Shown.NEWTON_METRE)).isEqualTo("1.29\u00a0N·m");
            }
        } finally {
            Locale.setDefault(before);
        }
    }
}
