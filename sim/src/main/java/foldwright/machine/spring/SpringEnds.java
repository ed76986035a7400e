// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.spring;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.machine.linkage.Anchor;

/**
 * The two ends of a spring.
 *
 * @param from one end
 * @param to the other end
 */
@Kind("The two ends of a spring.")
public record SpringEnds(@Key("One end") Anchor from, @Key("The other end") Anchor to) {
    /** Checks every value against its key. */
    public SpringEnds {
        Keys.check(SpringEnds.class, from, to);
    }
}
