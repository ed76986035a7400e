// SPDX-License-Identifier: Apache-2.0
package foldwright.elements.safety;

import static foldwright.elements.table.Table.MILLI;

import foldwright.elements.table.Table;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Smallest gap that does not crush a part of the body (ISO 13854:2017, same as EN 349; table {@code
 * safety_gaps_forces.csv}).
 *
 * @param part of the body
 * @param minimum gap that must never be undercut where the part can get in [m]
 * @param source where the row comes from
 */
public record SafetyGap(BodyPart part, double minimum, String source) {
    /** The gap for that part. */
    public static SafetyGap get(BodyPart part) {
        return Shipped.GAPS.get(part);
    }

    /**
     * Gaps that a moving opening violates: the part can get in at the widest and is not left its
     * room at the narrowest. Smallest parts first.
     *
     * @param widest largest opening on the way [m]
     * @param narrowest smallest opening on the way [m]
     */
    public static List<SafetyGap> violated(double widest, double narrowest) {
        List<SafetyGap> found = new ArrayList<>();
        for (BodyPart part : BodyPart.values()) {
            SafetyGap gap = get(part);
            if (widest > part.entryOpening() && narrowest < gap.minimum()) {
                found.add(gap);
            }
        }
        return List.copyOf(found);
    }

    /** Read when the first gap is asked for. */
    private static final class Shipped {
        private static final Map<BodyPart, SafetyGap> GAPS = new EnumMap<>(BodyPart.class);

        static {
            for (Table.Row row : Table.shipped("safety_gaps_forces.csv").rows()) {
                for (BodyPart part : BodyPart.values()) {
                    if (row.text("item").equals("crush gap")
                            && row.text("body_part").equals(part.tableName())) {
                        GAPS.put(
                                part,
                                new SafetyGap(
                                        part, row.number("value", MILLI), row.text("source")));
                    }
                }
            }
            if (GAPS.size() != BodyPart.values().length) {
                throw new IllegalStateException("crush gaps in the table: " + GAPS.keySet());
            }
        }
    }
}
