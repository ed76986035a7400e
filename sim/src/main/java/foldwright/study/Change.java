// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import foldwright.machine.Machine;
import java.util.function.UnaryOperator;

/**
 * A change a maker could make.
 *
 * @param words as it would be said, e.g. "belt to screws 3:1"
 * @param apply the machine with it
 */
record Change(String words, UnaryOperator<Machine> apply) {
    /** Both changes, one after the other. */
    Change and(Change other) {
        return new Change(words + ", " + other.words, m -> other.apply.apply(apply.apply(m)));
    }
}
