// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import foldwright.gantry.route.BeltLayout;
import foldwright.gantry.route.BeltSystem;
import foldwright.gantry.route.IdlerModel;
import foldwright.gantry.route.MotionRelation;
import foldwright.gantry.route.RouteCheck;
import foldwright.gantry.route.RoutePoint;
import foldwright.gantry.route.Wheel;
import java.util.ArrayList;
import java.util.List;

/**
 * What free idlers add to carriage and bridge when they are not states: inertia times the square of
 * their turn per way, drag times its size. The product of turns per x and per y is left out; it
 * cancels in layouts that mirror themselves. Drag of an idler that turns with both axes is counted
 * in full on each.
 *
 * @param massX on the carriage along the bridge [kg]
 * @param massY on the bridge along the rails [kg]
 * @param dragX [N]
 * @param dragY [N]
 */
record IdlerLoad(double massX, double massY, double dragX, double dragY) {
    static final IdlerLoad NONE = new IdlerLoad(0, 0, 0, 0);

    static IdlerLoad of(GantryModel model) {
        if (model.idlers() == IdlerModel.STATES) {
            return NONE;
        }
        List<Wheel> idlers = new ArrayList<>();
        BeltLayout marked = mark(model.layout(), idlers);
        if (idlers.isEmpty()) {
            return NONE;
        }
        BeltSystem system = new BeltSystem(marked, IdlerModel.STATES);
        MotionRelation relation = RouteCheck.relation(system);
        IdlerLoad sum = NONE;
        for (Wheel w : idlers) {
            int axle = system.axle(w.name());
            sum = sum.plus(w, relation.anglePerX(axle), relation.anglePerY(axle));
        }
        return sum;
    }

    private IdlerLoad plus(Wheel w, double perX, double perY) {
        return new IdlerLoad(
                massX + w.inertia() * perX * perX,
                massY + w.inertia() * perY * perY,
                dragX + w.drag() * Math.abs(perX),
                dragY + w.drag() * Math.abs(perY));
    }

    /** Collects idlers that weigh or drag; those that only drag get an inertia to count as one. */
    private static BeltLayout mark(BeltLayout layout, List<Wheel> idlers) {
        BeltLayout marked = layout;
        for (int b = 0; b < layout.belts().size(); b++) {
            List<RoutePoint> points = new ArrayList<>();
            for (RoutePoint point : layout.belts().get(b).points()) {
                if (point instanceof Wheel w
                        && w.axle().isEmpty()
                        && (w.inertia() > 0 || w.drag() > 0)) {
                    idlers.add(w);
                    points.add(w.withBearing(Math.max(w.inertia(), 1e-12), w.drag()));
                } else {
                    points.add(point);
                }
            }
            marked = marked.withBelt(b, layout.belts().get(b).through(points));
        }
        return marked;
    }
}
