// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.body;

import java.util.Objects;

/**
 * Where a frame stands in another one: first turned by {@code attitude}, then moved by {@code
 * position}.
 *
 * @param position origin of the frame, in the outer frame [m]
 * @param attitude turn from the frame to the outer frame
 */
public record Pose(Vec3 position, Rotation attitude) {
    public static final Pose ORIGIN = new Pose(Vec3.ZERO, Rotation.NONE);

    public Pose {
        Objects.requireNonNull(position, "position");
        Objects.requireNonNull(attitude, "attitude");
        if (!position.isFinite()) {
            throw new IllegalArgumentException("a pose needs a finite position: " + position);
        }
    }

    public static Pose at(Vec3 position) {
        return new Pose(position, Rotation.NONE);
    }

    /** A point of the frame, seen from the outer frame [m]. */
    public Vec3 apply(Vec3 point) {
        return position.plus(attitude.apply(point));
    }

    /** A pose given in this frame, seen from the outer frame. */
    public Pose times(Pose inner) {
        return new Pose(apply(inner.position), attitude.times(inner.attitude));
    }

    public Pose inverse() {
        Rotation back = attitude.inverse();
        return new Pose(back.apply(position).times(-1), back);
    }
}
