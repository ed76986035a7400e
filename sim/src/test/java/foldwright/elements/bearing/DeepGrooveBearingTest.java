// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.bearing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import foldwright.elements.bearing.BearingLife.Weibull;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Life and equivalent loads; the worked examples are in the proof chapter. */
class DeepGrooveBearingTest {
    private static final String SEED = "20261125";

    @Provide
    Arbitrary<DeepGrooveBearing> bearings() {
        return Arbitraries.of(DeepGrooveBearing.catalog().all());
    }

    @ParameterizedTest
    @CsvSource({"0.014, 0.19, 2.3", "0.084, 0.28, 1.55", "0.11, 0.30, 1.45", "0.56, 0.44, 1.0"})
    void factorsHitTheRowsOfIso281(double ratio, double e, double y) {
        DeepGrooveBearing b = DeepGrooveBearing.get("608");
        double axial = ratio * b.staticRating();
        assertThat(b.axialThreshold(axial)).isCloseTo(e, within(1e-12));
        assertThat(b.axialFactor(axial)).isCloseTo(y, within(1e-12));
    }

    @Property(tries = 500, seed = SEED)
    void equivalentLoadIsEvenAndAtLeastMostOfTheRadialLoad(
            @ForAll("bearings") DeepGrooveBearing b,
            @ForAll @Scale(4) @DoubleRange(min = -200, max = 200) double radial,
            @ForAll @Scale(4) @DoubleRange(min = -100, max = 100) double axial) {
        double p = b.equivalentLoad(radial, axial);
        assertThat(b.equivalentLoad(-radial, -axial)).isEqualTo(p);
        assertThat(p).isGreaterThanOrEqualTo(0.56 * Math.abs(radial));
        assertThat(b.equivalentStaticLoad(radial, axial)).isGreaterThanOrEqualTo(Math.abs(radial));
    }

    @Test
    void lifeFallsWithTheCubeOfTheLoad() {
        assertThat(BearingLife.turns(1000, 100)).isCloseTo(1e9, within(1.0));
        assertThat(BearingLife.turns(1000, 200)).isCloseTo(1e9 / 8, within(1.0));
        assertThat(BearingLife.ratingFor(100, 1e9)).isCloseTo(1000, within(1e-9));
    }

    @Test
    void lifeBeyondTheTableOfFactorsIsNotGiven() {
        DeepGrooveBearing b = DeepGrooveBearing.get("623");
        assertThat(b.lifeTurns(10, 0.57 * b.staticRating())).isEmpty();
        assertThat(b.lifeTurns(10, 0.55 * b.staticRating())).isPresent();
    }

    @Property(tries = 300, seed = SEED)
    void weibullFormIsItsOwnInverse(
            @ForAll @Scale(4) @DoubleRange(min = 0.05, max = 0.99) double r) {
        double life = Weibull.SHIGLEY.lifeAt(r);
        assertThat(Weibull.SHIGLEY.reliability(life)).isCloseTo(r, within(1e-12));
        // L10 is by definition the life that 90 % survive; the fit gives 1 within 1 %
        assertThat(Weibull.SHIGLEY.lifeAt(0.9)).isCloseTo(1, within(0.01));
    }

    @Test
    void bearingsAreFoundByDesignationAndBore() {
        assertThat(DeepGrooveBearing.get(" 625 ").outside()).isCloseTo(0.016, within(1e-12));
        assertThat(DeepGrooveBearing.withBore(0.005))
                .extracting(DeepGrooveBearing::designation)
                .startsWith("685")
                .contains("625", "605")
                .hasSize(5);
        assertThat(DeepGrooveBearing.find("626Z")).isEmpty();
        assertThatThrownBy(() -> DeepGrooveBearing.get("626Z")).hasMessageContaining("626");
    }

    @Test
    void dimensionsGrowFromBoreToOutside() {
        for (DeepGrooveBearing b : DeepGrooveBearing.catalog().all()) {
            assertThat(b.bore()).isLessThan(b.outside());
            assertThat(b.staticRating()).isLessThan(b.dynamicRating());
        }
    }

    @Test
    void plainPinShearsAndRubs() {
        PlainPin pin = new PlainPin(0.006, 0.01);
        assertThat(pin.singleShear(100)).isCloseTo(2 * pin.doubleShear(-100), within(1e-6));
        // 1 MPa at 3 mm radius and 10 rad/s: 0.03 MPa m/s
        assertThat(pin.pv(60, 10)).isCloseTo(0.03e6, within(1e-6));
        assertThat(pin.frictionTorque(100, 0.1)).isCloseTo(0.03, within(1e-12));
    }
}
