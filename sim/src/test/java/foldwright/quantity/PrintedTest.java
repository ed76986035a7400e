// SPDX-License-Identifier: Apache-2.0
package foldwright.quantity;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Numbers as a person reads them. Space before the unit, thin space between groups of three, true
 * minus, and a degree sign without space follow the SI Brochure (9th ed. 2019, sections 5.4.3 and
 * 5.4.4).
 */
class PrintedTest {
    private static final String NB = "\u00A0";
    private static final String THIN = "\u202F";

    @ParameterizedTest
    @CsvSource({
        "2388, '2_388'",
        "1234567, '1_234_567'",
        "-0.5, −0.500",
        "0, 0",
        "999.6, '1_000'",
        "0.13996, 0.140",
        "9.996, 10.0",
        "99.96, 100",
        "0.0100, 0.0100",
        "12.345, 12.3",
        "100.4, 100"
    })
    void threeSignificantDigitsButNeverFewerThanTheWholeNumber(double value, String text) {
        assertThat(Printed.number(value)).isEqualTo(text.replace("_", THIN));
    }

    @ParameterizedTest
    @CsvSource({
        "FORCE, 2388, '2_388~N'",
        "FORCE, 0.0000123, 12.3~µN",
        "TORQUE, 0.14, 0.140~N·m",
        "TORQUE, 0.0004, 400~µN·m",
        "ANGLE, 0.0895353906273091, 5.13°",
        "LENGTH, 0.273, 273~mm",
        "LENGTH, 0.0000234567, 0.023~mm",
        "STIFFNESS, 155, 0.155~N/mm",
        "MASS, 0.0045, 4.50~g",
        "ENERGY, 11.5227, 11.5~J",
        "ACCELERATION, 3, 3.00~m/s²",
        "RATIO, 0.95, 0.950",
        "FORCE, 0, 0~N"
    })
    void valuesCarryTheUnitTheirSizeAsksFor(Dimension dimension, double si, String text) {
        String expected = text.replace("_", THIN).replace("~", NB);
        assertThat(Printed.of(dimension, si)).isEqualTo(expected);
    }

    @Test
    void givenValuesLoseTheirEndingZeros() {
        assertThat(Printed.given(Dimension.LENGTH, 0.19)).isEqualTo("190" + NB + "mm");
        assertThat(Printed.given(Dimension.LENGTH, 0.1955)).isEqualTo("195.5" + NB + "mm");
        assertThat(Printed.given(Dimension.ANGLE, Math.toRadians(46))).isEqualTo("46°");
        assertThat(Printed.given(Dimension.FORCE, 1200)).isEqualTo("1" + THIN + "200" + NB + "N");
    }

    @Test
    void heightsTakeAFixedNumberOfDecimals() {
        assertThat(Printed.in("mm", 0.10904, 1)).isEqualTo("109.0" + NB + "mm");
        assertThat(Printed.in("mm", 0.10904, 0)).isEqualTo("109" + NB + "mm");
        assertThat(Printed.in("%", 0.25, 0)).isEqualTo("25" + NB + "%");
    }

    @ParameterizedTest
    @CsvSource({
        "1.34, 1.34×",
        "1.4996, 1.49×",
        "1.5, 1.50×",
        "0.9999, 0.99×",
        "1.0, 1.00×",
        "2.0049, 2.00×",
        "9.996, 10.0×",
        "12.34, 12.3×",
        "99.97, 99.9×",
        "100, >100×",
        "1e9, >100×",
        "0, 0.00×",
        "-0.3, −0.30×",
        "Infinity, nothing needed",
        "NaN, not given"
    })
    void marginsNeverRoundAcrossAVerdict(double margin, String text) {
        assertThat(Printed.margin(margin)).isEqualTo(text);
    }

