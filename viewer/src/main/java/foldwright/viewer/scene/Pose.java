// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.scene;

import org.joml.Matrix4x3f;

/**
 * Where every body is, and the lengths and phases of what bends: a buffer that is written anew for
 * each picture.
 */
public final class Pose {
    /** Body to world. */
    public final Matrix4x3f[] body;

    /** Lengths of coils and phases of belts [m]. */
    public final double[] channel;

    public Pose(int bodies, int channels) {
        body = new Matrix4x3f[bodies];
        for (int i = 0; i < bodies; i++) {
            body[i] = new Matrix4x3f();
        }
        channel = new double[channels];
    }
}
