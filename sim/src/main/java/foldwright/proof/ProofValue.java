// SPDX-License-Identifier: Apache-2.0
package foldwright.proof;

import java.util.Locale;
import java.util.Objects;

/**
 * One published value beside what this program computes for it.
 *
 * @param id short, stable name, e.g. {@code "MB-01 beta at 0.03 s"}
 * @param computed what this program finds [unit]
 * @param published what the source states, or what it recomputes to [unit]
 * @param unit unit of both as printed, "1" for pure numbers
 * @param tolerance largest deviation allowed, in the sense of {@code kind}
 * @param kind whether the tolerance is relative to {@code published} or absolute in {@code unit}
 * @param source author, title, year, page or equation; "from memory" where no page was seen
 */
public record ProofValue(
        String id,
        double computed,
        double published,
        String unit,
        double tolerance,
        Kind kind,
        String source) {

    /** How a deviation is measured. */
    public enum Kind {
        RELATIVE,
        ABSOLUTE
    }

    public ProofValue {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(unit, "unit");
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(source, "source");
        if (!(tolerance >= 0)) {
            throw new IllegalArgumentException(
                    String.format(Locale.ROOT, "tolerance of \"%s\" is %s", id, tolerance));
        }
        if (kind == Kind.RELATIVE && published == 0) {
            throw new IllegalArgumentException("relative tolerance to zero: " + id);
        }
    }

    /** A value that must agree within {@code tolerance} times the published one. */
    public static ProofValue relative(
            String id,
            double computed,
            double published,
            String unit,
            double tolerance,
            String source) {
        return new ProofValue(id, computed, published, unit, tolerance, Kind.RELATIVE, source);
    }

    /** A value that must agree within {@code tolerance} in its own unit. */
    public static ProofValue absolute(
            String id,
            double computed,
            double published,
            String unit,
            double tolerance,
            String source) {
        return new ProofValue(id, computed, published, unit, tolerance, Kind.ABSOLUTE, source);
    }

    /** Size of the disagreement: relative [1] or absolute [unit], as the tolerance is. */
    public double deviation() {
        double gap = Math.abs(computed - published);
        return kind == Kind.RELATIVE ? gap / Math.abs(published) : gap;
    }

    /** Whether the values agree; a computed value that is not a number never does. */
    public boolean pass() {
        return deviation() <= tolerance;
    }
}
