// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import foldwright.machine.Machine;
import foldwright.machine.MachineNumbers;
import foldwright.machine.file.BadMachineFile;
import foldwright.machine.file.CrossChecks;
import foldwright.machine.file.MachineFile;
import foldwright.machine.file.MachineText;
import foldwright.viewer.Headless;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Turning a number of a machine against writing it into the file and reading that. */
class DialTest {
    private static final int POINTS = 9;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "van-bench",
                "van-bench-binds",
                "class-plotter",
                "class-plotter-skews",
                "field-printer",
                "gantry-one-end",
                "gantry-riding-motors"
            })
    void turnedIsWhatTheFileWithThatNumberDescribes(String scene) throws Exception {
        MachineFile file = MachineFile.read(Headless.scene(scene));
        Machine machine = file.machine();
        List<Dial> dials =
                Stream.concat(Dial.of(machine).stream(), GantryDials.of(machine).stream()).toList();
        assertThat(dials).isNotEmpty();
        for (Dial dial : dials) {
            for (int i = 0; i <= POINTS; i++) {
                double si = dial.low() + (dial.high() - dial.low()) * i / POINTS;
                Optional<Machine> read = read(file, dial, si);
                Optional<Machine> turned = turned(machine, dial, si);
                assertThat(turned.isPresent()).as(dial + " at " + si).isEqualTo(read.isPresent());
                turned.ifPresent(m -> assertSame(m, read.orElseThrow()));
            }
        }
    }

    /** A lighter head has a lighter tool; the file's range is all machines. */
    @ParameterizedTest
    @ValueSource(strings = {"van-bench", "class-plotter", "field-printer"})
    void numbersOfAGantryCanBeTurnedAllTheWay(String scene) throws Exception {
        Machine machine = MachineFile.read(Headless.scene(scene)).machine();
        for (Dial dial : GantryDials.of(machine)) {
            assertThat(turned(machine, dial, dial.low())).as(dial.name()).isPresent();
            assertThat(turned(machine, dial, dial.high())).as(dial.name()).isPresent();
            if (dial.path().equals(GantryDials.HEAD)) {
                assertThat(dial.low()).isLessThan(0.8 * dial.value().applyAsDouble(machine));
            }
        }
    }

    private static Optional<Machine> read(MachineFile file, Dial dial, double si) {
        try {
            MachineText text = dial.write(MachineText.of(file), si, file.machine());
            return Optional.of(text.read().machine());
        } catch (BadMachineFile | IllegalArgumentException refused) {
            return Optional.empty();
        }
    }

    private static Optional<Machine> turned(Machine machine, Dial dial, double si) {
        try {
            return Optional.of(dial.on(machine, si)).filter(CrossChecks::agree);
        } catch (IllegalArgumentException refused) {
            return Optional.empty();
        }
    }

    /** The same numbers at the same paths, to the twelve digits that are written. */
    private static void assertSame(Machine a, Machine b) {
        List<MachineNumbers.Entry> ofA = MachineNumbers.all(a);
        List<MachineNumbers.Entry> ofB = MachineNumbers.all(b);
        assertThat(ofA)
                .extracting(MachineNumbers.Entry::path)
                .isEqualTo(ofB.stream().map(MachineNumbers.Entry::path).toList());
        for (int i = 0; i < ofA.size(); i++) {
            double value = ofB.get(i).value();
            assertThat(ofA.get(i).value())
                    .as(ofA.get(i).path())
                    .isCloseTo(value, within(1e-11 * Math.abs(value)));
        }
    }
}
