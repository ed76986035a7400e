// SPDX-License-Identifier: Apache-2.0
package foldwright.machine.file;

import foldwright.machine.linkage.Anchor;
import foldwright.machine.linkage.ArmName;
import foldwright.machine.linkage.FoldGeometry;
import foldwright.machine.linkage.Lift;
import foldwright.machine.linkage.OnArm;
import foldwright.machine.linkage.OnBase;
import foldwright.machine.linkage.OnDeck;
import foldwright.machine.linkage.OnSlider;
import foldwright.machine.linkage.Side;
import foldwright.machine.linkage.SliderLevel;
import foldwright.machine.part.Point;

/** Where points of the ideal lift are in one pose, in the base frame. */
final class AnchorPoints {
    private final Lift lift;
    private final FoldGeometry geometry;
    private final double angle;

    AnchorPoints(Lift lift, double angle) {
        this.lift = lift;
        this.geometry = new FoldGeometry(lift);
        this.angle = angle;
    }

    Point at(Anchor anchor) {
        if (anchor instanceof OnBase base) {
            return base.at();
        } else if (anchor instanceof OnDeck deck) {
            double x = geometry.levelStart(angle, lift.stages());
            return plus(deck.at(), x, 0, geometry.height(angle));
        } else if (anchor instanceof OnSlider slider) {
            boolean low = slider.level() == SliderLevel.BASE;
            int level = low ? 0 : lift.stages();
            double x = geometry.levelStart(angle, level) + geometry.spread(angle, level);
            return plus(slider.at(), x, 0, geometry.levelHeight(angle, level));
        }
        return onArm((OnArm) anchor);
    }

    private Point onArm(OnArm arm) {
        double tilt = geometry.angle(angle, arm.stage());
        int below = arm.stage() - 1;
        boolean fromFixed = arm.arm() == ArmName.FROM_FIXED_END;
        double start = geometry.levelStart(angle, below);
        double foot = fromFixed ? start : start + geometry.spread(angle, below);
        double reach = arm.along() * Math.cos(tilt);
        double y = arm.side() == Side.FRONT ? -lift.width() / 2 : lift.width() / 2;
        return new Point(
                fromFixed ? foot + reach : foot - reach,
                y,
                geometry.levelHeight(angle, below) + arm.along() * Math.sin(tilt));
    }

    private static Point plus(Point p, double x, double y, double z) {
        return new Point(p.x() + x, p.y() + y, p.z() + z);
    }

    static double distance(Point a, Point b) {
        return Math.hypot(Math.hypot(a.x() - b.x(), a.y() - b.y()), a.z() - b.z());
    }
}
