// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.session;

import foldwright.lift.Cause;
import foldwright.study.Verdict;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What is known of a part at one moment.
 *
 * @param title its name
 * @param facts values with their units, and what they may be
 * @param split what the causes below add up to, empty when there are none
 * @param shares by cause, the pieces of a whole
 * @param note a sentence below them, empty when there is nothing to say
 */
public record PartReading(
        String title, List<Fact> facts, String split, List<Share> shares, String note) {
    /** Shares told aloud, the largest first. */
    private static final int SPOKEN = 3;

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
     * @param percent of the whole, empty where that says nothing
     * @param part of the largest piece, -1 to 1
     * @param cause of the lift that gives its colour, if it is one
     */
    public record Share(
            String name, String value, String percent, double part, Optional<Cause> cause) {}

    public PartReading {
        facts = List.copyOf(facts);
        shares = List.copyOf(shares);
    }

    /** The same under another title. */
    public PartReading titled(String other) {
        return new PartReading(other, facts, split, shares, note);
    }

    /** All of it in one sentence, for those who hear it. */
    public String spoken() {
        StringBuilder out = new StringBuilder(title);
        for (Fact f : facts) {
            out.append(", ").append(f.name()).append(' ').append(f.value());
        }
        shares.stream()
                .filter(s -> !s.percent().isEmpty())
                .sorted(Comparator.comparingDouble(s -> -Math.abs(s.part())))
                .limit(SPOKEN)
                .forEach(s -> out.append(", ").append(s.percent()).append(' ').append(s.name()));
        return out.toString();
    }
}
