// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import foldwright.machine.MachineNumbers;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Changing single values of a machine file leaves everything else as it was. */
class MachineTextTest {
    private static final Path SCENE = ScenesTest.ROOT.resolve("scenes/van-bench.json");

    private static MachineText scene() throws BadMachineFile {
        return MachineText.of(MachineFile.read(SCENE));
    }

    private static List<String> changedLines(String before, String after) {
        List<String> old = before.lines().toList();
        return after.lines().filter(line -> !old.contains(line)).toList();
    }

    @Test
    void changesOneNumberInItsUnitAndNothingElse() throws BadMachineFile {
        MachineText changed = scene().with("lift.arm.length", 0.1955);
        assertThat(changedLines(scene().text(), changed.text()))
                .containsExactly("      \"length\": \"195.5 mm\",            // pin to pin");
        assertThat(changed.read().machine().lift().arm().length()).isEqualTo(0.1955);
    }

    @Test
    void keepsTheUnitOfAnglesPerCentAndBareNumbers() throws BadMachineFile {
        assertThat(scene().with("lift.travel.fold.low", Math.toRadians(6)).text())
                .contains("\"low\": \"6 deg\", \"high\": \"46.0 deg\"");
        assertThat(scene().with("lift.arm.centrePin", 0.5).text())
                .contains("\"centrePin\": \"50 %\"");
        assertThat(scene().with("drive.screw.nut.friction", 0.12).text())
                .contains("\"friction\": 0.12, \"frictionLow\"");
    }

    @Test
    void addsAKeyThatIsNotThereYetAndLeavesCommentsWithTheirValues() throws BadMachineFile {
        MachineText line = scene().with("tool.seat.friction", 0.2);
        assertThat(line.text()).contains("\"safetyFactor\": 2, \"friction\": 0.2 }");
        MachineText block = scene().with("base.pinInset", 0.116).with("box.gap", 0.002);
        assertThat(block.text()).contains("\"height\": \"110 mm\", \"gap\": \"2 mm\" }");
        MachineText lines =
                scene().with("deck.undersideBelowPins", 0.007).with("lift.arm.gap", 0.002);
        assertThat(lines.text())
                .contains(
                        "\"mass\": \"0.1125 kg\",           // eight arms with their pins weigh"
                                + " 0.90 kg\n      \"gap\": \"2 mm\"");
        assertThat(lines.read().machine().lift().arm().gap()).hasValue(0.002);
    }

    @Test
    void changesWordsAndRatios() throws BadMachineFile {
        MachineText changed = scene().with("drive.transmission.teeth", "16:32");
        assertThat(changed.read().machine().drive().transmission())
                .extracting("teeth.screw")
                .isEqualTo(32);
        MachineText motor = changed.with("drive.transmission.teeth.motor", 20);
        assertThat(motor.text()).contains("\"teeth\": \"20:32\"");
        assertThatThrownBy(() -> motor.with("drive.transmission.teeth.screw", 32.5))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** Writing each number back as it is gives the same machine, down to the last bit. */
    @Test
    void everyNumberSurvivesBeingWrittenBack() throws BadMachineFile {
        MachineFile file = MachineFile.read(SCENE);
        List<String> paths = file.paths();
        MachineText text = MachineText.of(file);
        for (MachineNumbers.Entry entry : MachineNumbers.all(file.machine())) {
            if (paths.contains(entry.path())) {
                text = text.with(entry.path(), entry.value());
            }
        }
        assertThat(text.read().machine()).isEqualTo(file.machine());
        assertThat(text.text().lines().count()).isEqualTo(file.text().lines().count());
    }

    @Test
    void refusesAPlaceWhereNoNumberIs() throws BadMachineFile {
        MachineText text = scene();
        assertThatThrownBy(() -> text.with("lift.arm", 1.0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageStartingWith("lift.arm: ");
        assertThatThrownBy(() -> text.with("lift.colour", 1.0))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> text.with("springs[4].law.rate", 1.0))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void savesWholeFilesAndNothingThatIsNoMachine(@TempDir Path folder)
            throws BadMachineFile, IOException {
        Path file = folder.resolve("saved.json");
        scene().with("drive.rise.speed", 0.005).save(file);
        assertThat(MachineFile.read(file).text()).contains("\"speed\": \"5 mm/s\"");
        String before = Files.readString(file);
        MachineText broken = scene().with("lift.arm.length", -1);
        assertThatThrownBy(() -> broken.save(file)).isInstanceOf(BadMachineFile.class);
        assertThat(Files.readString(file)).isEqualTo(before);
        assertThat(names(folder)).containsExactly("saved.json");
    }

    @Test
    void aFileThatCannotBeWrittenLeavesNothingBehind(@TempDir Path folder) throws IOException {
        Path taken = folder.resolve("taken");
        Files.createDirectories(taken.resolve("inside"));
        assertThatThrownBy(() -> WholeFile.write(taken, "text")).isInstanceOf(IOException.class);
        assertThatThrownBy(() -> WholeFile.writeNew(taken, "text")).isInstanceOf(IOException.class);
        assertThatThrownBy(() -> WholeFile.write(folder.resolve("no/such/folder"), "text"))
                .isInstanceOf(IOException.class);
        assertThat(names(folder)).containsExactly("taken");
    }

    static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
