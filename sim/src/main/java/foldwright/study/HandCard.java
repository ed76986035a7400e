// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import java.util.List;

/**
 * The short formula a maker can check on paper, with the machine's own numbers in it.
 *
 * @param steps in order
 * @param source where the formula stands: author, title, year, page; or that it is common practice
 */
public record HandCard(List<Step> steps, String source) {
    /**
     * One step.
     *
     * @param words what is found, e.g. "force at the feet, no friction"; may be empty
     * @param formula the formula, {@code _x} or {@code _{xy}} marking a subscript
     * @param numbers the same with numbers and the result; may be empty
     */
    public record Step(String words, String formula, String numbers) {}

    public HandCard {
        steps = List.copyOf(steps);
    }
}
