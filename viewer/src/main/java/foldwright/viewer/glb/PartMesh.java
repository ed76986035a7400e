// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.glb;

import foldwright.viewer.mesh.Mesh;
import foldwright.viewer.mesh.Zone;
import foldwright.viewer.scene.Part;
import foldwright.viewer.theme.Palette;
import java.nio.FloatBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A part as triangles with colours in linear light. Triangles that carry a load are cut across the
 * part, so that the colour can bend where the load does: a colour given only at both ends would
 * lose the peak between them.
 */
final class PartMesh {
    private static final int CUTS = 16;
    private static final double CREASE = Math.cos(Math.toRadians(30));

    final float[] positions;
    final float[] normals;
    final float[] colours;
    final int[] indices;
    final float[] creases;

    /** The corner of the triangles that each vertex was made from first. */
    private final int[] firstCorner;

    private PartMesh(List<float[]> corners, float[] creases) {
        Map<FloatBuffer, Integer> known = new LinkedHashMap<>();
        indices = new int[corners.size()];
        for (int i = 0; i < indices.length; i++) {
            FloatBuffer key = FloatBuffer.wrap(corners.get(i));
            Integer at = known.putIfAbsent(key, known.size());
            indices[i] = at == null ? known.size() - 1 : at;
        }
        int n = known.size();
        firstCorner = new int[n];
        for (int i = indices.length - 1; i >= 0; i--) {
            firstCorner[indices[i]] = i;
        }
        positions = new float[3 * n];
        normals = new float[3 * n];
        colours = new float[4 * n];
        int i = 0;
        for (FloatBuffer key : known.keySet()) {
            float[] c = key.array();
            System.arraycopy(c, 0, positions, 3 * i, 3);
            System.arraycopy(c, 3, normals, 3 * i, 3);
            System.arraycopy(c, 8, colours, 4 * i, 3);
            colours[4 * i + 3] = 1;
            i++;
        }
        this.creases = creases;
    }

    /**
     * Builds.
     *
     * @param load as of {@link foldwright.viewer.scene.PartLook#load}
     * @param coil how a coil stands
     */
    static PartMesh of(Part part, float[] load, CoilAt coil, Palette palette) {
        Mesh mesh = part.mesh();
        float[] v =
                mesh.coil() == null
                        ? mesh.vertices()
                        : CoilBake.vertices(mesh, coil.length(), coil.touch());
        List<float[]> corners = new ArrayList<>();
        int[] index = mesh.indices();
        for (int t = 0; t < index.length; t += 3) {
            List<float[]> polygon = new ArrayList<>();
            for (int k = 0; k < 3; k++) {
                int at = index[t + k] * Mesh.VERTEX_FLOATS;
                polygon.add(Arrays.copyOfRange(v, at, at + Mesh.VERTEX_FLOATS));
            }
            Zone zone = Zone.values()[Math.round(polygon.get(0)[6])];
            boolean bends = load[1] >= 0 && zone == Zone.LOAD && load[0] != load[1];
            for (List<float[]> piece : bends ? cut(polygon, load[3]) : List.of(polygon)) {
                for (int k = 1; k + 1 < piece.size(); k++) {
                    corners.add(coloured(piece.get(0), zone, load, palette));
                    corners.add(coloured(piece.get(k), zone, load, palette));
                    corners.add(coloured(piece.get(k + 1), zone, load, palette));
                }
            }
        }
        return new PartMesh(corners, mesh.coil() == null ? creases(mesh) : new float[0]);
    }

    /**
     * How a coil stands.
     *
     * @param length of the spring [m]
     * @param touch radius of the coil of a cone that just touches [m]
     */
    record CoilAt(double length, double touch) {}

