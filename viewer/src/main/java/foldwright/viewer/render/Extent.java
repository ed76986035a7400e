// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.render;

import foldwright.viewer.scene.Batch;
import java.util.List;
import org.joml.Matrix4f;
import org.joml.Vector3f;

/**
 * The box on the picture that holds all parts, or all their shadows on the table, from the corners
 * of their boxes. Coils are left out: they lie between parts that are not.
 */
final class Extent {
    private final Vector3f point = new Vector3f();

    /** Edges, x from the left, y from below. */
    float left;

    float right;
    float bottom;
    float top;

    /**
     * Measures in pixels.
     *
     * @param flatten direction along which parts are pushed onto z = 0; null: not
     */
    void measure(List<Batch> batches, Matrix4f view, Vector3f flatten, float width, float height) {
        measure(batches, view, flatten);
        left = (left * 0.5f + 0.5f) * width;
        right = (right * 0.5f + 0.5f) * width;
        bottom = (bottom * 0.5f + 0.5f) * height;
        top = (top * 0.5f + 0.5f) * height;
    }

    /** Measures in the units of a matrix. */
    void measure(List<Batch> batches, Matrix4f view, Vector3f flatten) {
        left = Float.MAX_VALUE;
        bottom = Float.MAX_VALUE;
        right = -Float.MAX_VALUE;
        top = -Float.MAX_VALUE;
        for (int b = 0; b < batches.size(); b++) {
            Batch batch = batches.get(b);
            if (batch.shown && batch.mesh.coil() == null && batch.mesh.indices().length > 0) {
                for (int i = 0; i < batch.count; i++) {
                    corners(batch, i * Batch.FLOATS, view, flatten);
                }
            }
        }
    }

    private void corners(Batch batch, int at, Matrix4f view, Vector3f flatten) {
        float[] box = batch.bounds;
        float[] d = batch.data;
        for (int c = 0; c < 8; c++) {
            float x = box[(c & 1) == 0 ? 0 : 3];
            float y = box[(c & 2) == 0 ? 1 : 4];
            float z = box[(c & 4) == 0 ? 2 : 5];
            point.set(
                    d[at] * x + d[at + 1] * y + d[at + 2] * z + d[at + 3],
                    d[at + 4] * x + d[at + 5] * y + d[at + 6] * z + d[at + 7],
                    d[at + 8] * x + d[at + 9] * y + d[at + 10] * z + d[at + 11]);
            if (flatten != null) {
                float push = point.z / flatten.z;
                point.sub(flatten.x * push, flatten.y * push, point.z);
            }
            view.transformPosition(point);
            left = Math.min(left, point.x);
            right = Math.max(right, point.x);
            bottom = Math.min(bottom, point.y);
            top = Math.max(top, point.y);
        }
    }
}
