// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.mesh;

import java.util.Arrays;
import org.joml.Matrix4f;
import org.joml.Vector3f;

/**
 * Builds a mesh from closed primitives. Each primitive is moved by the transform current at the
 * time, takes the current zone and gets its own edges; corners of a profile flatter than 35 degrees
 * are shaded round.
 */
public final class Solid {
    private static final double ROUND = Math.cos(Math.toRadians(35));
    private static final int QUARTER = 5;

    private float[] vertices = new float[1024];
    private int[] indices = new int[1024];
    private float[] edges = new float[1024];
    private int vertexFloats;
    private int indexCount;
    private int edgeFloats;
    private int firstIndex;
    private Zone zone = Zone.ALUMINIUM;
    private float alongFrom;
    private float alongTo = 1;
    private final Matrix4f move = new Matrix4f();

    /** Surface of what follows. */
    public Solid zone(Zone next) {
        zone = next;
        return this;
    }

    /**
     * The way along the part, measured on x of each primitive before it is moved: 0 at {@code
     * from}, 1 at {@code to}.
     */
    public Solid along(double from, double to) {
        alongFrom = (float) from;
        alongTo = (float) to;
        return this;
    }

    /** What follows is placed at this point [m], upright. */
    public Solid at(double x, double y, double z) {
        move.translation((float) x, (float) y, (float) z);
        return this;
    }

    /**
     * What follows has its z axis along y (positive y is up in the profile turned away from the
     * viewer).
     */
    public Solid alongY() {
        move.rotateX((float) (-Math.PI / 2));
        return this;
    }

    /** What follows has its z axis along x. */
    public Solid alongX() {
        move.rotateY((float) (Math.PI / 2));
        return this;
    }

    /** What follows is turned about its z axis [rad]. */
    public Solid turned(double angle) {
        move.rotateZ((float) angle);
        return this;
    }

    /** A box from corner to corner [m]. */
    public Solid box(double x0, double y0, double z0, double x1, double y1, double z1) {
        float[] profile = {
            (float) x0,
            (float) y0,
            (float) x1,
            (float) y0,
            (float) x1,
            (float) y1,
            (float) x0,
            (float) y1
        };
        return prism(profile, z0, z1);
    }

    /** A plate with round corners in its plane [m]. */
    public Solid plate(
            double x0, double y0, double x1, double y1, double radius, double z0, double z1) {
        return prism(roundedRectangle(x0, y0, x1, y1, radius), z0, z1);
    }

    /** A round bar about the local z axis [m]. */
    public Solid bar(double radius, double z0, double z1, int sides) {
        return prism(circle(radius, sides), z0, z1);
    }

    /** A round plate with a hole about the local z axis [m]. */
    public Solid ring(double outer, double inner, double z0, double z1, int sides) {
        return hollow(circle(outer, sides), circle(inner, sides), z0, z1);
    }

    /** A frame: a plate with a round-cornered opening [m]. */
    public Solid frame(
            double[] outside,
            double[] inside,
            double radius,
            double innerRadius,
            double z0,
            double z1) {
        return hollow(
                roundedRectangle(outside[0], outside[1], outside[2], outside[3], radius),
                roundedRectangle(inside[0], inside[1], inside[2], inside[3], innerRadius),
                z0,
                z1);
    }

    /**
     * A bar of rectangular section with round ends, in the x-z plane, from y0 to y1: the blank of
     * an arm [m].
     */
    public Solid link(double length, double depth, double y0, double y1) {
        float r = (float) depth / 2;
        int half = 8;
        float[] profile = new float[(half + 1) * 4];
        int n = 0;
        for (int i = 0; i <= half; i++) {
            double a = -Math.PI / 2 + Math.PI * i / half;
            profile[n++] = (float) (length + r * Math.cos(a));
            profile[n++] = (float) (r * Math.sin(a));
        }
        for (int i = 0; i <= half; i++) {
            double a = Math.PI / 2 + Math.PI * i / half;
            profile[n++] = (float) (r * Math.cos(a));
            profile[n++] = (float) (r * Math.sin(a));
        }
        Matrix4f before = new Matrix4f(move);
        // z of the profile is -y of the part: turned so that the profile's second axis points up.
        move.rotateX((float) (Math.PI / 2));
        prism(profile, -y1, -y0);
        move.set(before);
        return this;
    }

    /** A closed profile (x, y pairs, convex, counter-clockwise) [m] pushed from z0 to z1. */
    public Solid prism(float[] profile, double z0, double z1) {
        begin();
        int n = profile.length / 2;
        cap(profile, (float) z1, 1);
        cap(profile, (float) z0, -1);
        side(profile, (float) z0, (float) z1, 1);
        end();
        assert n >= 3;
        return this;
    }

    /** Two closed profiles with as many points each; the inner one is cut out [m]. */
    public Solid hollow(float[] outer, float[] inner, double z0, double z1) {
        begin();
        ringCap(outer, inner, (float) z1, 1);
        ringCap(outer, inner, (float) z0, -1);
        side(outer, (float) z0, (float) z1, 1);
        side(inner, (float) z0, (float) z1, -1);
        end();
        return this;
    }

