// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.route;

/** One entry of a belt route: a wheel that the belt runs around, or an anchor that holds it. */
public sealed interface RoutePoint permits Wheel, Anchor {
    String name();

    Carrier carrier();

    /** Centre along the bridge [m, frame of the carrier]. */
    double x();

    /** Centre along the leg rails [m, frame of the carrier]. */
    double y();
}
