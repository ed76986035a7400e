// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import foldwright.machine.spring.ConicalCoil;
import org.junit.jupiter.api.Test;

/**
 * Coils of a cone close from the largest: a coil of diameter D gives 8 F D^3/(G d^4) a turn, so
 * that of twice the diameter closes at an eighth of the force (Shigley's, 9th ed., Eq. 10-9 a
 * turn).
 */
class ConeClosingTest {
    private final ConicalCoil coil =
            new ConicalCoil(1.6e-3, 16e-3, 34e-3, 7, 90e-3, "music wire A228");
    private final ConeClosing closing = new ConeClosing(coil);

    @Test
    void freeNothingTouchesAndSolidAllDo() {
        assertThat(closing.radius(90e-3)).isGreaterThan(10 * 17e-3);
        assertThat(closing.radius(5e-3)).isCloseTo(8e-3, offset(1e-4));
    }

    @Test
    void shorterMeansSmallerCoilsTouch() {
        double before = Double.MAX_VALUE;
        for (double length = 85e-3; length > 15e-3; length -= 5e-3) {
            double now = closing.radius(length);
            assertThat(now).isLessThan(before);
            before = now;
        }
    }

    @Test
    void beforeAnyTouchesAllGiveInProportion() {
        // Half the squeeze, half the force: the touching radius grows by the cube root of two.
        double one = closing.radius(88e-3);
        double two = closing.radius(86e-3);
        assertThat(one / two).isCloseTo(Math.cbrt(2), offset(1e-3));
    }
}
