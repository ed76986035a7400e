// SPDX-License-Identifier: Apache-2.0
package foldwright.mechanics.body;

import java.util.Objects;

/**
 * A frame fixed to a body.
 *
 * @param body the body that carries it
 * @param local pose in the body's frame [m]
 */
public record Marker(Body body, Pose local) {
    public Marker {
        Objects.requireNonNull(body, "body");
        Objects.requireNonNull(local, "local");
    }

    /** Position from the body's centre of mass [m, body axes]. */
    public Vec3 arm() {
        return local.position().minus(body.mass().centre());
    }

    /** One of the marker's axes in body axes. */
    public Vec3 axis(Vec3 own) {
        return local.attitude().apply(own);
    }
}
