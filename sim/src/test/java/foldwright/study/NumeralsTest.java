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
    void unitsOfResultsAreThoseTheirReaderExpects() {
        assertThat(Numerals.with(1.2934, Shown.NEWTON_METRE)).isEqualTo("1.29\u00a0N·m");
        assertThat(Numerals.with(2388.4, Shown.NEWTON)).isEqualTo("2\u202f388\u00a0N");
        assertThat(Numerals.with(Math.toRadians(5.13), Shown.DEGREE)).isEqualTo("5.13°");
        assertThat(Numerals.with(0.155e3, Shown.NEWTON_PER_MILLIMETRE))
                .isEqualTo("0.155\u00a0N/mm");
        assertThat(Numerals.with(0.16, Shown.PERCENT)).isEqualTo("16.0\u00a0%");
        assertThat(Numerals.with(2 * Math.PI * 3.1, Shown.REVOLUTION_PER_SECOND))
                .isEqualTo("3.10\u00a0rev/s");
    }

    /** A check may hold from 1.11 on: its rounding must keep to that limit, not to 1.5. */
    @Test
    void marginsKeepToTheRuleOfTheirCheck() {
        Amount one = Amount.of(1, Shown.NEWTON);
        Outcome outcome = new Outcome(one, one, 1.1099, 1.11, Place.anywhere(""));
        assertThat(Numerals.margin(outcome)).isEqualTo("1.10×");
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
