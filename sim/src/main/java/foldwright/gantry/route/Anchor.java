// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.route;

import java.util.Objects;

/**
 * Where a belt end is clamped.
 *
 * @param name as people call it
 * @param carrier body that holds the clamp
 * @param x along the bridge [m, frame of the carrier]
 * @param y along the leg rails [m, frame of the carrier]
 */
public record Anchor(String name, Carrier carrier, double x, double y) implements RoutePoint {
    public Anchor {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(carrier, "carrier");
        Finite.check(name, "x", x);
        Finite.check(name, "y", y);
    }
}
