// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.safety;

import foldwright.elements.table.Table;
import java.util.List;

/**
 * A published limit of the force on a person (table {@code safety_gaps_forces.csv}), for comparison
 * in cautions.
 *
 * @param situation what the limit is for
 * @param bodyPart which part of the body, as the table writes it
 * @param force [N]
 * @param condition rest of the unit cell, e.g. "peak, for at most 0.75 s"; may be empty
 * @param source where the row comes from
 */
public record ForceLimit(
        String situation, String bodyPart, double force, String condition, String source) {

    /** All limits in the order of the table. */
    public static List<ForceLimit> all() {
        return Shipped.LIMITS;
    }

    /** 150 N: force on a trapped part once the first 0.75 s are over (EN 12453). */
    public static ForceLimit staticCrushing() {
        return starting("static crushing force");
    }

    /** 400 N for at most 0.75 s: peak as a gap below 500 mm closes (EN 12453). */
    public static ForceLimit dynamicCrushing() {
        return starting("dynamic crushing force");
    }

    private static ForceLimit starting(String words) {
        return Shipped.LIMITS.stream()
                .filter(limit -> limit.situation().startsWith(words))
                .findFirst()
                .orElseThrow();
    }

    private static ForceLimit of(Table.Row row) {
        return new ForceLimit(
                row.text("item"),
                row.text("body_part"),
                row.number("value", Table.ONE),
                row.text("unit").replaceFirst("^N[ ,]*", ""),
                row.text("source"));
    }

    /** Read when the first limit is asked for. */
    private static final class Shipped {
        private static final List<ForceLimit> LIMITS =
                Table.shipped("safety_gaps_forces.csv").rows().stream()
                        .filter(row -> row.text("unit").startsWith("N"))
                        .map(ForceLimit::of)
                        .toList();
    }
}
