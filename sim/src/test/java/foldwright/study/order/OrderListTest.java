// SPDX-License-Identifier: Apache-2.0
package foldwright.study.order;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.gantry.route.Belt;
import foldwright.gantry.route.BeltGeometry;
import foldwright.gantry.route.Carrier;
import foldwright.gantry.route.Pose;
import foldwright.gantry.route.Sense;
import foldwright.gantry.route.Wheel;
import foldwright.machine.Machine;
import foldwright.machine.file.MachineFile;
import foldwright.study.Amount;
import foldwright.study.Assess;
import foldwright.study.Assessment;
import foldwright.study.Check;
import foldwright.study.HandRuns;
import foldwright.study.Shown;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class OrderListTest {
    private static Machine scene(String name) throws Exception {
        return MachineFile.read(Path.of("../scenes/" + name + ".json")).machine();
    }

    private static OrderList list(Machine machine, List<Check> checks) {
        return OrderList.of(new Assessment(machine, checks, List.of(), List.of(), List.of()));
    }

    private static OrderLine line(OrderList list, String part) {
        return list.lines().stream().filter(l -> l.part().equals(part)).findFirst().orElseThrow();
    }

    /** Counted on the drawings: 2 arms a stage and side, 3 pins a stage and 2 more a side. */
    @ParameterizedTest
    @CsvSource({
        "van-bench, arm, 8",
        "van-bench, pin, 16",
        "van-bench, bush, 16",
        "van-bench, lead screw, 2",
        "van-bench, lift motor, 1",
        "van-bench, compression spring, 4",
        "van-bench, leg block, 4",
        "van-bench, toothed belt, 2",
        "class-plotter, arm, 4",
        "class-plotter, compression spring, 2",
        "class-plotter, lead screw, 1",
        "class-plotter, toothed belt, 1",
        "class-plotter-skews, leg block, 2",
        "field-printer, arm, 12",
        "field-printer, pin, 22",
        "field-printer, ball bearing, 44",
        "field-printer, torsion spring, 4",
        "field-printer, lift motor, 2"
    })
    void countsAreThoseOfTheDrawing(String scene, String part, int count) throws Exception {
        assertThat(line(list(scene(scene), List.of()), part).count()).isEqualTo(count);
    }

    @ParameterizedTest
    @ValueSource(strings = {"van-bench", "class-plotter", "field-printer"})
    void nothingIsLeftWithoutNumbers(String scene) throws Exception {
        OrderList list = list(scene(scene), List.of());
        assertThat(list.lines())
                .allSatisfy(
                        l ->
                                assertThat(l.size())
                                        .isNotBlank()
                                        .doesNotContain("NaN", "Optional", "[", "not given"));
    }

    /** The loads are those of the checks, so that list and verdicts never differ. */
    @Test
    void loadsAreThoseOfTheChecks() throws Exception {
        Assessment a = Assess.machine(scene("van-bench"), new HandRuns(), w -> {});
        OrderLine nut = line(OrderList.of(a), "nut");
        Check check = a.checks().stream().filter(c -> c.id().equals("order.nut")).findFirst().get();
        assertThat(nut.use()).isPresent();
        assertThat(nut.use().get().outcome()).isEqualTo(check.outcome());
        assertThat(nut.use().get().words())
                .isEqualTo(
                        check.outcome().required().text()
                                + " of "
                                + Amount.of(5e6, Shown.MEGAPASCAL).text());
    }

    /** Blocks show the load their check found. */
    @Test
    void blocksShowTheirLoadAgainstTheirRating() throws Exception {
        Assessment a = Assess.machine(scene("van-bench"), new HandRuns(), w -> {});
        OrderList list = OrderList.of(a);
        for (String part : List.of("leg block", "bridge block")) {
            OrderLine.Use use = line(list, part).use().orElseThrow();
            assertThat(use.outcome().required().si()).as(part).isPositive();
            assertThat(use.outcome().margin()).as(part).isGreaterThan(10);
        }
    }

    /** Frame size 17 has a face of 42.3 mm and a shaft of 5 mm (NEMA ICS 16). */
    @Test
    void standardSizesComeFromTheTables() throws Exception {
        OrderList list = list(scene("van-bench"), List.of());
        assertThat(line(list, "lift motor").size()).contains("face 42.3", "shaft 5");
        assertThat(line(list, "lead screw").size()).contains("Tr10x2, ISO 2904");
    }

    /**
     * Open belt on two pulleys, Budynas and Nisbett, Shigley's Mechanical Engineering Design, 9th
     * ed., Eq. 17-2 (from memory): L = sqrt(4C² - (D-d)²) + (D θD + d θd)/2, θ = π ± 2
     * asin((D-d)/2C).
     */
    @Test
    void lengthOfABeltIsThatOfTheHandbook() {
        double small = 16 * 0.002 / (2 * Math.PI);
        double large = 3 * small;
        double apart = 0.12;
        Belt belt =
                new Belt(
                        "two pulleys",
                        List.of(
                                Wheel.idler(
                                        "a", Carrier.BASE, 0, 0, small, Sense.COUNTER_CLOCKWISE),
                                Wheel.idler(
                                        "b",
                                        Carrier.BASE,
                                        apart,
                                        0,
                                        large,
                                        Sense.COUNTER_CLOCKWISE)),
                        0.002,
                        0.009,
                        15e3,
                        0.01,
                        30,
                        0);
        BeltGeometry g = new BeltGeometry(belt);
        g.place(Pose.at(0, 0));
        double lean = Math.asin((large - small) / apart);
        double expected =
                2 * Math.sqrt(apart * apart - (large - small) * (large - small))
                        + large * (Math.PI + 2 * lean)
                        + small * (Math.PI - 2 * lean);
        assertThat(GantryParts.length(g)).isCloseTo(expected, within(1e-12));
    }

    /** Two pulleys of 48 teeth 240 mm apart: 2 x 240 + 48 x 2 = 576 mm round. */
    @Test
    void theLiftsBeltIsLongerThanTheWayRoundItsScrews() throws Exception {
        assertThat(line(list(scene("van-bench"), List.of()), "closed toothed belt").size())
                .contains("more than 576\u00a0mm round");
    }
}
