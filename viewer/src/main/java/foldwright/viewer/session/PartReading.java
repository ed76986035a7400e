// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.session;

import foldwright.lift.Cause;
import foldwright.study.Verdict;
import java.util.List;
import java.util.Optional;

/**
 * What is known of a part at one moment.
 *
 * @param title its name
 * @param facts values with their units, and what they may be
 * @param split what the causes below add up to, empty when there are none
 * @param shares by cause, the largest pieces of a whole
 */
public record PartReading(String title, List<Fact> facts, String split, List<Share> shares) {
    /**
     * A value.
     *
     * @param name what it is
     * @param value with its unit
     * @param verdict of a value that has a limit
     */
    public record Fact(String name, String value, Optional<Verdict> verdict) {
        Fact(String name, String value) {
            this(name, value, Optional.empty());
        }
    }

    /**
     * A piece of a whole.
     *
     * @param name of its cause
     * @param value with its unit and sign
     * @param part of the largest piece, -1 to 1
     * @param cause of the lift that gives its colour, if it is one
     */
    public record Share(String name, String value, double part, Optional<Cause> cause) {}

    public PartReading {
        facts = List.copyOf(facts);
        shares = List.copyOf(shares);
    }

    /** All of it in one sentence, for those who hear it. */
    public String spoken() {
        StringBuilder out = new StringBuilder(title);
        for (Fact f : facts) {
            out.append(", ").append(f.name()).append(' ').append(f.value());
        }
        return out.toString();
    }
}
