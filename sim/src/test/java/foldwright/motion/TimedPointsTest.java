// SPDX-License-Identifier: Apache-2.0
package foldwright.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TimedPointsTest {
    private static TimedPoints course(String text) throws ToolpathException {
        return new TimedPoints(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void aParabolaIsMetExactlyBetweenEvenPoints() throws ToolpathException {
        // Central differences of a parabola at even steps are exact, and so is the cubic.
        StringBuilder text = new StringBuilder("time [ms],y [mm],x [m]\n");
        for (int i = 0; i <= 10; i++) {
            text.append(100 * i + 500).append(',').append(i * i).append(',').append(i).append('\n');
        }
        TimedPoints course = course(text.toString());
        CourseSample sample = new CourseSample();
        assertThat(course.at(0.35, sample)).isTrue();
        assertThat(sample.x).isCloseTo(3.5, within(1e-12));
        assertThat(sample.y).isCloseTo(12.25e-3, within(1e-15));
        assertThat(sample.vy).isCloseTo(70e-3, within(1e-13));
        assertThat(sample.ay).isCloseTo(0.2, within(1e-11));
        assertThat(sample.line).isEqualTo(6);
        assertThat(course.at(2, sample)).isFalse();
        assertThat(sample.y).isCloseTo(100e-3, within(1e-15));
        assertThat(sample.vy).isZero();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "''                                     | line 1: an empty file",
                "t [s],x [mm]                           | line 1: a header without time, x and y",
                "t [h],x [mm],y [mm]                    | line 1: column \"t [h]\"",
                "t [s],x [mm],y [mm]                    | line 2: no point behind the header",
                "t [s],x [mm],y [mm];0,0,0              | line 3: only one point",
                "t [s],x [mm],y [mm];0,0,0;0,1,1        | line 3: time 0.0 s after 0.0 s",
                "t [s],x [mm],y [mm];0,0,0;1,a,1        | line 3: \"a\" where a number should be",
                "t [s],x [mm],y [mm];0,0,0;1,NaN,1      | line 3: \"NaN\" where a number should be",
                "t [s],x [mm],y [mm];0,0,0;1,1          | line 3: \"\" where a number should be",
            })
    void faultsAreNamed(String text, String message) {
        assertThatThrownBy(() -> course(text.replace(';', '\n')))
                .isInstanceOf(ToolpathException.class)
                .hasMessageStartingWith(message);
    }
}
