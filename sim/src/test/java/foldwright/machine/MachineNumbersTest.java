// SPDX-License-Identifier: Apache-2.0
package foldwright.machine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import foldwright.machine.file.BadMachineFile;
import foldwright.machine.file.MachineFile;
import foldwright.machine.spring.Coil;
import foldwright.machine.spring.Upright;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Numbers of a machine by their key path. */
class MachineNumbersTest {
    private static Machine machine() throws BadMachineFile {
        return MachineFile.read(Path.of("../scenes/van-bench.json")).machine();
    }

    @Test
    void findsNumbersInRecordsListsPointsAndOpenings() throws BadMachineFile {
        Machine machine = machine();
        assertThat(MachineNumbers.find(machine, "lift.arm.length")).hasValue(0.19);
        assertThat(MachineNumbers.find(machine, "springs[0].law.activeCoils")).hasValue(15.5);
        assertThat(MachineNumbers.find(machine, "springs[0].place.at[1][1]")).hasValue(-0.09);
        assertThat(MachineNumbers.find(machine, "lift.travel.fold.low"))
                .hasValue(Math.toRadians(5.13));
        assertThat(MachineNumbers.find(machine, "drive.transmission.teeth.screw")).hasValue(48);
        assertThat(MachineNumbers.find(machine, "drive.screw.thread.pitch")).hasValue(0.002);
        assertThat(MachineNumbers.find(machine, "lift.arm.gap")).isEmpty();
        assertThat(MachineNumbers.find(machine, "lift.arm")).isEmpty();
    }

    @Test
    void changesOneNumberAndSharesTheRest() throws BadMachineFile {
        Machine machine = machine();
        Machine wire = MachineNumbers.with(machine, "springs[0].law.wire", 0.0017);
        assertThat(((Coil) wire.springs().get(0).law()).wire()).isEqualTo(0.0017);
        assertThat(wire.lift()).isSameAs(machine.lift());
        Machine moved = MachineNumbers.with(machine, "springs[0].place.at[3][0]", 0.12);
        assertThat(((Upright) moved.springs().get(0).place()).at().get(3).x()).isEqualTo(0.12);
        Machine optional = MachineNumbers.with(machine, "lift.arm.gap", 0.002);
        assertThat(optional.lift().arm().gap()).hasValue(0.002);
    }

    @Test
    void everyNumberCanBeSetToItself() throws BadMachineFile {
        Machine machine = machine();
        for (MachineNumbers.Entry entry : MachineNumbers.all(machine)) {
            assertThat(MachineNumbers.with(machine, entry.path(), entry.value()))
                    .as(entry.path())
                    .isEqualTo(machine);
        }
        assertThat(MachineNumbers.all(machine)).hasSizeGreaterThan(150);
    }

    @Test
    void refusesWhatIsNotAllowedByPath() throws BadMachineFile {
        Machine machine = machine();
        assertThatThrownBy(() -> MachineNumbers.with(machine, "lift.arm.length", -1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage(
                        "lift.arm.length: Arm: length is -1.0 [SI], allowed: more than 5 mm, at most 5"
                                + " m");
        assertThatThrownBy(() -> MachineNumbers.with(machine, "lift.stages", 1.5))
                .hasMessage("lift.stages: there is no number to change");
        assertThatThrownBy(() -> MachineNumbers.with(machine, "springs[7].law.wire", 1))
                .hasMessage("springs[7].law.wire: there is no number to change");
        assertThatThrownBy(() -> MachineNumbers.with(machine, "", 1))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
