// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.machine.Machine;
import foldwright.machine.drive.ScrewLine;
import foldwright.machine.linkage.FoldGeometry;
import foldwright.machine.linkage.OnBase;
import foldwright.machine.linkage.OnSlider;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The demo scenes and the starter files are good machine files and say what they should. */
class ScenesTest {
    static final Path ROOT = Path.of("..").toAbsolutePath().normalize();

    static List<Path> files() throws IOException {
        try (Stream<Path> scenes = Files.list(ROOT.resolve("scenes"));
                Stream<Path> seeds = Files.list(ROOT.resolve("seeds"))) {
            return Stream.concat(scenes, seeds)
                    .filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .toList();
        }
    }

    static Machine scene(String name) throws BadMachineFile {
        return MachineFile.read(ROOT.resolve("scenes").resolve(name + ".json")).machine();
    }

    @ParameterizedTest
    @MethodSource("files")
    void everySceneAndSeedReads(Path file) throws BadMachineFile {
        assertThat(MachineFile.read(file).machine().name()).isNotBlank();
    }

    /**
     * Heights, foot travel and masses of the three demo machines, worked out by hand: H = n L sin
     * t, x = L cos t; rounded to 0.1 mm and 0.01 kg there.
     */
    @ParameterizedTest
    @CsvSource({
        "van-bench, 34.0, 273.3, 57.3, 5.20, 0.90",
        "class-plotter, 18.7, 87.2, 14.7, 3.60, 0.70",
        "field-printer, 39.0, 224.6, 35.6, 1.90, 0.45"
    })
    void scenesHaveTheHandWorkedHeightsAndMasses(
            String name, double flat, double top, double foot, double raised, double arms)
            throws BadMachineFile {
        Machine machine = scene(name);
        FoldGeometry fold = new FoldGeometry(machine.lift());
        double low = fold.angle(machine.lift().travel().fold().low());
        double high = fold.angle(machine.lift().travel().fold().high());
        assertThat(fold.height(low) * 1e3).isCloseTo(flat, within(0.06));
        assertThat(fold.height(high) * 1e3).isCloseTo(top, within(0.06));
        assertThat((fold.spread(low, 0) - fold.spread(high, 0)) * 1e3)
                .isCloseTo(foot, within(0.06));
        assertThat(machine.raisedMass()).isCloseTo(raised, within(1e-9));
        assertThat(machine.armMass()).isCloseTo(arms, within(1e-9));
    }

    /** The nut ends at the end of the screw: foot 189.2 mm + 7.5 mm - 150 mm, by hand. */
    @Test
    void screwsStartWhereTheirNutsReachTheEndWhenFlat() throws BadMachineFile {
        Machine machine = scene("van-bench");
        ScrewLine line = machine.drive().lines().get(0);
        assertThat(machine.startOf(line)).isInstanceOf(OnBase.class);
        OnBase start = (OnBase) machine.startOf(line);
        assertThat(start.at().x() * 1e3).isCloseTo(46.7, within(0.06));
        assertThat(start.at().y()).isEqualTo(-0.12);
        assertThat(machine.endOf(line)).isInstanceOf(OnSlider.class);
    }

    /**
     * 3 n + 2 pins a side and 4 n arms: 8 pins and 8 arms for two stages (counted on a drawing).
     */
    @Test
    void liftsCountTheirPinsAndArms() throws BadMachineFile {
        assertThat(scene("van-bench").lift().pinCount()).isEqualTo(16);
        assertThat(scene("field-printer").lift().pinCount()).isEqualTo(22);
        assertThat(scene("field-printer").lift().arms()).isEqualTo(12);
    }
}
