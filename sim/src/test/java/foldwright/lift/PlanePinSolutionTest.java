// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The yardstick measured: stacks whose pin forces are known from one-stage relations (W + Wa/2) /
 * tan(phi) (teaching page on scissor equations, 2012), from virtual work for n stages (H. M.
 * Spackman, Mathematical Analysis of Scissor Lifts, Naval Ocean Systems Center TD 1550, June 1989,
 * treats the same layout), and from a friction recursion per stage.
 */
class PlanePinSolutionTest {
    @ParameterizedTest
    @CsvSource({
        "1, .20, 20, 20, .3, .5, 55.77379161, 10.3, 10.3",
        "2, .16, 15, 30, .25, .5, 227.65509926, 15.5, 15.5",
        "3, .12, 35, 12, .2, .25, 53.98399465, 9.6, 3.6",
        "1, 1, 30, 1000, 0, .5, 1732.05080757, 500, 500",
        "1, .20, 20, 20, 0, .8, 54.94954839, 4, 16"
    })
    void givesTheKnownFootForceAndFeet(
            int n,
            double arm,
            double deg,
            double w,
            double wa,
            double e,
            double f,
            double l,
            double r) {
        var s = new PlanePinSolution(PlaneLift.plain(n, arm, wa, w, e), Math.toRadians(deg), 1);
        assertThat(s.footForce()).isCloseTo(f, within(1e-8 * f));
        assertThat(s.leftFoot()[1]).isCloseTo(l, within(1e-9));
        assertThat(s.rightFoot()[1]).isCloseTo(r, within(1e-9));
        assertThat(s.leftFoot()[0]).isCloseTo(f, within(1e-8 * f));
    }

    @Test
    void givesTheKnownPinForcesOfThreeStagesOffCentre() {
        var s = new PlanePinSolution(PlaneLift.plain(3, .12, .2, 12, .25), Math.toRadians(35), 1);
        force(s.centre(1), -89.402065, -6);
        force(s.centre(2), -52.841476, -6);
        force(s.centre(3), -17.423406, -6);
        force(s.left(1), -35.418071, -9.4);
        force(s.right(1), 35.418071, -3.4);
        force(s.left(2), -17.423406, -9.2);
        force(s.right(2), 17.423406, -3.2);
    }

    @Test
    void givesTheKnownPinForcesOfTwoStages() {
        var s = new PlanePinSolution(PlaneLift.plain(2, .16, .25, 30, .5), Math.toRadians(15), 1);
        force(s.centre(1), -340.549636, 0);
        force(s.centre(2), -112.894537, 0);
        force(s.left(1), -112.894537, -15.25);
        force(s.right(1), 112.894537, -15.25);
    }

    /** F = n (W + Wa/2)/tan(theta), in which the place of the load does not appear. */
    @ParameterizedTest
    @CsvSource({"1, .2", "2, .8", "3, .2", "4, .65"})
    void agreesWithVirtualWorkWhereverTheLoadStands(int n, double e) {
        double theta = Math.toRadians(5.13);
        var s = new PlanePinSolution(PlaneLift.plain(n, .19, 9.0 / (2 * n), 50, e), theta, 1);
        double byWork = n * (50 + 9 / 2.0) / Math.tan(theta);
        assertThat(s.footForce()).isCloseTo(byWork, within(1e-11 * byWork));
    }

    /**
     * Weightless arms: H_j (1 - 4q) = H_(j-1) (1 + 4q) + W/tan(theta), q = mu r/h. The recursion
     * neglects the vertical part of the pin forces, so it is close only while the thrust is many
     * times the weight; the difference falls with the square of the angle.
     */
    @ParameterizedTest
    @CsvSource({"1, .1, .003, .017, .002", "3, .1, .003, .017, .002", "3, .3, .004, .013, .02"})
    void comesNearTheFrictionRecursionAtSmallAngles(
            int n, double mu, double r, double h, double nearness) {
        double arm = 0.19;
        double theta = Math.asin(h / arm);
        var lift = PlaneLift.plain(n, arm, 0, 50, .5).with(new PlaneLift.Friction(mu, r, 0, 0));
        double q = mu * r / h;
        double thrust = 0;
        for (int j = 0; j < n; j++) {
            thrust = (50 / Math.tan(theta) + (1 + 4 * q) * thrust) / (1 - 4 * q);
        }
        assertThat(new PlanePinSolution(lift, theta, 1).footForce())
                .isCloseTo(thrust, within(nearness * thrust));
    }

    /** As h sinks to 4 mu r the force grows without bound, and below it nothing moves the stage. */
    @Test
    void locksWhereTheStageHeightIsFourTimesTheFrictionRadius() {
        double arm = 0.19;
        var lift = PlaneLift.plain(1, arm, 0, 50, .5).with(new PlaneLift.Friction(.3, .004, 0, 0));
        double free = 50 / Math.tan(Math.asin(.0049 / arm));
        assertThat(new PlanePinSolution(lift, Math.asin(.0049 / arm), 1).footForce())
                .isGreaterThan(25 * free);
        assertThatThrownBy(() -> new PlanePinSolution(lift, Math.asin(.0045 / arm), 1))
                .as("no push raises it")
                .hasMessageContaining("locked");
    }

    /** Printed pins, mu .3 on 8 mm, in three 95 mm stages 13 mm high: 4.20 times (own sums). */
    @Test
    void threeStagesOnPrintedPinsNeedFourTimesTheForce() {
        double theta = Math.asin(13.0 / 95);
        var free = PlaneLift.plain(3, .095, 0, 20, .5);
        var dry = free.with(new PlaneLift.Friction(.3, .004, 0, 0));
        assertThat(
                        new PlanePinSolution(dry, theta, 1).footForce()
                                / new PlanePinSolution(free, theta, 1).footForce())
                .isCloseTo(4.20, within(.005));
    }

    /** Work put in less work got out over a small rise is what the friction took, in any mix. */
    @Test
    void sinkingNeedsLessThanRisingByTwiceTheFriction() {
        double theta = Math.toRadians(12);
        var lift =
                PlaneLift.plain(2, .19, 1.1, 50, .4)
                        .with(new PlaneLift.Friction(.02, .003, .01, .01));
        double up = new PlanePinSolution(lift, theta, 1).footForce();
        double down = new PlanePinSolution(lift, theta, -1).footForce();
        double free =
                new PlanePinSolution(lift.with(PlaneLift.Friction.NONE), theta, 1).footForce();
        assertThat(up).isGreaterThan(free);
        assertThat(down).isLessThan(free);
        assertThat((up + down) / 2).isCloseTo(free, within(2e-3 * free));
    }

    /** Virtual work with springs: n (W + Wa/2 - S)/tan - foot spring - pin torque/h. */
    @Test
    void springsActAsVirtualWorkSays() {
        double theta = Math.toRadians(9);
        double h = .19 * Math.sin(theta);
        var lift = PlaneLift.plain(2, .19, 1.1, 50, .4).with(new PlaneLift.Springs(30, .7, 12, .4));
        double byWork = 2 * (50 + 2.2 - 30) / Math.tan(theta) - 12 - .4 / h;
        assertThat(new PlanePinSolution(lift, theta, 1).footForce())
                .isCloseTo(byWork, within(1e-11 * byWork));
    }

    private static void force(double[] f, double x, double y) {
        assertThat(f[0]).isCloseTo(x, within(1e-6));
        assertThat(f[1]).isCloseTo(y, within(1e-9));
    }
}
