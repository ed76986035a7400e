// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.elements.spring.SpringLaw;
import foldwright.machine.Machine;
import foldwright.machine.spring.HelperSpring;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * How far helper springs of one kind are worked over the travel, from the ideal shape of the lift.
 *
 * @param spring the springs
 * @param law force over length, or torque over leg angle, of one of them
 * @param shortest smallest length [m] or leg angle [rad] of any of them
 * @param shortestAt pivot height there [m]
 * @param longest largest length [m] or leg angle [rad] of any of them
 * @param longestAt pivot height there [m]
 */
public record SpringStroke(
        HelperSpring spring,
        SpringLaw law,
        double shortest,
        double shortestAt,
        double longest,
        double longestAt) {
    private static final int HEIGHTS = 200;

    /** The springs of a machine in their order. */
    public static List<SpringStroke> of(Machine machine) {
        LiftModel model = new LiftModel(machine, Give.IDEAL);
        SpringEvents events = new SpringEvents(model);
        List<SpringStroke> out = new ArrayList<>();
        for (HelperSpring spring : machine.springs()) {
            out.add(over(model, events, spring));
        }
        return out;
    }

    private static SpringStroke over(LiftModel model, SpringEvents events, HelperSpring spring) {
        SpringLaw law = null;
        double[] low = {Double.POSITIVE_INFINITY, 0};
        double[] high = {Double.NEGATIVE_INFINITY, 0};
        for (SpringPart part : model.springs()) {
            if (part.spring() != spring) {
                continue;
            }
            law = part.law();
            DoubleUnaryOperator extents = events.extent(part);
            for (int i = 0; i <= HEIGHTS; i++) {
                double share = i / (double) HEIGHTS;
                double height = model.lowest() + share * (model.highest() - model.lowest());
                double extent = extents.applyAsDouble(height);
                if (extent < low[0]) {
                    low = new double[] {extent, height};
                }
                if (extent > high[0]) {
                    high = new double[] {extent, height};
                }
            }
        }
        return new SpringStroke(spring, law, low[0], low[1], high[0], high[1]);
    }

    /** Squeeze [m] or winding [rad] where it is worked most; not above zero if it never is. */
    public double worked() {
        return law.freeCoordinate() - shortest;
    }

    /** Force [N] or torque [N·m] of one spring there. */
    public double most() {
        return law.force(shortest);
    }
}
