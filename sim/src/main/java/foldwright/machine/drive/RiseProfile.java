// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.drive;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;
import java.util.List;

/**
 * The rise speed over height, straight between the points.
 *
 * @param points points in order of rising height
 * @param acceleration largest acceleration of the deck [m/s²]
 */
@Kind(value = "The rise speed over height, straight between the points.", word = "profile")
public record RiseProfile(
        @Key(value = "Points in order of rising height", range = "[2, 100]") List<RisePoint> points,
        @Key(
                        value = "Largest acceleration of the deck",
                        is = Dimension.ACCELERATION,
                        range = "(0 mm/s2, 10 m/s2]",
                        orElse = "20 mm/s2",
                        example = "20 mm/s2")
                double acceleration)
        implements Rise {
    /** Checks every value against its key and copies the lists. */
    public RiseProfile {
        Keys.check(RiseProfile.class, points, acceleration);
        points = List.copyOf(points);
        Keys.checkRising(
                RiseProfile.class,
                "points",
                Dimension.LENGTH,
                points.stream().mapToDouble(p -> p.height()).toArray());
    }
}
