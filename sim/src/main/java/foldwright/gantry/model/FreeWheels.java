// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.model;

import foldwright.gantry.route.Belt;
import foldwright.gantry.route.RoutePoint;
import foldwright.gantry.route.Wheel;
import java.util.List;

/** A belt whose wheels have no bearing drag. */
final class FreeWheels {
    private FreeWheels() {}

    static Belt of(Belt belt) {
        List<RoutePoint> points = belt.points().stream().map(FreeWheels::free).toList();
        return belt.through(points);
    }

    private static RoutePoint free(RoutePoint point) {
        return point instanceof Wheel w ? w.withBearing(w.inertia(), 0) : point;
    }

    static Belt weightless(Belt belt) {
        List<RoutePoint> points = belt.points().stream().map(FreeWheels::light).toList();
        return belt.through(points);
    }

    private static RoutePoint light(RoutePoint point) {
        return point instanceof Wheel w && w.axle().isEmpty() ? w.withBearing(0, 0) : point;
    }
}
