// SPDX-License-Identifier: Apache-2.0
package foldwright.gantry.limits;

import foldwright.gantry.model.GantryState;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * The largest acceleration at one place in one direction.
 *
 * @param x place of the carriage origin along the bridge [m]
 * @param y place of the bridge [m]
 * @param heading direction of acceleration
 * @param acceleration largest that keeps every limit, 0 where one is broken at rest [m/s2]
 * @param setBy the limit that is met first
 * @param utilisation share of every limit in use at that acceleration, above 1 if broken at rest
 * @param state the machine at that acceleration
 */
public record LimitPoint(
        double x,
        double y,
        Heading heading,
        double acceleration,
        Criterion setBy,
        Map<Criterion, Double> utilisation,
        GantryState state) {
    public LimitPoint {
        // in the order of the limits: a plain copy has another one in each process
        Map<Criterion, Double> ordered = new EnumMap<>(Criterion.class);
        ordered.putAll(utilisation);
        utilisation = Collections.unmodifiableMap(ordered);
    }

    /** The one of two that allows less; the first of equals. */
    public static LimitPoint lesser(LimitPoint first, LimitPoint second) {
        return second.acceleration < first.acceleration ? second : first;
    }
}
