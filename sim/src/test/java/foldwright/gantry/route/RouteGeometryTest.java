// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.route;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.proof.GantryLayouts;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Lengths, derivatives and relations that follow from a route alone. */
class RouteGeometryTest {
    private static final double R = 0.00636619772;

    static List<BeltLayout> all() {
        GantryLayouts.Size real = GantryLayouts.Size.checks(R);
        return List.of(
                GantryLayouts.singleLoop(real),
                GantryLayouts.crossed(real),
                GantryLayouts.bothEnds(real, 3.0),
                GantryLayouts.oneEnd(real),
                GantryLayouts.ridingMotors(real));
    }

    /** A belt around two equal wheels: two straight strands and two half circles. */
    @Test
    void anEqualPairGivesStrandsOfTheCentreDistanceAndHalfTurns() {
        Belt belt =
                new Belt(
                        "pair",
                        List.of(
                                Wheel.driven(
                                        "a",
                                        Carrier.BASE,
                                        0,
                                        0,
                                        0.01,
                                        Sense.COUNTER_CLOCKWISE,
                                        "axle"),
                                Wheel.idler(
                                        "b", Carrier.BASE, 0.1, 0, 0.01, Sense.COUNTER_CLOCKWISE)),
                        0.002,
                        0.006,
                        1e4,
                        0.0083,
                        30,
                        0);
        BeltGeometry g = new BeltGeometry(belt);
        g.place(Pose.at(0, 0));
        assertThat(g.length(0)).isCloseTo(0.1, within(1e-15));
        assertThat(g.wrap(0)).isCloseTo(Math.PI, within(1e-12));
        assertThat(g.startY(0)).isCloseTo(-0.01, within(1e-15));
    }

    /** Open belt formula: sin(alpha) = (R - r)/C, wrap pi -+ 2 alpha (handbook geometry). */
    @Test
    void anUnequalPairFollowsTheOpenBeltFormula() {
        double c = 0.12;
        double big = 0.03;
        double small = 0.012;
        Belt belt =
                new Belt(
                        "pair",
                        List.of(
                                Wheel.idler("a", Carrier.BASE, 0, 0, small, Sense.CLOCKWISE),
                                Wheel.idler("b", Carrier.BASE, 0, c, big, Sense.CLOCKWISE)),
                        0.002,
                        0.006,
                        1e4,
                        0.0083,
                        30,
                        0);
        BeltGeometry g = new BeltGeometry(belt);
        g.place(Pose.at(0, 0));
        double alpha = Math.asin((big - small) / c);
        assertThat(g.length(0)).isCloseTo(c * Math.cos(alpha), within(1e-14));
        assertThat(g.wrap(0)).isCloseTo(Math.PI - 2 * alpha, within(1e-12));
        assertThat(g.wrap(1)).isCloseTo(Math.PI + 2 * alpha, within(1e-12));
    }

    @ParameterizedTest
    @MethodSource("all")
    void derivativesAgreeWithCentralDifferencesOfTheExactExtension(BeltLayout layout) {
        BeltSystem system = new BeltSystem(layout, IdlerModel.LUMPED);
        int columns = BeltSystem.POSE_COLUMNS + system.axleNames().size();
        double[] row = new double[columns];
        Random random = new Random(20260101);
        for (int trial = 0; trial < 20; trial++) {
            double[] at = new double[columns];
            at[1] = 0.18 + 0.05 * random.nextGaussian() / 3;
            at[3] = 0.03 * random.nextGaussian() / 3;
            at[4] = at[1];
            for (int k = 0; k < columns; k++) {
                at[k] += 1e-4 * random.nextGaussian();
            }
            for (int s = 0; s < system.sections().size(); s++) {
                extension(system, s, at);
                system.gradient(s, row);
                double[] exact = row.clone();
                for (int k = 0; k < columns; k++) {
                    double h = 1e-5;
                    double[] up = at.clone();
                    up[k] += h;
                    double[] down = at.clone();
                    down[k] -= h;
                    double slope =
                            (extension(system, s, up) - extension(system, s, down)) / (2 * h);
                    // Cancellation 1e-16/1e-5 and curvature h^2/6 both stay near 1e-11.
                    assertThat(exact[k])
                            .as("%s section %d column %d", layout.name(), s, k)
                            .isCloseTo(slope, within(1e-8));
                }
            }
        }
    }

    private static double extension(BeltSystem system, int s, double[] at) {
        system.place(new Pose(at[0], at[1], at[2], at[3], at[4], at[5]));
        double[] angles = java.util.Arrays.copyOfRange(at, BeltSystem.POSE_COLUMNS, at.length);
        return system.extension(s, angles);
    }

