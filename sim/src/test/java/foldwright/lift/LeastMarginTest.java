// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import static org.assertj.core.api.Assertions.assertThat;

import foldwright.machine.Machine;
import foldwright.machine.MachineNumbers;
import foldwright.machine.file.BadMachineFile;
import foldwright.machine.file.MachineFile;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The margin from few heights against that of the whole force curve. */
class LeastMarginTest {
    @ParameterizedTest
    @CsvSource({
        "van-bench, drive.screw.nut.friction, 0.12",
        "van-bench, drive.transmission.teeth.screw, 32",
        "van-bench, lift.pins.usual.bearing.friction, 0.16",
        "van-bench, springs[0].law.freeLength, 0.103",
        "van-bench-binds, deck.masses[0].mass, 0.9",
        "class-plotter, springs[0].law.rate, 65000",
        "class-plotter, drive.screw.nut.friction, 0.2",
        "field-printer, deck.masses[0].mass, 0.5"
    })
    void meetsTheForceCurve(String scene, String path, double value) throws BadMachineFile {
        Machine machine = MachineFile.read(Path.of("..", "scenes", scene + ".json")).machine();
        Machine variant = MachineNumbers.with(machine, path, value);
        double whole = new LiftSolver(variant).curve().worst().orElseThrow().margin();

        assertThat(new LeastMargin(machine).of(variant) / whole).isBetween(0.9999, 1.005);
    }

    @Test
    void isNothingWhereFrictionLocks() throws BadMachineFile {
        Machine machine =
                MachineFile.read(Path.of("..", "scenes", "van-bench-binds.json")).machine();
        Machine thick = MachineNumbers.with(machine, "lift.pins.usual.diameter", 0.024);
        Machine rusty = MachineNumbers.with(thick, "lift.pins.usual.bearing.friction", 0.6);

        LiftSolver solver = new LiftSolver(rusty);
        assertThat(solver.curve(20).findings())
                .anyMatch(f -> f.kind() == Finding.Kind.PINS_LOCK && f.to() > solver.lowest());
        assertThat(new LeastMargin(machine).of(rusty)).isZero();
    }
}
