// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import foldwright.elements.spring.SpringLaw;
import foldwright.machine.Machine;
import foldwright.machine.file.BadMachineFile;
import foldwright.machine.file.MachineFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Forces of helper springs on the curve against hand sums: G d^4/(8 D^3 n) and K_B 8 F D/(pi d^3)
 * with K_B = (4C + 2)/(4C - 3) (Budynas, Nisbett, Shigley's Mechanical Engineering Design, 9th ed.,
 * Eqs. 10-9, 10-5, 10-7), bending K_i 32 M/(pi d^3) with K_i = (4C^2 - C - 1)/(4C(C - 1)) (Eqs.
 * 10-43, 10-44).
 */
class SpringLoadTest {
    private static ForceCurve curve(String name) throws BadMachineFile {
        Path here = Path.of(name);
        Machine machine =
                MachineFile.read(Files.exists(here) ? here : Path.of("..").resolve(here)).machine();
        return new LiftSolver(machine).curve(20);
    }

    @Test
    void uprightCoilsOfTheVanBenchLyingFlatAndAtTheTop() throws BadMachineFile {
        List<CurvePoint> points = curve("scenes/van-bench.json").raising();
        CurvePoint flat = points.get(0);
        assertThat(flat.parts().springs()).hasSize(4);
        double rate = 79.3e9 * Math.pow(1.6e-3, 4) / (8 * Math.pow(30e-3, 3) * 15.5);
        double length = flat.height() + 6e-3;
        double force = rate * (115e-3 - length);
        double index = 30 / 1.6;
        double stress =
                (4 * index + 2)
                        / (4 * index - 3)
                        * 8
                        * force
                        * 30e-3
                        / (Math.PI * Math.pow(1.6e-3, 3));
        SpringLoad first = flat.parts().springs().get(0);
        assertThat(first.spring()).isEqualTo("lifting coils 1");
        assertThat(first.measure()).isEqualTo(SpringLaw.Measure.LENGTH);
        // The pins give by micrometres, the wire's modulus steps with its diameter.
        assertThat(first.extent()).isCloseTo(length, offset(2e-5));
        assertThat(first.force()).isCloseTo(force, offset(0.01 * force));
        assertThat(first.stress()).isCloseTo(stress, offset(0.01 * stress));
        assertThat(first.use()).isBetween(0.2, 0.5);
        assertThat(first.letGo()).isFalse();
        SpringLoad high = points.get(points.size() - 1).parts().springs().get(3);
        assertThat(high.letGo()).isTrue();
        assertThat(high.force()).isZero();
    }

    @Test
    void torsionSpringsOfTheThreeStageSeed() throws BadMachineFile {
        CurvePoint flat = curve("seeds/three-stage.json").raising().get(0);
        SpringLoad torsion = flat.parts().springs().get(0);
        assertThat(torsion.measure()).isEqualTo(SpringLaw.Measure.ANGLE);
        double index = 16 / 2.5;
        double inner = (4 * index * index - index - 1) / (4 * index * (index - 1));
        double stress = inner * 32 * torsion.force() / (Math.PI * Math.pow(2.5e-3, 3));
        assertThat(torsion.stress()).isCloseTo(stress, offset(1e-6 * stress));
        // Rate E d^4/(64 D n) over the angle left to the free one (Eq. 10-47 without its friction
        // factor); E of music wire that thick from Table 10-5.
        double rate = 196.5e9 * Math.pow(2.5e-3, 4) / (64 * 16e-3 * 5);
        double moment = rate * (torsion.free() - torsion.extent());
        assertThat(torsion.force()).isCloseTo(moment, offset(0.002 * moment));
    }

    @Test
    void aSpringKnownByItsRateAloneHasNoStress() throws BadMachineFile {
        SpringLoad die =
                curve("scenes/class-plotter.json").raising().get(0).parts().springs().get(0);
        assertThat(die.force()).isCloseTo(36e3 * 5e-3, offset(1.0));
        assertThat(die.stress()).isNaN();
        assertThat(die.use()).isNaN();
    }
}
