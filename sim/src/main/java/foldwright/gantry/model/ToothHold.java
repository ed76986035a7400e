// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import foldwright.gantry.route.Belt;
import foldwright.gantry.route.BeltGeometry;
import foldwright.gantry.route.BeltSystem;
import foldwright.gantry.route.Section;
import foldwright.gantry.route.Wheel;
import java.util.ArrayList;
import java.util.List;

/**
 * How firmly belts sit in the teeth of wheels that carry torque.
 *
 * <p>A tooth flank at half angle beta, friction angle rho, turns the difference of tensions dT over
 * the wrap into an outward push dT tan(beta - rho); what holds the belt down at the slack end is
 * its tension times the wrap it is bent over. Hold = T_slack wrap / (dT tan(beta - rho)). Below 1
 * the belt climbs. Own derivation, load shared evenly by the teeth in mesh; flank 25 degrees and
 * friction 0.2 are assumed.
 */
public final class ToothHold {
    private static final double PUSH = Math.tan(Math.toRadians(25) - Math.atan(0.2));

    private final int[] arriving;
    private final int[] leaving;
    private final double[] wrap;

    public ToothHold(BeltSystem system) {
        system.place(system.reference());
        List<int[]> pairs = new ArrayList<>();
        List<Double> wraps = new ArrayList<>();
        List<Section> sections = system.sections();
        for (int i = 0; i < sections.size(); i++) {
            for (int j = 0; j < sections.size(); j++) {
                Section in = sections.get(i);
                Section out = sections.get(j);
                int wheel = out.firstSpan();
                BeltGeometry g = system.geometry(out.belt());
                boolean meet =
                        in.belt() == out.belt()
                                && (in.firstSpan() + in.spanCount()) % g.points() == wheel;
                if (meet && drives(system, g.belt(), wheel)) {
                    pairs.add(new int[] {i, j});
                    wraps.add(g.wrap(wheel));
                }
            }
        }
        arriving = pairs.stream().mapToInt(p -> p[0]).toArray();
        leaving = pairs.stream().mapToInt(p -> p[1]).toArray();
        wrap = wraps.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static boolean drives(BeltSystem system, Belt belt, int point) {
        return belt.points().get(point) instanceof Wheel w
                && w.axle().isPresent()
                && system.axle(w) >= 0;
    }

    /** Smallest hold of all driven wheels with a kernel's present tensions [1]. */
    public double leastMargin(GantryKernel kernel) {
        double least = Double.POSITIVE_INFINITY;
        for (int k = 0; k < wrap.length; k++) {
            double a = kernel.tension(arriving[k]);
            double b = kernel.tension(leaving[k]);
            double held = (a < b ? a : b) * wrap[k];
            double pushed = Math.abs(a - b) * PUSH;
            // Compared by products first: a division only where a new low is near.
            if (held < least * pushed) {
                least = held / pushed;
            }
        }
        return least;
    }
}
