// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.spring;

import foldwright.machine.keys.Kind;

/** A spring. */
@Kind("A spring.")
public sealed interface SpringLaw
        permits Coil, RatedCoil, ConicalCoil, TorsionCoil, RatedTorsion, TorsionAtFlat, GasSpring {

    /** Whether it acts as a torque between two parts that turn. */
    default boolean turns() {
        return false;
    }
}
