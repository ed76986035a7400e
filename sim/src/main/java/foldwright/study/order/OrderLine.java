// SPDX-License-Identifier: Apache-2.0
package foldwright.study.order;

import foldwright.study.Outcome;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One part to buy or make.
 *
 * @param group where it belongs
 * @param count how many
 * @param part what it is, in the singular
 * @param size sizes, material and ratings, as the machine file states them
 * @param use the check of its load against what it may carry, where there is one
 * @param open what the machine file does not state and a supplier will ask
 */
public record OrderLine(
        Group group, int count, String part, String size, Optional<Use> use, List<String> open) {

    /** Parts of the machine, in the order of the list. */
    public enum Group {
        LIFT("Lift"),
        DRIVE("Drive"),
        SPRINGS("Springs"),
        GANTRY("Gantry");

        private final String words;

        Group(String words) {
            this.words = words;
        }

        /** As a heading. */
        public String words() {
            return words;
        }
    }

    /**
     * Load used against load allowed.
     *
     * @param check title of the check, e.g. "Nut pressure"
     * @param outcome its numbers
     */
    public record Use(String check, Outcome outcome) {
        /** E.g. "61.2 MPa of 250 MPa". */
        public String words() {
            return outcome.required().text() + " of " + outcome.available().text();
        }
    }

    public OrderLine {
        Objects.requireNonNull(group, "group");
        Objects.requireNonNull(part, "part");
        Objects.requireNonNull(size, "size");
        Objects.requireNonNull(use, "use");
        open = List.copyOf(open);
        if (count < 1) {
            throw new IllegalArgumentException(part + ": " + count + " of them, allowed: 1 and up");
        }
    }
}
