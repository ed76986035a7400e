// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.column;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Columns and whirling; the worked examples are in the proof chapter. */
class ColumnTest {
    private static final double E = 205e9;
    private static final double YIELD = 250e6;

    @Property(tries = 500, seed = "20261125")
    void longerColumnsCarryLess(
            @ForAll @Scale(4) @DoubleRange(min = 0.01, max = 2) double a,
            @ForAll @Scale(4) @DoubleRange(min = 0.01, max = 2) double b) {
        double shorter = column(Math.min(a, b)).criticalLoad(1).force();
        double longer = column(Math.max(a, b)).criticalLoad(1).force();
        assertThat(longer).isLessThanOrEqualTo(shorter);
        assertThat(shorter).isLessThanOrEqualTo(column(a).area() * YIELD);
    }

    private static RoundColumn column(double length) {
        return new RoundColumn(0.008, length, E, YIELD);
    }

    @Test
    void curvesMeetWithOneValueAndOneSlope() {
        // at the transition both curves give half the squash load
        double transition = RoundColumn.transition(1, E, YIELD);
        double length = transition * 0.002;
        CriticalLoad euler = column(length * (1 + 1e-9)).criticalLoad(1);
        CriticalLoad johnson = column(length * (1 - 1e-9)).criticalLoad(1);
        assertThat(euler.curve()).isEqualTo(CriticalLoad.Curve.EULER);
        assertThat(johnson.curve()).isEqualTo(CriticalLoad.Curve.JOHNSON);
        double half = column(length).area() * YIELD / 2;
        assertThat(euler.force()).isCloseTo(half, within(1e-7 * half));
        assertThat(johnson.force()).isCloseTo(half, within(1e-7 * half));
    }

    @Property(tries = 300, seed = "20261125")
    void sizingInvertsTheLoad(
            @ForAll @Scale(4) @DoubleRange(min = 100, max = 1e5) double force,
            @ForAll @Scale(4) @DoubleRange(min = 0.05, max = 2) double length) {
        double diameter = RoundColumn.diameterFor(force, length, 1, E, YIELD);
        double carries = new RoundColumn(diameter, length, E, YIELD).criticalLoad(1).force();
        assertThat(carries).isCloseTo(force, within(1e-9 * force));
    }

    @ParameterizedTest
    @EnumSource(EndFixity.class)
    void whirlRootSatisfiesItsBeamEquation(EndFixity ends) {
        double b = Math.sqrt(ends.whirlConstant());
        // frequency equations of the Euler-Bernoulli beam (Timoshenko, any edition)
        double rest =
                switch (ends) {
                    case FIXED_FREE -> Math.cos(b) * Math.cosh(b) + 1;
                    case PINNED_PINNED -> Math.sin(b);
                    case FIXED_PINNED -> Math.tan(b) - Math.tanh(b);
                    case FIXED_FIXED -> Math.cos(b) * Math.cosh(b) - 1;
                };
        assertThat(rest).isCloseTo(0, within(1e-12));
    }

    @Test
    void thrustLowersTheWhirlingSpeedToZeroAtBuckling() {
        Whirl shaft = new Whirl(0.0062, 0.3, E, 7850);
        RoundColumn same = new RoundColumn(0.0062, 0.3, E, 1e12);
        double buckling = Math.PI * Math.PI * E * Math.PI * Math.pow(0.0062, 4) / 64 / 0.09;
        assertThat(shaft.criticalSpeed(EndFixity.PINNED_PINNED, 0, buckling))
                .isEqualTo(shaft.criticalSpeed(EndFixity.PINNED_PINNED));
        assertThat(shaft.criticalSpeed(EndFixity.PINNED_PINNED, buckling, buckling)).isZero();
        assertThat(same.radiusOfGyration()).isEqualTo(0.00155);
    }
}
