// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.bearing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import foldwright.elements.bearing.PointContact.Elastic;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Hertz contacts; the worked examples are in the proof chapter. */
class ContactTest {
    private static final String SEED = "20261125";

    @ParameterizedTest
    @CsvSource({
        "0, 1.570796326794897, 1.570796326794897",
        "0.1, 1.612441348720219, 1.530757636897763",
        "0.5, 1.854074677301372, 1.350643881047675",
        "0.9, 2.578092113348173, 1.104774732704073",
        "0.99, 3.695637362989875, 1.015993545025223"
    })
    void ellipticIntegralsAgreeWithTheTable(double m, double first, double second) {
        // Abramowitz & Stegun, Handbook of Mathematical Functions, Table 17.1 (15 digits)
        assertThat(EllipticIntegrals.first(m)).isCloseTo(first, within(2e-14));
        assertThat(EllipticIntegrals.second(m)).isCloseTo(second, within(2e-14));
    }

    @Property(tries = 500, seed = SEED)
    void legendreRelationHolds(@ForAll @Scale(4) @DoubleRange(min = 0.01, max = 0.99) double m) {
        // E K' + E' K - K K' = pi/2 (A&S 17.3.13)
        double k = EllipticIntegrals.first(m);
        double e = EllipticIntegrals.second(m);
        double k1 = EllipticIntegrals.first(1 - m);
        double e1 = EllipticIntegrals.second(1 - m);
        assertThat(e * k1 + e1 * k - k * k1).isCloseTo(Math.PI / 2, within(1e-13));
    }

    @Property(tries = 300, seed = SEED)
    void approachGrowsWithTheTwoThirdsPowerOfTheLoad(
            @ForAll @Scale(4) @DoubleRange(min = 0.505, max = 0.6) double conformity,
            @ForAll @Scale(4) @DoubleRange(min = 0.1, max = 1000) double load) {
        PointContact c = PointContact.ballInGroove(0.003, conformity, 100, Elastic.STEEL);
        double k = c.stiffnessConstant();
        assertThat(k * Math.pow(c.approach(load), 1.5)).isCloseTo(load, within(1e-9 * load));
        double pressure = c.peakPressure(load);
        double area = Math.PI * c.longHalfAxis(load) * c.shortHalfAxis(load);
        // the pressure is a half ellipsoid: mean is two thirds of the peak
        assertThat(pressure * area * 2 / 3).isCloseTo(load, within(1e-9 * load));
        assertThat(c.axisRatio()).isGreaterThan(1);
    }

    @Property(tries = 200, seed = SEED)
    void tighterGrooveGivesALongerEllipseAndAStifferContact(
            @ForAll @Scale(4) @DoubleRange(min = 0.51, max = 0.6) double a,
            @ForAll @Scale(4) @DoubleRange(min = 0.51, max = 0.6) double b) {
        PointContact tight = groove(Math.min(a, b));
        PointContact open = groove(Math.max(a, b));
        assertThat(tight.axisRatio()).isGreaterThanOrEqualTo(open.axisRatio());
        assertThat(tight.approach(50)).isLessThanOrEqualTo(open.approach(50));
        assertThat(tight.peakPressure(50)).isLessThanOrEqualTo(open.peakPressure(50));
    }

    private static PointContact groove(double conformity) {
        return PointContact.ballInGroove(0.003, conformity, 0, Elastic.STEEL);
    }

    @Test
    void curveFitOfTheAxisRatioIsNear() {
        // Hamrock & Brewe 1983 (from memory): kappa = 1.0339 (Ry/Rx)^0.636, within 3 % up to 100
        PointContact c = groove(0.52);
        double rx = 0.0015;
        double ry = 1 / (1 / 0.0015 - 1 / (0.52 * 0.003));
        assertThat(c.axisRatio())
                .isCloseTo(1.0339 * Math.pow(ry / rx, 0.636), within(0.03 * c.axisRatio()));
    }

    @Test
    void crossedEqualCylindersTouchLikeASphereOnAFlat() {
        // K. L. Johnson, Contact Mechanics 1985, ch. 4.1: equal crossed cylinders of radius R
        PointContact sphere =
                PointContact.spheres(0.002, Double.POSITIVE_INFINITY, Elastic.STEEL, Elastic.STEEL);
        PointContact pair = PointContact.spheres(0.004, 0.004, Elastic.STEEL, Elastic.STEEL);
        assertThat(pair.approach(10)).isCloseTo(sphere.approach(10), within(1e-15));
        assertThat(sphere.axisRatio()).isEqualTo(1);
    }

    private static BallGeometry angular() {
        return new BallGeometry(9, 2.381e-3, 0.52, 12e-3, Math.toRadians(25), Elastic.STEEL);
    }

    @Property(tries = 300, seed = SEED)
    void preloadedPairBalancesItsTwoSides(
            @ForAll @Scale(4) @DoubleRange(min = 1, max = 500) double preload,
            @ForAll @Scale(4) @DoubleRange(min = -4, max = 4) double share) {
        PreloadedPair pair = new PreloadedPair(angular(), preload);
        double force = share * preload;
        double d0 = pair.preloadDeflection();
        double k = preload / Math.pow(d0, 1.5);
        double x = pair.displacement(force);
        double front = Math.pow(Math.max(0, d0 + x), 1.5);
        double rear = Math.pow(Math.max(0, d0 - x), 1.5);
        assertThat(k * (front - rear)).isCloseTo(force, within(1e-9 * preload));
        assertThat(pair.displacement(-force)).isEqualTo(-x);
    }

    @Test
    void preloadedPairIsAsStiffAsStatedAndContinuousWhereItLetsGo() {
        PreloadedPair pair = new PreloadedPair(angular(), 50);
        assertThat(1e-3 / pair.displacement(1e-3))
                .isCloseTo(pair.stiffness(), within(1e-6 * pair.stiffness()));
        double edge = pair.unloadingForce();
        assertThat(pair.displacement(edge)).isCloseTo(pair.preloadDeflection(), within(1e-15));
        assertThat(pair.displacement(edge * (1 - 1e-9)))
                .isCloseTo(pair.preloadDeflection(), within(1e-13));
    }

    @Property(tries = 100, seed = SEED)
    void thrustAngleSolvesItsEquation(
            @ForAll @Scale(4) @DoubleRange(min = 10, max = 30000) double thrust) {
        ThrustContact c = new ThrustContact(16, 22.225e-3, 1.0464, Math.toRadians(40), 896.7e6);
        double a = c.angle(thrust);
        double left = thrust / (16 * 22.225e-3 * 22.225e-3 * 896.7e6);
        double right = Math.sin(a) * Math.pow(Math.cos(c.freeAngle()) / Math.cos(a) - 1, 1.5);
        assertThat(right).isCloseTo(left, within(1e-9 * left + 1e-14));
        assertThat(c.deflection(thrust)).isPositive();
    }

    @Test
    void impossibleContactsAreRefusedByName() {
        assertThatThrownBy(() -> PointContact.ballInGroove(0.003, 0.49, 0, Elastic.STEEL))
                .hasMessage("groove conformity is 0.49 1, allowed: 0.5 to 1.0");
        BallGeometry radial = new BallGeometry(7, 3e-3, 0.52, 10.5e-3, 0, Elastic.STEEL);
        assertThatThrownBy(() -> new PreloadedPair(radial, 50))
                .hasMessageContaining("contact angle");
    }
}