    /**
     * A belt along a closed line (x, y pairs [m]) of this thickness, standing on z0..z1; along =
     * way along the line.
     */
    public Solid belt(float[] line, double thickness, double z0, double z1) {
        int n = line.length / 2;
        float[] outer = new float[line.length];
        float[] inner = new float[line.length];
        for (int i = 0; i < n; i++) {
            int a = (i + n - 1) % n;
            int b = (i + 1) % n;
            double tx = line[2 * b] - line[2 * a];
            double ty = line[2 * b + 1] - line[2 * a + 1];
            double len = Math.hypot(tx, ty);
            double h = thickness / 2 / len;
            outer[2 * i] = (float) (line[2 * i] + ty * h);
            outer[2 * i + 1] = (float) (line[2 * i + 1] - tx * h);
            inner[2 * i] = (float) (line[2 * i] - ty * h);
            inner[2 * i + 1] = (float) (line[2 * i + 1] + tx * h);
        }
        alongLine = line;
        hollow(outer, inner, z0, z1);
        alongLine = null;
        return this;
    }

    private float[] alongLine;

    /** Points of a circle, counter-clockwise. */
    public static float[] circle(double radius, int sides) {
        float[] out = new float[sides * 2];
        for (int i = 0; i < sides; i++) {
            double a = 2 * Math.PI * i / sides;
            out[2 * i] = (float) (radius * Math.cos(a));
            out[2 * i + 1] = (float) (radius * Math.sin(a));
        }
        return out;
    }

    static float[] roundedRectangle(double x0, double y0, double x1, double y1, double radius) {
        double r = Math.max(1e-5, Math.min(radius, Math.min(x1 - x0, y1 - y0) / 2 - 1e-5));
        double[] cx = {x1 - r, x0 + r, x0 + r, x1 - r};
        double[] cy = {y1 - r, y1 - r, y0 + r, y0 + r};
        float[] out = new float[4 * (QUARTER + 1) * 2];
        int n = 0;
        for (int corner = 0; corner < 4; corner++) {
            for (int i = 0; i <= QUARTER; i++) {
                double a = Math.PI / 2 * (corner + (double) i / QUARTER);
                out[n++] = (float) (cx[corner] + r * Math.cos(a));
                out[n++] = (float) (cy[corner] + r * Math.sin(a));
            }
        }
        return out;
    }

    private void cap(float[] profile, float z, int up) {
        int first = vertexFloats / Mesh.VERTEX_FLOATS;
        int n = profile.length / 2;
        for (int i = 0; i < n; i++) {
            vertex(profile[2 * i], profile[2 * i + 1], z, 0, 0, up, wayAt(profile, i));
        }
        for (int i = 1; i < n - 1; i++) {
            triangle(first, first + (up > 0 ? i : i + 1), first + (up > 0 ? i + 1 : i));
        }
    }

    private void ringCap(float[] outer, float[] inner, float z, int up) {
        int first = vertexFloats / Mesh.VERTEX_FLOATS;
        int n = outer.length / 2;
        for (int i = 0; i < n; i++) {
            vertex(outer[2 * i], outer[2 * i + 1], z, 0, 0, up, wayAt(outer, i));
            vertex(inner[2 * i], inner[2 * i + 1], z, 0, 0, up, wayAt(inner, i));
        }
        for (int i = 0; i < n; i++) {
            int a = first + 2 * i;
            int b = first + 2 * ((i + 1) % n);
            quad(a, b, b + 1, a + 1, up);
        }
    }

    private float wayAt(float[] profile, int point) {
        if (alongLine != null) {
            double sum = 0;
            for (int i = 0; i < point; i++) {
                sum +=
                        Math.hypot(
                                alongLine[2 * i + 2] - alongLine[2 * i],
                                alongLine[2 * i + 3] - alongLine[2 * i + 1]);
            }
            return (float) sum;
        }
        return (profile[2 * point] - alongFrom) / (alongTo - alongFrom);
    }

    private float closing() {
        int n = alongLine.length / 2;
        return wayAt(alongLine, n - 1)
                + (float)
                        Math.hypot(
                                alongLine[0] - alongLine[2 * n - 2],
                                alongLine[1] - alongLine[2 * n - 1]);
    }

    /** The walls of a profile; {@code out} is -1 for a hole. */
    private void side(float[] p, float z0, float z1, int out) {
        int n = p.length / 2;
        for (int i = 0; i < n; i++) {
            int j = (i + 1) % n;
            float[] here = wallNormal(p, i, out);
            float[] before = wallNormal(p, (i + n - 1) % n, out);
            float[] after = wallNormal(p, j, out);
            float[] start = meet(before, here, here);
            float[] end = meet(here, after, here);
            float wayI = wayAt(p, i);
            float wayJ = alongLine != null && j == 0 ? closing() : wayAt(p, j);
            int a = vertex(p[2 * i], p[2 * i + 1], z0, start[0], start[1], 0, wayI);
            int b = vertex(p[2 * j], p[2 * j + 1], z0, end[0], end[1], 0, wayJ);
            int c = vertex(p[2 * j], p[2 * j + 1], z1, end[0], end[1], 0, wayJ);
            int d = vertex(p[2 * i], p[2 * i + 1], z1, start[0], start[1], 0, wayI);
            quad(a, b, c, d, out);
        }
    }

