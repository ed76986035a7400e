// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.linkage;

import foldwright.machine.keys.Kind;

/** What a pin turns in. */
@Kind("What a pin turns in.")
public sealed interface Bearing permits Bush, BallBearing {

    /** Friction coefficient, referred to the radius of the pin [1]. */
    double friction();

    /** Diametral clearance [m]. */
    double clearance();
}
