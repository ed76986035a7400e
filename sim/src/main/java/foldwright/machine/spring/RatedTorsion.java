// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.spring;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;

/**
 * A torsion spring by its rate.
 *
 * @param rate torsional rate [N·m/rad]
 */
@Kind(value = "A torsion spring by its rate.", word = "torsion-by-rate")
public record RatedTorsion(
        @Key(
                        value = "Torsional rate",
                        is = Dimension.TORSION_STIFFNESS,
                        range = "(0 N*m/rad, 100000 N*m/rad]",
                        example = "1.5 N*m/rad")
                double rate)
        implements SpringLaw {
    /** Checks every value against its key. */
    public RatedTorsion {
        Keys.check(RatedTorsion.class, rate);
    }

    @Override
    public boolean turns() {
        return true;
    }
}
