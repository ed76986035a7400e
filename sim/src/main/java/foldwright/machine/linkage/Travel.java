// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.linkage;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import java.util.Optional;

/**
 * How far the lift folds and where it works.
 *
 * @param fold from folded flat to fully open
 * @param work where it works with the tool fitted; left out: everywhere
 */
@Kind("How far the lift folds and where it works.")
public record Travel(
        @Key("From folded flat to fully open") OpeningRange fold,
        @Key("Where it works with the tool fitted; left out: everywhere")
                Optional<OpeningRange> work) {
    /** Checks every value against its key. */
    public Travel {
        Keys.check(Travel.class, fold, work);
    }

    /** Where it works. */
    public OpeningRange working() {
        return work.orElse(fold);
    }
}
