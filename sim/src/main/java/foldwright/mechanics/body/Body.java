// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.body;

import java.util.Objects;

/**
 * A rigid body of a mechanism, or the base.
 *
 * @param index place in the state; 0 is the base
 * @param name for messages
 * @param start pose of the body's frame at assembly [base frame]
 * @param mass mass properties in the body's frame; meaningless for the base
 */
public record Body(int index, String name, Pose start, MassProperties mass) {
    /** The base: does not move, carries any load. */
    public static final Body BASE =
            new Body(0, "base", Pose.ORIGIN, MassProperties.point(1, Vec3.ZERO));

    public Body {
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(start, "start");
        Objects.requireNonNull(mass, "mass");
    }

    public boolean isBase() {
        return index == 0;
    }

    /** Marker at a point of the body's frame, axes along the body's. */
    public Marker marker(Vec3 point) {
        return new Marker(this, Pose.at(point));
    }

    /** Marker at a point of the body's frame, its z axis along {@code axis} of that frame. */
    public Marker marker(Vec3 point, Vec3 axis) {
        return new Marker(this, new Pose(point, Rotation.frame(axis)));
    }

    /** Marker given in the body's frame. */
    public Marker marker(Pose local) {
        return new Marker(this, local);
    }

    /** Marker given in the base frame while the body stands in its start pose. */
    public Marker markerFromBase(Pose inBase) {
        return new Marker(this, start.inverse().times(inBase));
    }
}
