// SPDX-License-Identifier: Apache-2.0
package foldwright.study;

import java.util.Comparator;
import java.util.Objects;

/**
 * What is needed, what there is, and where they come closest.
 *
 * @param required what the machine needs or does there
 * @param available what it has or what is allowed there, same dimension
 * @param margin available divided by required [1]; not a number when it cannot be told
 * @param holdsFrom margin from which the check holds [1]
 * @param worst the place of the smallest margin
 */
public record Outcome(
        Amount required, Amount available, double margin, double holdsFrom, Place worst) {
    /** The most urgent first; among equals the one with the least in reserve. */
    public static final Comparator<Outcome> WORST_FIRST =
            Comparator.comparingInt((Outcome o) -> -o.verdict().urgency())
                    .thenComparingDouble(o -> o.margin() / o.holdsFrom());

    public Outcome {
        Objects.requireNonNull(required, "required");
        Objects.requireNonNull(available, "available");
        Objects.requireNonNull(worst, "worst");
        if (!(holdsFrom >= 1)) {
            throw new IllegalArgumentException("holdsFrom is " + holdsFrom + ", allowed: 1 and up");
        }
    }

    /** An outcome by the common rule; the margin is the quotient of the two amounts. */
    public static Outcome of(Amount required, Amount available, Place worst) {
        return of(required, available, Verdict.RULE, worst);
    }

    /** An outcome with a rule of its own; nothing required means an infinite margin. */
    public static Outcome of(Amount required, Amount available, double holdsFrom, Place worst) {
        return new Outcome(
                required, available, marginOf(required.si(), available.si()), holdsFrom, worst);
    }

    /** Available divided by required; infinite when nothing or less than nothing is required. */
    public static double marginOf(double required, double available) {
        if (Double.isNaN(required) || Double.isNaN(available)) {
            return Double.NaN;
        }
        return required <= 0 ? Double.POSITIVE_INFINITY : available / required;
    }

    /** The verdict on the margin; a value for which no limit is given is not judged. */
    public Verdict verdict() {
        boolean limitless = Double.isNaN(available.si()) && !Double.isNaN(required.si());
        return limitless ? Verdict.UNJUDGED : Verdict.of(margin, holdsFrom);
    }
}
