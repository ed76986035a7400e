// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.machine.linkage.Anchor;
import foldwright.machine.linkage.OnArm;
import foldwright.machine.linkage.OnBase;
import foldwright.machine.linkage.OnDeck;
import foldwright.machine.linkage.OnSlider;
import foldwright.machine.part.Point;
import foldwright.mechanics.Mechanism;
import foldwright.mechanics.body.Marker;
import foldwright.mechanics.body.Vec3;

/** Points of the machine file as markers on the bodies that carry them. */
final class Anchors {
    private final Mechanism mechanism;
    private final Linkage linkage;

    Anchors(Mechanism mechanism, Linkage linkage) {
        this.mechanism = mechanism;
        this.linkage = linkage;
    }

    Marker marker(Anchor anchor) {
        if (anchor instanceof OnBase on) {
            return mechanism.base().marker(vector(on.at()));
        }
        if (anchor instanceof OnDeck on) {
            return linkage.deck().marker(vector(on.at()));
        }
        if (anchor instanceof OnSlider on) {
            return onSlider(on, 0);
        }
        OnArm on = (OnArm) anchor;
        return linkage.arm(on.side(), on.stage(), on.arm())
                .body()
                .marker(new Vec3(on.along(), 0, 0));
    }

    /** A point on a sliding end, {@code shift} further to the back [m]. */
    Marker onSlider(OnSlider on, double shift) {
        double y = on.at().y() + shift;
        var slider = linkage.slider(on.level(), y);
        return slider.body().marker(new Vec3(on.at().x(), y - slider.y(), on.at().z()));
    }

    static Vec3 vector(Point p) {
        return new Vec3(p.x(), p.y(), p.z());
    }
}
