// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.keys;

import static org.assertj.core.api.Assertions.assertThat;

import foldwright.machine.Machine;
import foldwright.machine.file.BadMachineFile;
import foldwright.machine.file.MachineFile;
import foldwright.study.Edit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The comparison gives what the records' own equality gives. */
class SameValuesTest {
    private static Machine machine(Path file) throws BadMachineFile {
        return MachineFile.read(file).machine();
    }

    private static Machine bench() throws BadMachineFile {
        return machine(Path.of("..", "scenes", "van-bench.json"));
    }

    private static List<Machine> scenes() throws IOException, BadMachineFile {
        List<Machine> out = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("..", "scenes"))) {
            for (Path file : files.filter(f -> f.toString().endsWith(".json")).sorted().toList()) {
                out.add(machine(file));
            }
        }
        return out;
    }

    @Test
    void agreesWithEqualityOnAllPairsOfDemoMachines() throws Exception {
        List<Machine> once = scenes();
        List<Machine> again = scenes();
        assertThat(once).hasSizeGreaterThan(4);
        for (Machine a : once) {
            for (Machine b : again) {
                assertThat(SameValues.in(a, b)).isEqualTo(a.equals(b));
                assertThat(SameValues.in(a.lift(), b.lift())).isEqualTo(a.lift().equals(b.lift()));
                assertThat(SameValues.in(a.gantry(), b.gantry()))
                        .isEqualTo(a.gantry().equals(b.gantry()));
                assertThat(SameValues.in(a.springs(), b.springs()))
                        .isEqualTo(a.springs().equals(b.springs()));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "drive.screw.nut.friction",
                "lift.arm.length",
                "lift.pins.usual.bearing.friction",
                "deck.masses[0].mass",
                "springs[0].law.freeLength",
                "gantry.moves.acceleration"
            })
    void seesOneChangedNumber(String path) throws Exception {
        Machine changed = Edit.with(bench(), path, 0.123);
        assertThat(SameValues.in(bench(), bench())).isTrue();
        assertThat(SameValues.in(bench(), changed)).isFalse();
        assertThat(SameValues.in(changed, Edit.with(bench(), path, 0.123))).isTrue();
    }

    @Test
    void nothingIsOnlyNothing() throws Exception {
        assertThat(SameValues.in(null, null)).isTrue();
        assertThat(SameValues.in(null, bench())).isFalse();
        assertThat(SameValues.in(bench(), null)).isFalse();
    }
}
