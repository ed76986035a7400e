// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.lift.SpringStroke;
import foldwright.machine.Machine;
import foldwright.machine.spring.Coil;
import foldwright.machine.spring.ConicalCoil;
import foldwright.machine.spring.RatedCoil;
import foldwright.machine.spring.SpringLaw;
import foldwright.machine.spring.TorsionAtFlat;
import foldwright.machine.spring.TorsionCoil;
import java.util.ArrayList;
import java.util.List;

/**
 * Whether helper springs of any kind stand what the travel asks of them, where it works them most.
 * What is not judged is said with the check of each.
 */
final class SpringStrength {
    /** Limits of wire, buckling and stroke hold by themselves: no further margin is asked. */
    static final double OWN_LIMIT = 1;

    private final Machine machine;
    private final List<SpringStroke> strokes;

    SpringStrength(Machine machine, List<SpringStroke> strokes) {
        this.machine = machine;
        this.strokes = strokes;
    }

    List<Check> checks() {
        List<Check> out = new ArrayList<>();
        for (SpringStroke stroke : strokes) {
            if (stroke.worked() > 0) {
                out.addAll(of(new WorkedSpring(machine, stroke)));
            }
        }
        return out;
    }

    private static List<Check> of(WorkedSpring spring) {
        SpringLaw law = spring.stroke().spring().law();
        if (law instanceof Coil || law instanceof RatedCoil || law instanceof ConicalCoil) {
            return new CoilStrength(spring).checks();
        }
        if (law instanceof TorsionCoil || law instanceof TorsionAtFlat) {
            return new TorsionStrength(spring).checks();
        }
        // a torsion spring by its rate; what a gas spring can do is told with its stroke
        return law.turns() ? List.of(spring.loadOnly()) : List.of();
    }
}