    @Test
    void marginsHeedTheLimitOfTheirCheckFromBothSides() {
        assertThat(Printed.margin(1.334, 1, 1.333)).isEqualTo("1.34×");
        assertThat(Printed.margin(1.3329, 1, 1.333)).isEqualTo("1.33×");
        assertThat(Printed.margin(1.9999, 2)).isEqualTo("1.99×");
    }

    @Property(seed = "20261125")
    void aPrintedMarginIsOnTheSameSideOfEveryLimit(
            @ForAll @Scale(9) @DoubleRange(min = 0, max = 99) double margin) {
        String text = Printed.margin(margin);
        double read = Double.parseDouble(text.substring(0, text.length() - 1));
        assertThat(read >= 1).isEqualTo(margin >= 1);
        assertThat(read >= 1.5).isEqualTo(margin >= 1.5);
    }

    @Property(seed = "20261125")
    void printedNumbersKeepThreeDigits(
            @ForAll @Scale(6) @DoubleRange(min = 0.001, max = 1e6) double value) {
        double read = Double.parseDouble(Printed.number(value).replace(THIN, ""));
        // half a unit of the third digit is at most 0.5 % of the value
        assertThat(Math.abs(read - value)).isLessThanOrEqualTo(0.005 * value + 1e-12);
    }

    @ParameterizedTest
    @ValueSource(strings = {"de", "tr", "ar-EG", "hi-IN-u-nu-deva"})
    void everyLocalePrintsTheSame(String tag) {
        Locale before = Locale.getDefault();
        Locale.setDefault(Locale.forLanguageTag(tag));
        try {
            assertThat(Printed.of(Dimension.FORCE, 2388.5))
                    .isEqualTo("2" + THIN + "388" + NB + "N");
            assertThat(Printed.margin(1.345)).isEqualTo("1.34×");
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void whatIsNotKnownIsSaidSo() {
        assertThat(Printed.of(Dimension.FORCE, Double.NaN)).isEqualTo("not given");
        assertThat(Printed.of(Dimension.FORCE, Double.POSITIVE_INFINITY))
                .isEqualTo("unlimited" + NB + "N");
    }

    /** The plain way gives what decimal arithmetic of the JDK gives, wherever it answers. */
    @Property(tries = 5000)
    void plainDigitsAreThoseOfDecimalArithmetic(
            @ForAll @DoubleRange(min = -9, max = 9) double power,
            @ForAll @IntRange(min = 0, max = 9) int decimals,
            @ForAll boolean negative) {
        double value = (negative ? -1 : 1) * Math.pow(10, power);
        long digits = PlainDigits.scaled(value, decimals);
        BigDecimal exact = new BigDecimal(value).setScale(decimals, RoundingMode.HALF_EVEN);
        if (digits != PlainDigits.IN_DOUBT) {
            assertThat(digits).isEqualTo(exact.abs().unscaledValue().longValueExact());
            String plain =
                    PlainDigits.print(digits, decimals, value, new StringBuilder()).toString();
            assertThat(plain.replace(THIN, "").replace("\u2212", "-"))
                    .isEqualTo(
                            exact.signum() < 0
                                    ? exact.toPlainString()
                                    : exact.abs().toPlainString());
        }
        BigDecimal three = new BigDecimal(value).round(new MathContext(3));
        int shown = PlainDigits.decimals(value);
        if (shown != PlainDigits.IN_DOUBT) {
            int whole = three.precision() - three.scale();
            assertThat(shown).isEqualTo(Math.max(0, Math.min(9, 3 - whole)));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 1.5, 0.125, 99.95, 999.5, 9.995, 2.675, 1e-10, 1e12, -0.5})
    void ties(double value) {
        for (int decimals = 0; decimals < 4; decimals++) {
            String exact =
                    new BigDecimal(value)
                            .setScale(decimals, RoundingMode.HALF_EVEN)
                            .toPlainString();
            String ours = Printed.number(value, decimals).replace(THIN, "").replace("\u2212", "-");
            assertThat(ours).isEqualTo(exact.matches("-[0.]+") ? exact.substring(1) : exact);
        }
    }
}
