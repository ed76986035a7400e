// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.mesh;

/**
 * Triangles and ink edges, ready to upload.
 *
 * <p>A plain mesh holds points [m]. A coil holds instead of points (way along the wire 0..1, angle
 * round the wire [rad], 0): the vertex stage bends it to the height of the moment.
 */
public final class Mesh {
    /** Floats a vertex: point 3, normal 3, zone, way along the part 0..1 (or along a belt [m]). */
    public static final int VERTEX_FLOATS = 8;

    /** Floats an edge: two points 3 + 3, normals of its two faces 3 + 3. */
    public static final int EDGE_FLOATS = 12;

    /** Shape of a coil. */
    public record Coil(double turns, double radiusBelow, double radiusAbove, double wireRadius) {}

    private final float[] vertices;
    private final int[] indices;
    private final float[] edges;
    private final Coil coil;

    Mesh(float[] vertices, int[] indices, float[] edges, Coil coil) {
        this.vertices = vertices;
        this.indices = indices;
        this.edges = edges;
        this.coil = coil;
    }

    /** The vertices; callers do not write. */
    public float[] vertices() {
        return vertices;
    }

    /** Three a triangle; callers do not write. */
    public int[] indices() {
        return indices;
    }

    /** The edges; callers do not write. */
    public float[] edges() {
        return edges;
    }

    /** The shape when this is a coil, else null. */
    public Coil coil() {
        return coil;
    }

    public int vertexCount() {
        return vertices.length / VERTEX_FLOATS;
    }

    public int edgeCount() {
        return edges.length / EDGE_FLOATS;
    }

    /** Least and greatest coordinates (x, y, z, x, y, z) [m] of a plain mesh. */
    public float[] bounds() {
        float big = Float.MAX_VALUE;
        float[] box = {big, big, big, -big, -big, -big};
        for (int v = 0; v < vertices.length; v += VERTEX_FLOATS) {
            for (int k = 0; k < 3; k++) {
                box[k] = Math.min(box[k], vertices[v + k]);
                box[k + 3] = Math.max(box[k + 3], vertices[v + k]);
            }
        }
        return box;
    }
}