    private static float[] wallNormal(float[] p, int i, int out) {
        int n = p.length / 2;
        int j = (i + 1) % n;
        float dx = p[2 * j] - p[2 * i];
        float dy = p[2 * j + 1] - p[2 * i + 1];
        float len = (float) Math.hypot(dx, dy);
        return new float[] {out * dy / len, -out * dx / len};
    }

    /** The common normal where two walls meet softly, else that of the wall itself. */
    private static float[] meet(float[] a, float[] b, float[] own) {
        if (a[0] * b[0] + a[1] * b[1] < ROUND) {
            return own;
        }
        float x = a[0] + b[0];
        float y = a[1] + b[1];
        float len = (float) Math.hypot(x, y);
        return new float[] {x / len, y / len};
    }

    private void quad(int a, int b, int c, int d, int up) {
        if (up > 0) {
            triangle(a, b, c);
            triangle(a, c, d);
        } else {
            triangle(a, c, b);
            triangle(a, d, c);
        }
    }

    private final Vector3f scratch = new Vector3f();

    private int vertex(float x, float y, float z, float nx, float ny, float nz, float way) {
        if (vertexFloats + Mesh.VERTEX_FLOATS > vertices.length) {
            vertices = Arrays.copyOf(vertices, vertices.length * 2);
        }
        move.transformPosition(scratch.set(x, y, z));
        put(scratch);
        move.transformDirection(scratch.set(nx, ny, nz));
        put(scratch);
        vertices[vertexFloats++] = zone.ordinal();
        vertices[vertexFloats++] = way;
        return vertexFloats / Mesh.VERTEX_FLOATS - 1;
    }

    private void put(Vector3f v) {
        vertices[vertexFloats++] = v.x;
        vertices[vertexFloats++] = v.y;
        vertices[vertexFloats++] = v.z;
    }

    private void triangle(int a, int b, int c) {
        if (indexCount + 3 > indices.length) {
            indices = Arrays.copyOf(indices, indices.length * 2);
        }
        indices[indexCount++] = a;
        indices[indexCount++] = b;
        indices[indexCount++] = c;
    }

    private void begin() {
        firstIndex = indexCount;
    }

    private void end() {
        float[] found = EdgeFinder.edges(vertices, indices, firstIndex, indexCount);
        if (edgeFloats + found.length > edges.length) {
            edges = Arrays.copyOf(edges, Math.max(edges.length * 2, edgeFloats + found.length));
        }
        System.arraycopy(found, 0, edges, edgeFloats, found.length);
        edgeFloats += found.length;
    }

    /**
     * Dashes of a closed line (x, y pairs [m]) lying at a height, as lines without faces: drawn,
     * bare, drawn, bare... [m].
     */
    public static Mesh dashes(double[][] line, double z, double... pattern) {
        float[] out = new float[Mesh.EDGE_FLOATS * 16];
        int n = 0;
        int piece = 0;
        double left = pattern[0];
        for (int i = 0; i < line.length; i++) {
            double[] a = line[i];
            double[] b = line[(i + 1) % line.length];
            double len = Math.hypot(b[0] - a[0], b[1] - a[1]);
            double gone = 0;
            while (gone < len) {
                double step = Math.min(left, len - gone);
                if (piece % 2 == 0) {
                    if (n + Mesh.EDGE_FLOATS > out.length) {
                        out = Arrays.copyOf(out, out.length * 2);
                    }
                    n = dash(out, n, a, b, gone / len, (gone + step) / len, z);
                }
                gone += step;
                left -= step;
                if (left <= 1e-9) {
                    piece = (piece + 1) % pattern.length;
                    left = pattern[piece];
                }
            }
        }
        return new Mesh(new float[0], new int[0], Arrays.copyOf(out, n), null);
    }

    /** Faces turned up and down: a silhouette from every side. */
    private static int dash(
            float[] out, int n, double[] a, double[] b, double from, double to, double z) {
        double[] ends = {from, to};
        for (int k = 0; k < 2; k++) {
            out[n + 3 * k] = (float) (a[0] + ends[k] * (b[0] - a[0]));
            out[n + 3 * k + 1] = (float) (a[1] + ends[k] * (b[1] - a[1]));
            out[n + 3 * k + 2] = (float) z;
        }
        out[n + 8] = 1;
        out[n + 11] = -1;
        return n + Mesh.EDGE_FLOATS;
    }

    public Mesh mesh() {
        return new Mesh(
                Arrays.copyOf(vertices, vertexFloats),
                Arrays.copyOf(indices, indexCount),
                Arrays.copyOf(edges, edgeFloats),
                null);
    }
}