    /** Where each vertex of a coil goes when it stands so instead, three numbers each [m]. */
    float[] moved(Mesh mesh, CoilAt coil) {
        float[] v = CoilBake.vertices(mesh, coil.length(), coil.touch());
        float[] out = new float[positions.length];
        for (int i = 0; i < firstCorner.length; i++) {
            int at = mesh.indices()[firstCorner[i]] * Mesh.VERTEX_FLOATS;
            for (int k = 0; k < 3; k++) {
                out[3 * i + k] = v[at + k] - positions[3 * i + k];
            }
        }
        return out;
    }

    /** Whether a part shows its load, so that it is drawn unlit. */
    static boolean unlit(float[] load) {
        return load[1] >= 0;
    }

    private static float[] coloured(float[] corner, Zone zone, float[] load, Palette palette) {
        boolean takes =
                zone == Zone.LOAD
                        || zone == Zone.SPRING
                        || zone == Zone.BLOCK
                        || zone == Zone.THREAD
                        || zone == Zone.BELT;
        int rgb = palette.material(zone.material);
        if (takes && load[1] >= 0) {
            double w = load[3];
            double a = zone == Zone.LOAD ? Math.max(0, Math.min(1, corner[7])) : w;
            double value =
                    a < w
                            ? load[0] + (load[1] - load[0]) * a / Math.max(1e-4, w)
                            : load[1] + (load[2] - load[1]) * (a - w) / Math.max(1 - w, 1e-4);
            rgb = palette.load(Math.max(0, Math.min(1, value)));
        }
        float[] out = Arrays.copyOf(corner, 11);
        out[6] = 0;
        out[7] = 0;
        out[8] = linear(rgb >> 16 & 255);
        out[9] = linear(rgb >> 8 & 255);
        out[10] = linear(rgb & 255);
        return out;
    }

    /** sRGB to linear light, IEC 61966-2-1: vertex colours of glTF are linear. */
    private static float linear(int channel) {
        double c = channel / 255.0;
        return (float) (c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4));
    }

    private static List<List<float[]>> cut(List<float[]> polygon, double peak) {
        List<List<float[]>> pieces = new ArrayList<>();
        List<float[]> rest = polygon;
        for (int i = 1; i < CUTS; i++) {
            double s = (double) i / CUTS;
            double at = s < 0.5 ? 2 * s * peak : peak + (2 * s - 1) * (1 - peak);
            List<float[]> below = half(rest, at, -1);
            if (below.size() >= 3) {
                pieces.add(below);
            }
            rest = half(rest, at, 1);
            if (rest.size() < 3) {
                return pieces;
            }
        }
        pieces.add(rest);
        return pieces;
    }

    /**
     * The part of a convex polygon on one side of a way along (Sutherland and Hodgman, Comm. ACM
     * 17, 1974, 32-42).
     */
    private static List<float[]> half(List<float[]> polygon, double at, int side) {
        List<float[]> out = new ArrayList<>();
        for (int i = 0; i < polygon.size(); i++) {
            float[] a = polygon.get(i);
            float[] b = polygon.get((i + 1) % polygon.size());
            double da = side * (a[7] - at);
            double db = side * (b[7] - at);
            if (da >= 0) {
                out.add(a);
            }
            if (da * db < 0) {
                float s = (float) (da / (da - db));
                float[] c = new float[Mesh.VERTEX_FLOATS];
                for (int k = 0; k < c.length; k++) {
                    c[k] = a[k] + s * (b[k] - a[k]);
                }
                c[6] = a[6];
                c[7] = (float) at;
                out.add(c);
            }
        }
        return out;
    }

    private static float[] creases(Mesh mesh) {
        float[] e = mesh.edges();
        float[] out = new float[mesh.edgeCount() * 6];
        int n = 0;
        for (int i = 0; i < e.length; i += Mesh.EDGE_FLOATS) {
            double dot = e[i + 6] * e[i + 9] + e[i + 7] * e[i + 10] + e[i + 8] * e[i + 11];
            if (dot < CREASE) {
                System.arraycopy(e, i, out, n, 6);
                n += 6;
            }
        }
        return Arrays.copyOf(out, n);
    }
}
