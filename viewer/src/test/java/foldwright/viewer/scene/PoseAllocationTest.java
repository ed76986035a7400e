// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.scene;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import foldwright.viewer.Headless;
import java.lang.management.ManagementFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Posing a machine and writing its records makes no objects. */
class PoseAllocationTest {
    private static final Lean LEAN = new Lean(0.01, 0.002);

    @ParameterizedTest
    @ValueSource(strings = {"van-bench", "class-plotter", "field-printer"})
    void aFrameOfPosesMakesNothing(String name) {
        MachineScene scene = new MachineScene(Headless.machine(name));
        var threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long id = Thread.currentThread().getId();
        GantryMotion.Place place = scene.gantry().orElseThrow().home();
        scene.lean(LEAN);
        long least = Long.MAX_VALUE;
        for (int round = 0; round < 40; round++) {
            long before = threads.getThreadAllocatedBytes(id);
            for (int i = 0; i < 20; i++) {
                double share = i / 19.0;
                scene.place(
                        scene.shape().flat() + share * (scene.shape().top() - scene.shape().flat()),
                        place);
                scene.write(PartLook.PLAIN);
            }
            least = Math.min(least, threads.getThreadAllocatedBytes(id) - before);
        }
        // The counter itself may cost some bytes; a frame of objects would be thousands.
        assertThat(least).isLessThan(256);
    }
}
