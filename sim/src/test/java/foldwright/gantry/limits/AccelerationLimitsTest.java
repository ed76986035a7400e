// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.limits;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.gantry.model.GantryAssembly;
import foldwright.gantry.model.GantryModel;
import foldwright.machine.Machine;
import foldwright.machine.file.MachineFile;
import foldwright.proof.GantryCases;
import foldwright.study.GantryLimits;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Largest accelerations against sums by hand. */
class AccelerationLimitsTest {
    private static GantryModel scene(String name) throws Exception {
        Path file = Path.of("..", "scenes", name + ".json");
        return GantryAssembly.of(MachineFile.read(file).machine().gantry().orElseThrow())
                .weightlessIdlers()
                .weightlessBelts();
    }

    /** a = 2 K s/(m B^2) for a skew s end to end: 8.85 m/s2 for 0.05 mm. */
    @Test
    void curedPlotterMayAccelerateAsTheHandSumSays() throws Exception {
        GantryModel model = scene("class-plotter");
        AccelerationLimits limits =
                new AccelerationLimits(
                        model, Allowed.running().withSkew(0.05e-3), FrictionCase.NONE, 0.2);
        LimitPoint p = limits.at(0, 0.2, Heading.RIGHT);
        double hand = 2 * 7200 * 0.05e-3 / (0.42 * 0.44 * 0.44);
        assertThat(p.acceleration()).isCloseTo(hand, within(0.01 * hand));
        // Printed as 8.9.
        assertThat(p.acceleration()).isCloseTo(8.9, within(0.01 * 8.9));
        assertThat(p.setBy()).isEqualTo(Criterion.SKEW);
        assertThat(p.utilisation().get(Criterion.SKEW)).isCloseTo(1, within(1e-3));
        // The same order in every process, so that files can be compared.
        assertThat(List.copyOf(p.utilisation().keySet())).isSorted();
    }

    /** Play alone breaks the limit, but the machine stands in the middle of it until it moves. */
    @Test
    void badPlotterMayNotAccelerateAtAll() throws Exception {
        AccelerationLimits limits =
                new AccelerationLimits(
                        scene("class-plotter-skews"),
                        Allowed.running().withSkew(0.05e-3),
                        FrictionCase.NONE,
                        0.2);
        LimitPoint p = limits.at(0, 0.2, Heading.RIGHT);
        assertThat(p.acceleration()).isZero();
        assertThat(p.setBy()).isEqualTo(Criterion.SKEW);
    }

    /** Straight towards the motors the bad plotter stays in the middle of its play for a while. */
    @Test
    void everyPlaceOfTheBadPlotterHasALimit() throws Exception {
        List<LimitPoint> map =
                new AccelerationLimits(
                                scene("class-plotter-skews"),
                                Allowed.running().withSkew(0.05e-3),
                                FrictionCase.NONE,
                                0.2)
                        .map(3, 3);
        List<Double> straight =
                map.stream()
                        .filter(p -> p.x() == 0 && p.heading() == Heading.FRONT)
                        .map(LimitPoint::acceleration)
                        .toList();
        assertThat(straight).hasSize(3).allMatch(a -> a > 1);
        assertThat(straight.get(2)).isCloseTo(straight.get(0), within(1e-3 * straight.get(0)));
    }

