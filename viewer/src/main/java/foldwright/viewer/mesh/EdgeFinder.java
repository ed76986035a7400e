// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.mesh;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * Finds the edges of a closed solid: each edge between two faces that are not in one plane, with
 * both face normals. The renderer decides from the view whether one is a silhouette or a crease.
 * Points closer than a micrometre count as one.
 */
final class EdgeFinder {
    private static final double WELD = 1e6;
    private static final double FLAT = 0.9999;

    /** What a record compares by itself is only made at run time: too slow for so many. */
    private record Corner(long x, long y, long z) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Corner c && x == c.x && y == c.y && z == c.z;
        }

        @Override
        public int hashCode() {
            return Long.hashCode((x * 0x9E3779B1L + y) * 0x85EBCA77L + z);
        }
    }

    private EdgeFinder() {}

    /** Edges of the triangles {@code from <= index < to}, {@link Mesh#EDGE_FLOATS} each. */
    static float[] edges(float[] vertices, int[] indices, int from, int to) {
        Map<Corner, Integer> corners = new HashMap<>();
        Map<Long, float[]> open = new HashMap<>();
        float[] out = new float[256];
        int count = 0;
        for (int t = from; t < to; t += 3) {
            int[] ids = new int[3];
            for (int k = 0; k < 3; k++) {
                ids[k] = weld(corners, vertices, indices[t + k]);
            }
            if (ids[0] == ids[1] || ids[1] == ids[2] || ids[2] == ids[0]) {
                continue;
            }
            float[] normal = normal(vertices, indices, t);
            for (int k = 0; k < 3; k++) {
                int a = ids[k];
                int b = ids[(k + 1) % 3];
                long side = (long) Math.min(a, b) << 32 | Math.max(a, b);
                float[] other = open.remove(side);
                if (other == null) {
                    open.put(side, normal);
                } else if (dot(normal, other) < FLAT) {
                    if (count + Mesh.EDGE_FLOATS > out.length) {
                        out = Arrays.copyOf(out, out.length * 2);
                    }
                    int p = indices[t + k] * Mesh.VERTEX_FLOATS;
                    int q = indices[t + (k + 1) % 3] * Mesh.VERTEX_FLOATS;
                    System.arraycopy(vertices, p, out, count, 3);
                    System.arraycopy(vertices, q, out, count + 3, 3);
                    System.arraycopy(normal, 0, out, count + 6, 3);
                    System.arraycopy(other, 0, out, count + 9, 3);
                    count += Mesh.EDGE_FLOATS;
                }
            }
        }
        return Arrays.copyOf(out, count);
    }

    private static int weld(Map<Corner, Integer> corners, float[] v, int index) {
        int at = index * Mesh.VERTEX_FLOATS;
        Corner key =
                new Corner(
                        Math.round(v[at] * WELD),
                        Math.round(v[at + 1] * WELD),
                        Math.round(v[at + 2] * WELD));
        return corners.computeIfAbsent(key, k -> corners.size());
    }

    private static float[] normal(float[] v, int[] indices, int t) {
        int a = indices[t] * Mesh.VERTEX_FLOATS;
        int b = indices[t + 1] * Mesh.VERTEX_FLOATS;
        int c = indices[t + 2] * Mesh.VERTEX_FLOATS;
        double ux = v[b] - v[a];
        double uy = v[b + 1] - v[a + 1];
        double uz = v[b + 2] - v[a + 2];
        double wx = v[c] - v[a];
        double wy = v[c + 1] - v[a + 1];
        double wz = v[c + 2] - v[a + 2];
        double nx = uy * wz - uz * wy;
        double ny = uz * wx - ux * wz;
        double nz = ux * wy - uy * wx;
        double len = Math.max(1e-30, Math.sqrt(nx * nx + ny * ny + nz * nz));
        return new float[] {(float) (nx / len), (float) (ny / len), (float) (nz / len)};
    }

    private static float dot(float[] a, float[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }
}
