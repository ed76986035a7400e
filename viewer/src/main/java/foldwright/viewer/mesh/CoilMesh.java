// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.mesh;

/**
 * A coil spring standing on z = 0: its vertices are (way along the wire, angle round the wire), so
 * that closing costs no upload. One dead turn lies at each end.
 */
public final class CoilMesh {
    private static final int PER_TURN = 14;
    private static final int ROUND = 5;

    private CoilMesh() {}

    /** A coil of so many turns in all, dead ones included. */
    public static Mesh of(Mesh.Coil coil) {
        int rings = (int) Math.ceil(coil.turns() * PER_TURN) + 1;
        float[] vertices = new float[rings * ROUND * Mesh.VERTEX_FLOATS];
        int at = 0;
        for (int i = 0; i < rings; i++) {
            float way = (float) i / (rings - 1);
            for (int k = 0; k < ROUND; k++) {
                vertices[at] = way;
                vertices[at + 1] = (float) (2 * Math.PI * k / ROUND);
                vertices[at + 6] = Zone.SPRING.ordinal();
                vertices[at + 7] = way;
                at += Mesh.VERTEX_FLOATS;
            }
        }
        return new Mesh(vertices, triangles(rings), edges(rings), coil);
    }

    private static int[] triangles(int rings) {
        int[] out = new int[(rings - 1) * ROUND * 6 + 2 * (ROUND - 2) * 3];
        int n = 0;
        for (int i = 0; i + 1 < rings; i++) {
            for (int k = 0; k < ROUND; k++) {
                int a = i * ROUND + k;
                int b = i * ROUND + (k + 1) % ROUND;
                int[] quad = {a, a + ROUND, b + ROUND, a, b + ROUND, b};
                System.arraycopy(quad, 0, out, n, 6);
                n += 6;
            }
        }
        int last = (rings - 1) * ROUND;
        for (int k = 1; k + 1 < ROUND; k++) {
            int[] caps = {0, k, k + 1, last, last + k + 1, last + k};
            System.arraycopy(caps, 0, out, n, 6);
            n += 6;
        }
        return out;
    }

    /** Only the lines along the wire: they are the silhouette of a coil. */
    private static float[] edges(int rings) {
        float[] out = new float[(rings - 1) * ROUND * Mesh.EDGE_FLOATS];
        int n = 0;
        for (int i = 0; i + 1 < rings; i++) {
            float from = (float) i / (rings - 1);
            float to = (float) (i + 1) / (rings - 1);
            for (int k = 0; k < ROUND; k++) {
                float angle = (float) (2 * Math.PI * k / ROUND);
                float half = (float) (Math.PI / ROUND);
                float[] edge = {
                    from,
                    angle,
                    0,
                    to,
                    angle,
                    0,
                    (from + to) / 2,
                    angle - half,
                    0,
                    (from + to) / 2,
                    angle + half,
                    0
                };
                System.arraycopy(edge, 0, out, n, Mesh.EDGE_FLOATS);
                n += Mesh.EDGE_FLOATS;
            }
        }
        return out;
    }
}