    /** Leaving places out that allow more changes no digit of the least, nor which place it is. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "van-bench",
                "class-plotter",
                "class-plotter-skews",
                "field-printer",
                "gantry-one-end",
                "gantry-riding-motors"
            })
    void leastIsTheLeastOfTheMap(String name) throws Exception {
        Machine machine = MachineFile.read(Path.of("..", "scenes", name + ".json")).machine();
        GantryLimits limits = new GantryLimits(machine);
        Map<Heading, LimitPoint> ofMap = GantryLimits.least(limits.map());
        Map<Heading, LimitPoint> least = limits.least();
        assertThat(least).containsOnlyKeys(Heading.values());
        least.forEach(
                (heading, p) -> {
                    LimitPoint other = ofMap.get(heading);
                    assertThat(p.acceleration()).isEqualTo(other.acceleration());
                    assertThat(p.setBy()).isEqualTo(other.setBy());
                    assertThat(p.x()).isEqualTo(other.x());
                    assertThat(p.y()).isEqualTo(other.y());
                    assertThat(p.utilisation()).isEqualTo(other.utilisation());
                });
    }

    /** Pure x acceleration at which the first span goes slack, no friction, 30 and 32 N. */
    @Test
    void beltsGoSlackWhereTheClosedFormSays() {
        double[][] expected = {{171.429, 228.571}, {200.553, 251.429}};
        List<GantryCases> cases = List.of(GantryCases.S1, GantryCases.S2);
        for (int i = 0; i < 2; i++) {
            GantryCases c = cases.get(i);
            slack(c.singleLoop(GantryCases.POINT), c, expected[i][0]);
            GantryCases equal =
                    new GantryCases(
                            c.id(), c.x(), c.y(), c.pretension1(), c.pretension1(), c.load());
            slack(equal.crossed(GantryCases.POINT), c, expected[i][1]);
        }
    }

    private static void slack(GantryModel model, GantryCases c, double expected) {
        GantryModel strong =
                model.withMotors(
                        model.motors().stream()
                                .map(
                                        m ->
                                                foldwright.gantry.model.AxisMotor.plain(
                                                        m.axle(),
                                                        1e6 * m.curve().at(0),
                                                        1e-6 * m.rotorInertia()))
                                .toList());
        Allowed taut =
                new Allowed(
                        Double.POSITIVE_INFINITY,
                        Double.POSITIVE_INFINITY,
                        0,
                        0,
                        1,
                        Double.POSITIVE_INFINITY,
                        Double.POSITIVE_INFINITY,
                        Double.POSITIVE_INFINITY,
                        Double.POSITIVE_INFINITY);
        LimitPoint p =
                new AccelerationLimits(strong, taut, FrictionCase.NONE, 0)
                        .at(c.x(), c.y(), Heading.RIGHT);
        // The carriage shifts by millimetres there and skew adds to the crossed tensions: 5 %.
        assertThat(p.acceleration()).isCloseTo(expected, within(0.05 * expected));
        assertThat(p.setBy()).isEqualTo(Criterion.BELT_TENSION);
    }

    /** Unequal pretension of crossed belts skews the bridge at rest: 2 w dT/(Kg + Kbelt). */
    @Test
    void restSkewComesFromTensionDifference() {
        GantryCases c = GantryCases.S2;
        RestSkew rest = RestSkew.at(c.crossed(GantryCases.POINT), c.x(), c.y());
        assertThat(rest.tension()).isCloseTo(0.3 * 0.000140127, within(2e-4 * 0.3 * 0.00014));
        assertThat(rest.play()).isZero();
        assertThat(rest.squareness()).isZero();
    }

    @Test
    void theMotorSetsTheLimitWhereItIsWeak() throws Exception {
        GantryModel model = scene("class-plotter");
        AccelerationLimits limits =
                new AccelerationLimits(model, Allowed.running(), FrictionCase.AGAINST_MOTION, 0.2);
        LimitPoint p = limits.at(0, 0.2, Heading.BACK_RIGHT);
        assertThat(p.setBy()).isEqualTo(Criterion.MOTOR_TORQUE);
        // tau1 = r (Fx + Fy)/2 + J alpha: motor 1 does all the work on this diagonal.
        double r = 20 * 0.002 / (2 * Math.PI);
        double a = p.acceleration() * Math.sqrt(0.5);
        double force = 0.42 * a + 1.0 + (0.80 * a + 3.0);
        double rotor = 57e-7 * 2 * a / r;
        double needed = r * force / 2 + rotor;
        double available = model.motors().get(0).curve().at(0.2 * Math.sqrt(0.5) * 2 / r) / 1.5;
        assertThat(needed).isCloseTo(available, within(0.01 * available));
    }
}
