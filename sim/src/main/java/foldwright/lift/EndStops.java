// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.machine.linkage.StopSide;
import foldwright.mechanics.Mechanism;
import foldwright.mechanics.body.State;
import foldwright.mechanics.body.Vec3;
import foldwright.mechanics.joint.Coordinate;
import foldwright.mechanics.joint.Stop;
import foldwright.mechanics.solve.Stepper;
import java.util.ArrayList;
import java.util.List;

/** The stops of a lift that moves, those of the machine file and what the folded lift rests on. */
final class EndStops {
    /** A stop that the machine file does not state: the folded lift rests on something. */
    private static final double REST_STIFFNESS = 5e5;

    private static final double REST_DAMPING = 2e3;

    /** How far below flat it rests then, as a share of the pivot height. */
    private static final double REST_BELOW = 0.02;

    /** Push that counts as touching [N]. */
    private static final double TOUCH = 1;

    private final LiftModel shape;
    private final Mechanism mechanism;
    private final Coordinate rise;
    private final List<Stop> stops = new ArrayList<>();

    /** Adds the stops to a mechanism in which the deck of {@code linkage} rises. */
    EndStops(LiftModel shape, Mechanism mechanism, Linkage linkage) {
        this.shape = shape;
        this.mechanism = mechanism;
        rise = mechanism.travel(mechanism.base(), linkage.deck(), Vec3.ZERO, new Vec3(0, 0, 1));
        boolean rests = false;
        for (var stop : shape.machine().stops()) {
            add(stop);
            rests |= stop.blocks() == StopSide.SINKING;
        }
        if (!rests) {
            double below = -REST_BELOW * shape.lowest();
            add("rest", below, Stop.Side.ABOVE, REST_STIFFNESS, REST_DAMPING);
        }
    }

    private void add(foldwright.machine.linkage.Stop stop) {
        double at = shape.scissor().at(stop.at()).height() - shape.lowest();
        boolean rising = stop.blocks() == StopSide.RISING;
        add(
                rising ? "upper stop" : "lower stop",
                at,
                rising ? Stop.Side.BELOW : Stop.Side.ABOVE,
                stop.stiffness(),
                stop.damping());
    }

    private void add(String name, double at, Stop.Side side, double stiffness, double damping) {
        Stop stop = mechanism.stop(name, rise, at, side);
        stop.soften(0, 1 / stiffness, damping / stiffness);
        stops.add(stop);
    }

    /** Whether one of them carries load. */
    boolean touching(Stepper stepper) {
        boolean touching = false;
        for (Stop stop : stops) {
            touching |= stepper.multiplier(stop.rowAt()) > TOUCH;
        }
        return touching;
    }

    /** Distance to the nearest of them [m]; negative where one gives way. */
    double clearance(State s) {
        double least = Double.POSITIVE_INFINITY;
        for (Stop stop : stops) {
            least = Math.min(least, stop.gap(s));
        }
        return least;
    }
}
