// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Heights at which helper springs let go or come solid, from the ideal shape of the lift alone.
 *
 * <p>Found by halving between neighbouring heights of a grid, to 1e-12 m.
 */
final class SpringEvents {
    private static final int GRID = 60;

    private final LiftModel model;

    SpringEvents(LiftModel model) {
        this.model = model;
    }

    /** One spring passing its free or its solid extent at a height [m]. */
    record Event(SpringPart spring, Kind kind, double height) {}

    /** What is passed. */
    enum Kind {
        FREE,
        SOLID
    }

    /** All events between flat and open, springs in order. */
    List<Event> find() {
        List<Event> events = new ArrayList<>();
        for (SpringPart spring : model.springs()) {
            search(spring, Kind.FREE, spring.law().freeCoordinate(), events);
            search(spring, Kind.SOLID, spring.law().limitCoordinate(), events);
        }
        return events;
    }

    /** Length or angle of a spring over the height. */
    DoubleUnaryOperator extent(SpringPart spring) {
        LiftModel.Along along = model.along(spring.along());
        return height -> spring.extent(along.at(height));
    }

    private void search(SpringPart spring, Kind kind, double limit, List<Event> events) {
        DoubleUnaryOperator extent = extent(spring);
        double low = model.lowest();
        double below = extent.applyAsDouble(low) - limit;
        for (int i = 1; i <= GRID; i++) {
            double high = model.lowest() + (model.highest() - model.lowest()) * i / GRID;
            double above = extent.applyAsDouble(high) - limit;
            if (below != 0 && below * above <= 0) {
                events.add(new Event(spring, kind, root(extent, limit, low, high, below)));
            }
            low = high;
            below = above;
        }
    }

    private static double root(
            DoubleUnaryOperator extent, double limit, double a, double b, double atA) {
        double low = a;
        double high = b;
        while (high - low > 1e-12) {
            double mid = 0.5 * (low + high);
            if (mid == low || mid == high) {
                break;
            }
            if ((extent.applyAsDouble(mid) - limit) * atA > 0) {
                low = mid;
            } else {
                high = mid;
            }
        }
        return 0.5 * (low + high);
    }
}
