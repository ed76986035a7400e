// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import foldwright.elements.belt.BeltSpan;
import foldwright.gantry.route.Belt;
import foldwright.gantry.route.BeltGeometry;
import foldwright.gantry.route.BeltSystem;
import foldwright.gantry.route.Section;
import foldwright.gantry.route.Wheel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Strands and wheels of all belts at one place: what a maker measures, plucks or looks up.
 *
 * @param relation between motors and carriage, in words
 * @param strands in the order of the routes
 * @param wheels in the order of the routes
 */
public record BeltFacts(String relation, List<Strand> strands, List<WheelFact> wheels) {

    /**
     * A free strand.
     *
     * @param belt name
     * @param from wheel or anchor
     * @param to wheel or anchor
     * @param startX where it leaves the first [m, base frame]
     * @param startY [m, base frame]
     * @param endX where it meets the second [m, base frame]
     * @param endY [m, base frame]
     * @param length [m]
     * @param tension [N]
     * @param frequency at which it sounds when plucked [Hz]
     */
    public record Strand(
            String belt,
            String from,
            String to,
            double startX,
            double startY,
            double endX,
            double endY,
            double length,
            double tension,
            double frequency) {}

    /**
     * A wheel.
     *
     * @param belt name
     * @param name of the wheel
     * @param axle that carries torque, if any
     * @param x centre [m, base frame]
     * @param y centre [m, base frame]
     * @param wrap angle of contact [rad]
     * @param teeth in mesh
     * @param load on its shaft: vector sum of both strands [N]
     */
    public record WheelFact(
            String belt,
            String name,
            Optional<String> axle,
            double x,
            double y,
            double wrap,
            int teeth,
            double load) {}

    public BeltFacts {
        strands = List.copyOf(strands);
        wheels = List.copyOf(wheels);
    }

    /** Facts at a settled state; the tensions are those of the state. */
    public static BeltFacts of(GantryModel model, GantryState state) {
        GantryKernel kernel = new GantryKernel(model);
        BeltSystem system = kernel.system();
        system.place(state.pose());
        List<Strand> strands = new ArrayList<>();
        List<WheelFact> wheels = new ArrayList<>();
        for (int b = 0; b < model.layout().belts().size(); b++) {
            BeltGeometry g = system.geometry(b);
            double[] tension = tensions(system, b, state);
            for (int i = 0; i < g.spans(); i++) {
                strands.add(strand(g, i, tension[i]));
            }
            for (int i = 0; i < g.points(); i++) {
                if (g.belt().points().get(i) instanceof Wheel w) {
                    wheels.add(wheel(g, i, w, tension));
                }
            }
        }
        return new BeltFacts(kernel.relation().describe(), strands, wheels);
    }

    private static double[] tensions(BeltSystem system, int belt, GantryState state) {
        BeltGeometry g = system.geometry(belt);
        double[] tension = new double[g.spans()];
        for (int s = 0; s < system.sections().size(); s++) {
            Section section = system.sections().get(s);
            for (int k = 0; section.belt() == belt && k < section.spanCount(); k++) {
                tension[(section.firstSpan() + k) % g.spans()] = state.tensions().get(s);
            }
        }
        return tension;
    }

    private static Strand strand(BeltGeometry g, int i, double tension) {
        Belt belt = g.belt();
        return new Strand(
                belt.name(),
                belt.points().get(i).name(),
                belt.points().get(g.endOf(i)).name(),
                g.startX(i),
                g.startY(i),
                g.endX(i),
                g.endY(i),
                g.length(i),
                tension,
                BeltSpan.pluckedFrequency(tension, g.length(i), belt.linearMass()));
    }

    private static WheelFact wheel(BeltGeometry g, int i, Wheel w, double[] tension) {
        int in = g.arriving(i);
        int out = g.leaving(i);
        double fx = tension[out] * g.directionX(out) - tension[in] * g.directionX(in);
        double fy = tension[out] * g.directionY(out) - tension[in] * g.directionY(in);
        int teeth =
                w.surface() == Wheel.Surface.TOOTHED
                        ? (int) Math.floor(g.wrap(i) * w.radius() / g.belt().pitch() + 1e-9)
                        : 0;
        return new WheelFact(
                g.belt().name(),
                w.name(),
                w.axle(),
                g.centreX(i),
                g.centreY(i),
                g.wrap(i),
                teeth,
                Math.hypot(fx, fy));
    }
}
