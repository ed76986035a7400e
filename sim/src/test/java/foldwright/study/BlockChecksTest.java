// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.machine.Machine;
import foldwright.machine.file.MachineFile;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Rail blocks under the asked acceleration. */
class BlockChecksTest {
    private static Machine scene(String name) throws Exception {
        return MachineFile.read(Path.of("..", "scenes", name + ".json")).machine();
    }

    private static List<Check> checks(Machine machine) {
        return new BlockChecks(machine, new GantrySweep(machine.gantry().orElseThrow())).checks();
    }

    private static Check leg(Machine machine) {
        return checks(machine).stream()
                .filter(c -> c.id().equals("order.leg-block"))
                .findFirst()
                .get();
    }

    @Test
    void everySceneStaysFarUnderItsRatings() throws Exception {
        for (String name :
                List.of(
                        "van-bench",
                        "class-plotter",
                        "class-plotter-skews",
                        "field-printer",
                        "gantry-one-end",
                        "gantry-riding-motors")) {
            List<Check> checks = checks(scene(name));
            assertThat(checks).as(name).hasSize(2);
            assertThat(checks).as(name).allMatch(c -> c.verdict() == Verdict.HOLDS);
        }
    }

    /**
     * One block a leg, 420 g at 4 m/s2 with its belts and idlers, 10 % more: M = m a B/2 in all,
     * half of it on each, of 6 N m.
     */
    @Test
    void aSingleBlockTakesHalfTheRackingMoment() throws Exception {
        Outcome o = leg(scene("class-plotter-skews")).outcome();
        double half = 0.5 * 1.096 * 0.42 * 4 * 0.22;
        assertThat(o.required().si()).isCloseTo(half, within(0.02 * half));
        assertThat(o.available().si()).isEqualTo(6);
    }

    /** Two blocks a leg take it as a couple of side forces; a moment rating is not asked for. */
    @Test
    void twoBlocksTakeTheMomentAsACouple() throws Exception {
        Machine machine = scene("class-plotter");
        double apart = machine.gantry().orElseThrow().legs().guide().spacing();
        Outcome o = leg(machine).outcome();
        double half = 0.5 * 1.096 * 0.42 * 4 * 0.22;
        assertThat(o.available().si()).isEqualTo(3800);
        // The right rail floats: both blocks of the left one share the push along the bridge.
        double hand = half / apart + 0.5 * 1.096 * 0.42 * 4;
        assertThat(o.required().si()).isCloseTo(hand, within(0.02 * hand));
    }
}
