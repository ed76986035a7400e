// SPDX-License-Identifier: Apache-2.0
package foldwright.proof;

import java.util.ArrayList;
import java.util.List;

/**
 * Collects the values of one worked example, which share a name, a source and a relative tolerance.
 */
final class Comparison {
    private final String example;
    private final double tolerance;
    private final String source;
    private final List<ProofValue> values = new ArrayList<>();

    /**
     * @param example what the ids begin with, e.g. "square thread d 32"
     * @param tolerance relative
     * @param source author, title, year, page or equation
     */
    Comparison(String example, double tolerance, String source) {
        this.example = example;
        this.tolerance = tolerance;
        this.source = source;
    }

    /** Adds a value that must agree within the example's relative tolerance. */
    Comparison value(String name, double computed, double published, String unit) {
        return within(tolerance, name, computed, published, unit);
    }

    /** Adds a value with a relative tolerance of its own. */
    Comparison within(
            double relative, String name, double computed, double published, String unit) {
        values.add(
                ProofValue.relative(
                        example + ": " + name, computed, published, unit, relative, source));
        return this;
    }

    /** Adds a value with an absolute tolerance in its unit. */
    Comparison near(String name, double computed, double published, double tolerance, String unit) {
        values.add(
                ProofValue.absolute(
                        example + ": " + name, computed, published, unit, tolerance, source));
        return this;
    }

    /** Adds a value as printed: it must agree within half of its last digit, {@code place}. */
    Comparison printed(String name, double computed, double published, double place, String unit) {
        double half = place / 2 * (1 + 1e-9);
        values.add(
                ProofValue.absolute(
                        example + ": " + name + " (as printed)",
                        computed,
                        published,
                        unit,
                        half,
                        source));
        return this;
    }

    /** Adds a yes or no, 1 for yes; both must be the same. */
    Comparison fact(String name, boolean computed, boolean published) {
        values.add(
                ProofValue.absolute(
                        example + ": " + name,
                        computed ? 1 : 0,
                        published ? 1 : 0,
                        "1 = yes",
                        0,
                        source));
        return this;
    }

    /** The values so far, in order. */
    List<ProofValue> values() {
        return List.copyOf(values);
    }
}
