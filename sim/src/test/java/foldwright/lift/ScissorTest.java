// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ScissorTest {
    /** Pythagoras: H = n L sin θ, x = L cos θ. */
    @ParameterizedTest
    @CsvSource({"2, 190, 5.13, 34.0", "1, 255, 20, 87.2", "3, 95, 52, 224.6"})
    void centralPinsStandAtOneAngle(int n, double mm, double deg, double height) {
        var shape = new Scissor(n, mm * 1e-3, .5).at(Math.toRadians(deg));
        assertThat(shape.height()).isCloseTo(height * 1e-3, within(6e-5));
        assertThat(shape.foot())
                .isCloseTo(mm * 1e-3 * Math.cos(Math.toRadians(deg)), within(1e-15));
        assertThat(shape.fixedX(n)).isCloseTo(0, within(1e-15));
    }

    /** Every arm keeps its length and both arms of a cross meet at the centre pin. */
    @ParameterizedTest
    @ValueSource(doubles = {.45, .5, .55})
    void armsKeepTheirLengthAndMeetAtTheCentrePin(double share) {
        double arm = .19;
        var shape = new Scissor(3, arm, share).at(Math.toRadians(50));
        for (int k = 1; k <= 3; k++) {
            double rise = shape.z(k) - shape.z(k - 1);
            double runA = shape.slideX(k) - shape.fixedX(k - 1);
            double runB = shape.fixedX(k) - shape.slideX(k - 1);
            assertThat(Math.hypot(runA, rise)).isCloseTo(arm, within(1e-15));
            assertThat(Math.hypot(runB, rise)).isCloseTo(arm, within(1e-15));
            assertThat(shape.fixedX(k - 1) + share * runA)
                    .isCloseTo(shape.slideX(k - 1) + share * runB, within(1e-15));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {.45, .5, .55})
    void heightAndItsSlopeAgree(double share) {
        var scissor = new Scissor(3, .19, share);
        double angle = Math.toRadians(52);
        double step = 1e-6;
        double slope =
                (scissor.at(angle + step).height() - scissor.at(angle - step).height())
                        / (2 * step);
        var shape = scissor.at(angle);
        assertThat(shape.rise()).isCloseTo(slope, within(1e-8));
        assertThat(scissor.atHeight(shape.height()).angle(1)).isCloseTo(angle, within(1e-12));
        double travel = scissor.at(angle - step).foot() - scissor.at(angle + step).foot();
        assertThat(shape.heightPerTravel()).isCloseTo(2 * step * slope / travel, within(1e-7));
    }

    @Test
    void refusesWhatCannotClose() {
        assertThatThrownBy(() -> new Scissor(2, .19, .5).atHeight(.4))
                .hasMessage("2 stages with arms of 190.0 mm cannot stand 400.0 mm high");
        assertThatThrownBy(() -> new Scissor(2, .19, .4).at(Math.toRadians(10)))
                .hasMessage("stage 2 cannot close at 10°");
    }
}
