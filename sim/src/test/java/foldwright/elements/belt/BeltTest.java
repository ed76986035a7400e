// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.belt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Belts; the worked examples are in the proof chapter. */
class BeltTest {
    private static final String SEED = "20261125";

    @Property(tries = 500, seed = SEED)
    void tensionsCarryTheForceAndNeverPush(
            @ForAll @Scale(4) @DoubleRange(min = 0.05, max = 2) double l1,
            @ForAll @Scale(4) @DoubleRange(min = 0.05, max = 2) double l2,
            @ForAll @Scale(4) @DoubleRange(min = 0, max = 100) double pretension,
            @ForAll @Scale(4) @DoubleRange(min = 0, max = 300) double force) {
        TwoSpanDrive d = new TwoSpanDrive(15000, l1, l2, pretension);
        TwoSpanDrive.Tensions t = d.tensions(force);
        assertThat(t.tight() - t.slack()).isCloseTo(force, within(1e-9));
        assertThat(t.slack()).isNotNegative();
        // each span stretches by what the carriage moves
        double move = d.deflection(force);
        double shift = (t.tight() - pretension) / d.pullingStiffness();
        assertThat(move).isCloseTo(shift, within(1e-12));
    }

    @Property(tries = 300, seed = SEED)
    void pretensionAskedLeavesItsShare(
            @ForAll @Scale(4) @DoubleRange(min = 0.05, max = 2) double l1,
            @ForAll @Scale(4) @DoubleRange(min = 0.05, max = 2) double l2,
            @ForAll @Scale(4) @DoubleRange(min = 1, max = 300) double force) {
        double t0 = new TwoSpanDrive(15000, l1, l2, 1).pretensionFor(force, 0.2);
        double slack = new TwoSpanDrive(15000, l1, l2, t0).tensions(force).slack();
        assertThat(slack).isCloseTo(0.2 * force, within(1e-9 * force));
    }

    @Test
    void soundOf30NewtonOver150MmIsThatOfTheJobSheet() {
        // a builder's page, 2019: 8.3 g/m; 30 N over 150 mm sounds at 200 Hz
        assertThat(BeltSpan.pluckedFrequency(30, 0.15, 0.0083)).isCloseTo(200, within(1.0));
        assertThat(BeltSpan.stiffness(15000, 0.3)).isCloseTo(50e3, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({
        "20, 180, 10, 1",
        "12, 180, 6, 1",
        "12, 150, 5, 0.8",
        "16, 45, 2, 0.2",
        "16, 20, 0, 0"
    })
    void teethInMeshLimitTheForce(int teeth, double wrap, int mesh, double factor) {
        BeltPulley pulley = new BeltPulley(teeth, 2e-3, Math.toRadians(wrap));
        assertThat(pulley.teethInMesh()).isEqualTo(mesh);
        assertThat(pulley.meshFactor()).isEqualTo(factor);
    }

    @Property(tries = 300, seed = SEED)
    void shaftLoadIsTheSumOfBothStrands(
            @ForAll @Scale(4) @DoubleRange(min = 0, max = 100) double a,
            @ForAll @Scale(4) @DoubleRange(min = 0, max = 100) double b,
            @ForAll @Scale(4) @DoubleRange(min = 0, max = 3.1) double wrap) {
        BeltPulley pulley = new BeltPulley(20, 2e-3, wrap);
        // vectors: one strand leaves at 0, the other at pi - wrap
        double x = a + b * Math.cos(Math.PI - wrap);
        double y = b * Math.sin(Math.PI - wrap);
        assertThat(pulley.shaftLoad(a, b)).isCloseTo(Math.hypot(x, y), within(1e-6));
        assertThat(pulley.shaftLoad(a, a)).isCloseTo(2 * a * Math.sin(wrap / 2), within(1e-6));
    }

    @Test
    void beltsAreNamedByProfileAndWidthAndScaleWithIt() {
        BeltProfile six = BeltProfile.get("2 mm curvilinear glass fibre rubber, 6 mm");
        BeltProfile bound =
                BeltProfile.get("2 mm curvilinear glass fibre rubber 6 mm (lower bound)");
        assertThat(bound.stretchStiffness()).isLessThan(six.stretchStiffness());
        assertThat(six.inWidth(12e-3).stretchStiffness()).isCloseTo(30000, within(1e-6));
        assertThat(six.inWidth(12e-3).pretension().low()).isCloseTo(54, within(1e-9));
        assertThat(six.linearMass().middle()).isCloseTo(0.00715, within(1e-9));
        assertThat(BeltProfile.get("MXL trapezoidal glass fibre rubber, 6.4 mm").pitch())
                .isCloseTo(2.032e-3, within(1e-12));
        assertThatThrownBy(() -> BeltProfile.get("2 mm curvilinear"))
                .hasMessageContaining("2 mm curvilinear glass fibre rubber");
    }
}
