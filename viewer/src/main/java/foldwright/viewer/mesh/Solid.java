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
        return prism(Profile.roundedRectangle(x0, y0, x1, y1, radius), z0, z1);
    }

    /** A round bar about the local z axis [m]. */
    public Solid bar(double radius, double z0, double z1, int sides) {
        return prism(Profile.circle(radius, sides), z0, z1);
    }

    /** A round plate with a hole about the local z axis [m]. */
    public Solid ring(double outer, double inner, double z0, double z1, int sides) {
        return hollow(Profile.circle(outer, sides), Profile.circle(inner, sides), z0, z1);
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
                Profile.roundedRectangle(outside[0], outside[1], outside[2], outside[3], radius),
                Profile.roundedRectangle(inside[0], inside[1], inside[2], inside[3], innerRadius),
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
     * A piece of a belt along an open line (x, y pairs [m]) of this thickness, standing on z0..z1.
     * The first and the last point only give the direction; the ends are left open, for the next
     * piece to go on without a seam.
     *
     * @param way of each point along the whole belt [m]
     */
    public Solid strip(float[] line, float[] way, double thickness, double z0, double z1) {
        begin();
        int n = line.length / 2;
        float[] before = null;
        for (int i = 1; i + 1 < n; i++) {
            float tx = line[2 * i + 2] - line[2 * i - 2];
            float ty = line[2 * i + 3] - line[2 * i - 1];
            float len = (float) Math.hypot(tx, ty);
            float h = (float) thickness / 2 / len;
            float[] here = {
                line[2 * i] + ty * h,
                line[2 * i + 1] - tx * h,
                line[2 * i] - ty * h,
                line[2 * i + 1] + tx * h,
                ty / len,
                -tx / len,
                way[i]
            };
            if (before != null) {
                float low = (float) z0;
                float high = (float) z1;
                wall(before, here, 0, low, high, 1);
                wall(before, here, 2, low, high, -1);
                rim(before, here, low, -1);
                rim(before, here, high, 1);
            }
            before = here;
        }
        end();
        return this;
    }

    private void wall(float[] a, float[] b, int at, float z0, float z1, int out) {
        int p = vertex(a[at], a[at + 1], z0, out * a[4], out * a[5], 0, a[6]);
        int q = vertex(b[at], b[at + 1], z0, out * b[4], out * b[5], 0, b[6]);
        int r = vertex(b[at], b[at + 1], z1, out * b[4], out * b[5], 0, b[6]);
        int t = vertex(a[at], a[at + 1], z1, out * a[4], out * a[5], 0, a[6]);
        quad(p, q, r, t, out);
    }

    private void rim(float[] a, float[] b, float z, int up) {
        int p = vertex(a[0], a[1], z, 0, 0, up, a[6]);
        int q = vertex(b[0], b[1], z, 0, 0, up, b[6]);
        int r = vertex(b[2], b[3], z, 0, 0, up, b[6]);
        int t = vertex(a[2], a[3], z, 0, 0, up, a[6]);
        quad(p, q, r, t, up);
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
        return (profile[2 * point] - alongFrom) / (alongTo - alongFrom);
    }

    /** The walls of a profile; {@code out} is -1 for a hole. */
    private void side(float[] p, float z0, float z1, int out) {
        int n = p.length / 2;
        for (int i = 0; i < n; i++) {
            int j = (i + 1) % n;
            float[] here = Profile.wallNormal(p, i, out);
            float[] before = Profile.wallNormal(p, (i + n - 1) % n, out);
            float[] after = Profile.wallNormal(p, j, out);
            float[] start = Profile.meet(before, here, here);
            float[] end = Profile.meet(here, after, here);
            float wayI = wayAt(p, i);
            float wayJ = wayAt(p, j);
            int a = vertex(p[2 * i], p[2 * i + 1], z0, start[0], start[1], 0, wayI);
            int b = vertex(p[2 * j], p[2 * j + 1], z0, end[0], end[1], 0, wayJ);
            int c = vertex(p[2 * j], p[2 * j + 1], z1, end[0], end[1], 0, wayJ);
            int d = vertex(p[2 * i], p[2 * i + 1], z1, start[0], start[1], 0, wayI);
            quad(a, b, c, d, out);
        }
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

    public Mesh mesh() {
        return new Mesh(
                Arrays.copyOf(vertices, vertexFloats),
                Arrays.copyOf(indices, indexCount),
                Arrays.copyOf(edges, edgeFloats),
                null);
    }
}
