// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.gantry;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;
import java.util.List;

/**
 * A belt and its route. A route that begins with an anchor ends with one; a route of wheels alone
 * is an endless belt.
 *
 * @param name what the belt is called
 * @param belt the belt itself
 * @param pretension tension at rest [N]
 * @param height height of the belt above the origin of the gantry frame [m]
 * @param route wheels and anchors in the order the belt meets them
 */
@Kind(
        "A belt and its route. A route that begins with an anchor ends with one; a route of wheels alone is an endless belt.")
public record BeltRoute(
        @Key(value = "What the belt is called", example = "front belt") String name,
        @Key("The belt itself") BeltStrand belt,
        @Key(
                        value = "Tension at rest",
                        is = Dimension.FORCE,
                        range = "(0 N, 10000 N]",
                        example = "30 N")
                double pretension,
        @Key(
                        value = "Height of the belt above the origin of the gantry frame",
                        is = Dimension.LENGTH,
                        range = "[-1 m, 1 m]",
                        orElse = "0 mm",
                        example = "12 mm")
                double height,
        @Key(value = "Wheels and anchors in the order the belt meets them", range = "[2, 60]")
                List<RouteItem> route) {
    /** Checks every value against its key and copies the lists. */
    public BeltRoute {
        Keys.check(BeltRoute.class, name, belt, pretension, height, route);
        route = List.copyOf(route);
        for (int i = 0; i < route.size(); i++) {
            boolean end = i == 0 || i == route.size() - 1;
            if (route.get(i) instanceof BeltAnchor && !end) {
                throw new IllegalArgumentException(
                        "BeltRoute: the anchor \""
                                + route.get(i).name()
                                + "\" stands inside the route; allowed: anchors at its two ends");
            }
        }
        if (route.get(0) instanceof Wheel != route.get(route.size() - 1) instanceof Wheel) {
            throw new IllegalArgumentException(
                    "BeltRoute: only one end is anchored; allowed: anchors at both ends, or wheels"
                            + " alone for an endless belt");
        }
    }

    /** Whether the belt is endless rather than fastened at both ends. */
    public boolean endless() {
        return route.get(0) instanceof Wheel;
    }
}
