// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.scene;

import foldwright.viewer.mesh.Mesh;
import org.joml.Matrix4x3f;
import org.joml.Matrix4x3fc;

/**
 * One thing that can be pointed at.
 *
 * @param id from 1, as drawn into the picking picture
 * @param name as in results where they name it, e.g. "left arm 1 rising"
 * @param mesh its shape
 * @param body which body it hangs on, see {@link Bodies}
 * @param local its place in the frame of that body
 * @param channel number of the {@link Pose#channel} it reads (length of a coil, phase of a belt),
 *     or -1
 * @param pitch lead of a thread, pitch of a belt [m], teeth of a rim
 */
public record Part(
        int id,
        String name,
        PartKind kind,
        Mesh mesh,
        int body,
        Matrix4x3fc local,
        int channel,
        double pitch) {
    public Part {
        local = new Matrix4x3f(local);
    }
}
