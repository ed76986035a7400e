// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.part;

import foldwright.machine.keys.Key;
import foldwright.machine.keys.Keys;
import foldwright.machine.keys.Kind;
import foldwright.quantity.Dimension;
import foldwright.quantity.Printed;
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
        for (int i = 1; i < points.size(); i++) {
            if (points.get(i).speed() <= points.get(i - 1).speed()) {
                throw new IllegalArgumentException(
                        "PullOutPoints: points["
                                + i
                                + "] at "
                                + Printed.given(Dimension.ROTATION_SPEED, points.get(i).speed())
                                + "; allowed: above points["
                                + (i - 1)
                                + "], "
                                + Printed.given(
                                        Dimension.ROTATION_SPEED, points.get(i - 1).speed()));
            }
        }
    }
}
