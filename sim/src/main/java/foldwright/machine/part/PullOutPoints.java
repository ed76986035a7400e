// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.part;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;
import java.util.List;

/**
 * Pull-out torque read off a data sheet, straight between the points; beyond the last point it is
 * not known and taken as none.
 *
 * @param points points in order of rising speed
 */
@Kind(
        value =
                "Pull-out torque read off a data sheet, straight between the points; beyond the last point it is not known and taken as none.",
        word = "points")
public record PullOutPoints(
        @Key(value = "Points in order of rising speed", range = "[1, 200]")
                List<PullOutPoint> points)
        implements PullOut {
    /** Checks every value against its key and copies the lists. */
    public PullOutPoints {
        Keys.check(PullOutPoints.class, points);
        points = List.copyOf(points);
        Keys.checkRising(
                PullOutPoints.class,
                "points",
                Dimension.ROTATION_SPEED,
                points.stream().mapToDouble(p -> p.speed()).toArray());
    }
}
