// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.session;

import static org.assertj.core.api.Assertions.assertThat;

import foldwright.machine.file.BadMachineFile;
import foldwright.machine.file.MachineFile;
import foldwright.machine.file.MachineText;
import foldwright.viewer.Headless;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Numbers that can be turned while looking: over their whole range there is a machine. */
class DialRangeTest {
    @Test
    void bothEndsOfEveryRuleAreMachines() throws Exception {
        List<String> refused = new ArrayList<>();
        for (Path path : files()) {
            MachineFile file = MachineFile.read(path);
            List<Dial> all = new ArrayList<>(Dial.of(file.machine()));
            all.addAll(GantryDials.of(file.machine()));
            for (Dial dial : all) {
                double own = dial.value().applyAsDouble(file.machine());
                assertThat(own).as(path + " " + dial.path()).isBetween(dial.low(), dial.high());
                for (double end : new double[] {dial.low(), dial.high()}) {
                    MachineText text = dial.write(MachineText.of(file), end, file.machine());
                    try {
                        text.read();
                    } catch (BadMachineFile e) {
                        refused.add(path.getFileName() + " " + dial.name() + ": " + e.getMessage());
                    }
                }
            }
        }
        assertThat(refused).isEmpty();
    }

    private static List<Path> files() throws IOException {
        List<Path> out = new ArrayList<>();
        Path scenes = Headless.scene("van-bench").toAbsolutePath().normalize().getParent();
        for (Path folder : List.of(scenes, scenes.resolveSibling("seeds"))) {
            try (Stream<Path> found = Files.list(folder)) {
                found.filter(p -> p.toString().endsWith(".json")).forEach(out::add);
            }
        }
        return out;
    }
}
