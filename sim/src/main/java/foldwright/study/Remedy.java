// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import java.util.Objects;

/**
 * A change and what the check says with it, found by running the whole check again.
 *
 * @param words the change, e.g. "belt to screws 3:1"
 * @param outcome the check after the change
 */
public record Remedy(String words, Outcome outcome) {
    public Remedy {
        Objects.requireNonNull(words, "words");
        Objects.requireNonNull(outcome, "outcome");
    }
}