    /**
     * Closed form of both layouts: r phi1 = x + y, r phi2' = x - y with phi2' counter-clockwise.
     */
    @Test
    void bothBeltPairsGiveTheKnownRelationOfMotorsAndTool() {
        for (BeltLayout layout :
                List.of(
                        GantryLayouts.singleLoop(GantryLayouts.Size.checks(R)),
                        GantryLayouts.crossed(GantryLayouts.Size.checks(R)))) {
            MotionRelation relation =
                    RouteCheck.relation(new BeltSystem(layout, IdlerModel.LUMPED));
            double[][] expected = {{1 / R, 1 / R}, {1 / R, -1 / R}};
            for (int m = 0; m < 2; m++) {
                assertThat(relation.anglePerX(m) * R).isCloseTo(1, within(1e-12));
                assertThat(relation.anglePerY(m) * R).isCloseTo(expected[m][1] * R, within(1e-12));
                assertThat(relation.xPerAngle(m)).isCloseTo(R / 2, within(1e-12 * R));
                assertThat(relation.yPerAngle(m))
                        .isCloseTo(m == 0 ? R / 2 : -R / 2, within(1e-12 * R));
            }
        }
    }

    @Test
    void sideDrivesMoveOneAxisEach() {
        for (BeltLayout layout :
                List.of(
                        GantryLayouts.bothEnds(GantryLayouts.Size.checks(R), 3.0),
                        GantryLayouts.bothEnds(
                                GantryLayouts.Size.checks(R), Double.POSITIVE_INFINITY),
                        GantryLayouts.oneEnd(GantryLayouts.Size.checks(R)))) {
            BeltSystem system = new BeltSystem(layout, IdlerModel.LUMPED);
            MotionRelation relation = RouteCheck.relation(system);
            int x = system.axle("motor x");
            int y = system.axle("motor y");
            assertThat(Math.abs(relation.xPerAngle(x))).isCloseTo(R, within(1e-12 * R));
            assertThat(relation.yPerAngle(x)).isCloseTo(0, within(1e-15));
            assertThat(Math.abs(relation.yPerAngle(y))).isCloseTo(R, within(1e-12 * R));
            assertThat(relation.xPerAngle(y)).isCloseTo(0, within(1e-15));
        }
    }

    @Test
    void aLayoutNobodyDrewBeforeWorksFromItsListAlone() {
        BeltLayout layout = GantryLayouts.ridingMotors(GantryLayouts.Size.checks(R));
        assertThat(RouteCheck.check(layout)).isEmpty();
        MotionRelation relation = RouteCheck.relation(new BeltSystem(layout, IdlerModel.LUMPED));
        // A pinion that rolls along a belt that lies still: one radius a radian.
        assertThat(Math.abs(relation.xPerAngle(0))).isCloseTo(R, within(1e-12 * R));
        assertThat(Math.abs(relation.yPerAngle(1))).isCloseTo(R, within(1e-12 * R));
    }

    /** Strand-line lengths of the closed forms, x = 0.09, y = 0.12, w = 0.15, D = 0.36 m. */
    @Test
    void pointWheelsGiveTheStrandLineLengths() {
        double tiny = 1e-9;
        BeltSystem h =
                new BeltSystem(
                        GantryLayouts.singleLoop(GantryLayouts.Size.checks(tiny)),
                        IdlerModel.LUMPED);
        h.place(Pose.at(0.09, 0.12));
        assertThat(h.length(0)).isCloseTo(0.36, within(1e-7));
        assertThat(h.length(1)).isCloseTo(1.5, within(1e-7));
        assertThat(h.length(2)).isCloseTo(0.18, within(1e-7));
        BeltSystem x =
                new BeltSystem(
                        GantryLayouts.crossed(GantryLayouts.Size.checks(tiny)), IdlerModel.LUMPED);
        x.place(Pose.at(0.09, 0.12));
        assertThat(x.length(0)).isCloseTo(0.36, within(1e-7));
        assertThat(x.length(1)).isCloseTo(0.96, within(1e-7));
        assertThat(x.length(2)).isCloseTo(0.18, within(1e-7));
        assertThat(x.length(3)).isCloseTo(1.14, within(1e-7));
    }

    @Test
    void noFalseAlarmOnWorkingLayouts() {
        for (BeltLayout layout : all()) {
            assertThat(RouteCheck.check(layout)).as(layout.name()).isEmpty();
        }
        GantryLayouts.Size plotter = GantryLayouts.Size.plotter();
        assertThat(RouteCheck.check(GantryLayouts.singleLoop(plotter))).isEmpty();
        assertThat(RouteCheck.check(GantryLayouts.crossed(plotter))).isEmpty();
    }

    @Test
    void theRelationReadsAsASentence() {
        BeltSystem system =
                new BeltSystem(
                        GantryLayouts.singleLoop(GantryLayouts.Size.checks(R)), IdlerModel.LUMPED);
        assertThat(RouteCheck.relation(system).describe())
                .isEqualTo(
                        "x [mm] = 3.1831 motor 1 + 3.1831 motor 2 [rad]\n"
                                + "y [mm] = 3.1831 motor 1 - 3.1831 motor 2 [rad]");
    }
}
