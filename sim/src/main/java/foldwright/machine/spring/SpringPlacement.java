// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.spring;

import foldwright.machine.keys.Kind;

/** Where springs are, and how many. */
@Kind("Where springs are, and how many.")
public sealed interface SpringPlacement permits Upright, AtFoot, AtPins, BetweenPoints {

    /** How many springs stand there. */
    int count();

    /** Whether a torsion spring belongs there. */
    default boolean turns() {
        return false;
    }
}
