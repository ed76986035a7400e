// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.gantry;

import java.util.Optional;

/** A wheel a belt runs round. */
public sealed interface Wheel extends RouteItem permits ToothedWheel, PlainWheel {
    /** Which way the belt turns on it, going along the route, seen from above. */
    Sense sense();

    /** What it turns with. */
    Optional<Spin> spin();

    /** Radius of the belt's cord on it [m]. */
    double pitchRadius(BeltStrand belt);
}
