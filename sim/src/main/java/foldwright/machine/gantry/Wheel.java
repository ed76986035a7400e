// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.gantry;

import java.util.Optional;

/** A wheel a belt runs round. */
public sealed interface Wheel extends RouteItem permits ToothedWheel, PlainWheel {
    /** Which way round the belt passes it, seen from above. */
    Sense sense();

    /** What it turns with. */
    Optional<Spin> spin();

    /** Radius of the belt's cord on it [m]. */
    double pitchRadius(BeltStrand belt);
}
