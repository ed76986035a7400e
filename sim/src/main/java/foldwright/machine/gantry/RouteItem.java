// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.gantry;

import foldwright.machine.keys.Kind;
import foldwright.machine.part.Spot;

/** What a belt meets on its route. */
@Kind("What a belt meets on its route.")
public sealed interface RouteItem permits Wheel, BeltAnchor {

    /** What it is called. */
    String name();

    /** What it is fixed to. */
    RouteBody on();

    /** Its place in the frame of that body. */
    Spot at();
}
