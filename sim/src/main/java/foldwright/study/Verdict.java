// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

/** What a margin means, in one word. */
public enum Verdict {
    /** The margin reaches the rule. */
    HOLDS("holds"),
    /** Enough, but less than the rule asks. */
    TIGHT("tight"),
    /** Less than is needed. */
    FAILS("fails"),
    /** Cannot be told, and why is said with it. */
    UNKNOWN("unknown"),
    /** Computed, but no limit was given to judge it by: a fact that stands beside the verdicts. */
    UNJUDGED("unjudged");

    /**
     * Margin from which a check holds unless it states a rule of its own [1]. Common practice for
     * stepper drives, where 50 % torque in reserve is asked for.
     */
    public static final double RULE = 1.5;

    private final String word;

    Verdict(String word) {
        this.word = word;
    }

    /** The word a person reads. */
    public String word() {
        return word;
    }

    /** The verdict on a margin by the common rule; not a number is unknown. */
    public static Verdict of(double margin) {
        return of(margin, RULE);
    }

    /**
     * The verdict on a margin.
     *
     * @param margin available divided by required [1]; not a number is unknown
     * @param holdsFrom margin from which the check holds, at least 1 [1]
     */
    public static Verdict of(double margin, double holdsFrom) {
        if (Double.isNaN(margin)) {
            return UNKNOWN;
        }
        if (margin < 1) {
            return FAILS;
        }
        return margin < holdsFrom ? TIGHT : HOLDS;
    }

    /** Order of speaking: the higher, the more a maker must hear it first. */
    public int urgency() {
        return switch (this) {
            case FAILS -> 3;
            case TIGHT -> 2;
            case UNKNOWN -> 1;
            case HOLDS -> 0;
            case UNJUDGED -> -1;
        };
    }
}
