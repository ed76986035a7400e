// SPDX-License-Identifier: Apache-2.0
package foldwright.lift;

import foldwright.machine.Machine;
import foldwright.machine.drive.ScrewLine;
import foldwright.machine.linkage.OnSlider;
import foldwright.machine.linkage.SliderLevel;
import foldwright.machine.part.Point;
import foldwright.mechanics.Mechanism;
import foldwright.mechanics.body.Marker;
import foldwright.mechanics.body.State;
import foldwright.mechanics.body.Vec3;
import foldwright.mechanics.joint.Coordinate;

/**
 * Where the screws of a machine run.
 *
 * <p>A line without ends of its own pushes the sliding feet of the base from outside: its bearing
 * stands on the base beyond the feet, one screw length from where the nut is when the lift is fully
 * open, so the screw is in compression while it raises. That is the severe case for buckling; a
 * machine file that states the bearing replaces it.
 */
final class ScrewLines {
    private final Machine machine;
    private final Mechanism mechanism;
    private final Anchors anchors;

    ScrewLines(Machine machine, Mechanism mechanism, Anchors anchors) {
        this.machine = machine;
        this.mechanism = mechanism;
        this.anchors = anchors;
    }

    /** Nut end of a line. */
    Marker nut(ScrewLine line) {
        if (line.to().isPresent()) {
            return anchors.marker(line.to().get());
        }
        double up = machine.lift().sliders().base().pushOffset();
        return anchors.onSlider(new OnSlider(SliderLevel.BASE, new Point(0, 0, up)), line.y());
    }

    /** Bearing end of a line, given where its nut stands when the lift is open [base frame]. */
    Marker bearing(ScrewLine line, Vec3 nutWhenOpen) {
        if (line.from().isPresent()) {
            return anchors.marker(line.from().get());
        }
        return mechanism
                .base()
                .marker(nutWhenOpen.plus(new Vec3(machine.drive().screw().length(), 0, 0)));
    }

    /** Place of a marker at a state [base frame]. */
    static Vec3 place(Marker marker, State s) {
        int i = marker.body().index();
        Vec3 r = marker.arm();
        int k = 9 * i;
        return new Vec3(
                s.x[3 * i] + s.r[k] * r.x() + s.r[k + 1] * r.y() + s.r[k + 2] * r.z(),
                s.x[3 * i + 1] + s.r[k + 3] * r.x() + s.r[k + 4] * r.y() + s.r[k + 5] * r.z(),
                s.x[3 * i + 2] + s.r[k + 6] * r.x() + s.r[k + 7] * r.y() + s.r[k + 8] * r.z());
    }

    Coordinate length(Marker bearing, Marker nut) {
        return mechanism.distance(bearing, nut);
    }
}
