// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.sheet;

import foldwright.viewer.mesh.Mesh;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.scene.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.joml.Matrix4x3f;
import org.joml.Vector3f;

/**
 * Something drawn as dashed outlines only: a square bridge, another machine.
 *
 * @param parts points of each part, x y z after each other, world frame [m]
 */
public record Ghost(List<float[]> parts) {
    /** Nothing. */
    public static final Ghost NONE = new Ghost(List.of());

    /** The points of chosen parts of a machine as it is posed now. */
    public static Ghost of(MachineScene scene, Predicate<Part> chosen) {
        List<float[]> out = new ArrayList<>();
        Matrix4x3f place = new Matrix4x3f();
        Vector3f point = new Vector3f();
        for (Part part : scene.parts()) {
            if (!chosen.test(part) || part.mesh().coil() != null) {
                continue;
            }
            scene.pose().body[part.body()].mul(part.local(), place);
            float[] v = part.mesh().vertices();
            float[] points = new float[3 * part.mesh().vertexCount()];
            for (int i = 0; i < part.mesh().vertexCount(); i++) {
                int at = i * Mesh.VERTEX_FLOATS;
                place.transformPosition(point.set(v[at], v[at + 1], v[at + 2]));
                points[3 * i] = point.x;
                points[3 * i + 1] = point.y;
                points[3 * i + 2] = point.z;
            }
            out.add(points);
        }
        return new Ghost(out);
    }
}
