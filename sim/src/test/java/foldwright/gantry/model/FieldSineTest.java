// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The motor field's own sine against the library's. */
class FieldSineTest {
    /** Error of the polynomial and of the reduction, over ten periods in steps of a milliradian. */
    @Test
    void isTheSineToTwelveDigits() {
        double worst = 0;
        for (int i = -63_000; i <= 63_000; i++) {
            double x = 1e-3 * i;
            worst = Math.max(worst, Math.abs(FieldSine.of(x) - Math.sin(x)));
        }
        assertThat(worst).isLessThan(1e-12);
    }

    /** Slope one at zero, odd to the last bit, which mirror images rely on. */
    @Test
    void isOdd() {
        assertThat(FieldSine.of(1e-9)).isEqualTo(1e-9);
        for (double x = 0.01; x < 20; x *= 1.07) {
            assertThat(FieldSine.of(-x)).isEqualTo(-FieldSine.of(x));
        }
    }
}
