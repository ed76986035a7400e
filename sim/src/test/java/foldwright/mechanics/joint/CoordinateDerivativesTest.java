// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.joint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.mechanics.Mechanism;
import foldwright.mechanics.body.Body;
import foldwright.mechanics.body.Marker;
import foldwright.mechanics.body.MassProperties;
import foldwright.mechanics.body.Pose;
import foldwright.mechanics.body.Rotation;
import foldwright.mechanics.body.State;
import foldwright.mechanics.body.Vec3;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Contract of every coordinate, against differences: gradient, second derivative and the
 * acceleration of its value under constant body velocities.
 */
class CoordinateDerivativesTest {
    private static final Mechanism M = new Mechanism();
    private static final Body A = body("a", new Vec3(.1, .2, -.1), new Vec3(1, 2, .5), .4);
    private static final Body B = body("b", new Vec3(.5, -.1, .3), new Vec3(-1, .3, 2), .9);
    private static final Marker ON_A = marker(A, new Vec3(.03, -.05, .02), new Vec3(.2, 1, .4));
    private static final Marker ON_B = marker(B, new Vec3(-.02, .06, .07), new Vec3(.7, .2, .9));

    /** Step of the differences: error step2 against rounding/step, both near 1e-9. */
    private static final double STEP = 1e-5;

    private static Body body(String name, Vec3 at, Vec3 axis, double angle) {
        Vec3 centre = new Vec3(.01, .02, -.03);
        return M.body(
                name,
                new Pose(at, Rotation.about(axis, angle)),
                MassProperties.block(1, centre, new Vec3(.1, .2, .3)));
    }

    private static Marker marker(Body on, Vec3 at, Vec3 axis) {
        return on.marker(new Pose(at, Rotation.frame(axis)));
    }

    static Stream<Coordinate> coordinates() {
        Coordinate angle = M.angle(ON_A, ON_B);
        Coordinate travel = M.travel(ON_A, ON_B);
        return Stream.of(
                angle,
                travel,
                M.distance(ON_A, ON_B),
                new Combination(List.of(travel, angle), 1, -.01),
                new Combination(
                        List.of(M.distance(M.base().marker(Vec3.ZERO), ON_B), travel), 2, 3));
    }

    @ParameterizedTest
    @MethodSource("coordinates")
    void gradientIsThatOfDifferences(Coordinate c) {
        State s = M.start();
        double[] g = new double[6 * c.count()];
        c.evaluate(s, g, 0);
        for (int k = 0; k < c.count(); k++) {
            for (int n = 0; c.body(k) > 0 && n < 6; n++) {
                double slope =
                        (c.value(moved(s, c.body(k), n, STEP))
                                        - c.value(moved(s, c.body(k), n, -STEP)))
                                / (2 * STEP);
                assertThat(g[6 * k + n]).isCloseTo(slope, within(1e-8));
            }
        }
    }

    @ParameterizedTest
    @MethodSource("coordinates")
    void rateAndCurvatureAreThoseOfAMotion(Coordinate c) {
        State s = M.start();
        Random random = new Random(3);
        for (int i = 6; i < s.v.length; i++) {
            s.v[i] = random.nextDouble() - .5;
        }
        s.refresh();
        double before = c.value(drifted(s, -1e-4));
        double now = c.value(s);
        double after = c.value(drifted(s, 1e-4));
        assertThat(c.rate(s)).isCloseTo((after - before) / 2e-4, within(1e-7));
        // second difference: rounding 1e-16/1e-8, truncation 1e-8
        double curvature = (after - 2 * now + before) / 1e-8;
        assertThat(c.convective(s)).isCloseTo(curvature, within(1e-6));
    }

    /** Angles leave their second derivative out, see {@link AxisAngle}. */
    static Stream<Coordinate> lengths() {
        return Stream.of(M.travel(ON_A, ON_B), M.distance(ON_A, ON_B));
    }

    @ParameterizedTest
    @MethodSource("lengths")
    void hessianIsSymmetricSecondDerivative(Coordinate c) {
        State s = M.start();
        double[][] h = new double[18][18];
        c.hessian(s, 1, (a, b, block) -> add(h, a, b, block));
        double step = 1e-4;
        for (int p = 6; p < 18; p++) {
            // along one unknown the exponential map is straight: pure second derivative
            double up = c.value(moved(s, p / 6, p % 6, step));
            double down = c.value(moved(s, p / 6, p % 6, -step));
            double second = (up - 2 * c.value(s) + down) / (step * step);
            assertThat(h[p][p]).as("unknown %d", p).isCloseTo(second, within(1e-6));
        }
        for (int p = 6; p < 12; p++) {
            for (int q = 12; q < 18; q++) {
                double mixed = mixed(c, s, p, q, step);
                assertThat(h[p][q]).as("%d, %d", p, q).isCloseTo(mixed, within(1e-6));
            }
        }
    }

    private static double mixed(Coordinate c, State s, int p, int q, double step) {
        double sum = 0;
        for (int i = -1; i <= 1; i += 2) {
            for (int j = -1; j <= 1; j += 2) {
                State t = moved(moved(s, p / 6, p % 6, i * step), q / 6, q % 6, j * step);
                sum += i * j * c.value(t);
            }
        }
        return sum / (4 * step * step);
    }

    private static void add(double[][] h, int a, int b, double[] block) {
        for (int i = 0; i < 6; i++) {
            for (int j = 0; j < 6; j++) {
                double v = block[6 * i + j];
                if (a == b) {
                    h[6 * a + i][6 * a + j] += .5 * v;
                    h[6 * a + j][6 * a + i] += .5 * v;
                } else {
                    h[6 * a + i][6 * b + j] += v;
                    h[6 * b + j][6 * a + i] += v;
                }
            }
        }
    }

    private static State moved(State s, int body, int unknown, double by) {
        State t = s.copy();
        double[] p = new double[6];
        p[unknown] = by;
        for (int i = 0; i < 3; i++) {
            t.x[3 * body + i] += p[i];
        }
        t.turn(body, s.q, 4 * body, p[3], p[4], p[5]);
        return t;
    }

    /** Straight drift and steady turning of all bodies for a time. */
    private static State drifted(State s, double time) {
        State t = s.copy();
        for (int b = 1; b < s.bodies(); b++) {
            for (int i = 0; i < 3; i++) {
                t.x[3 * b + i] += time * s.v[6 * b + i];
            }
            int w = 6 * b + 3;
            t.turn(b, s.q, 4 * b, time * s.v[w], time * s.v[w + 1], time * s.v[w + 2]);
        }
        return t;
    }
}
