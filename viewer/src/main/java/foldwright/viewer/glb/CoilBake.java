// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.glb;

import foldwright.viewer.mesh.Mesh;

/** A coil bent to one length, by the same formula as the vertex stage of the renderer. */
final class CoilBake {
    private CoilBake() {}

    /** Whether the coils of a mesh close one after the other. */
    static boolean cone(Mesh mesh) {
        return mesh.coil() != null && mesh.coil().radiusBelow() > mesh.coil().radiusAbove();
    }

    /**
     * The vertices at a length.
     *
     * @param touch radius of the coil of a cone that just touches [m]
     */
    static float[] vertices(Mesh mesh, double length, double touch) {
        float[] in = mesh.vertices();
        float[] out = in.clone();
        Mesh.Coil coil = mesh.coil();
        for (int i = 0; i < in.length; i += Mesh.VERTEX_FLOATS) {
            double way = in[i];
            double round = in[i + 1];
            double turns = coil.turns() * way;
            double angle = 2 * Math.PI * turns;
            double wire = 2 * coil.wireRadius();
            double live = Math.max(coil.turns() - 2, 0.1);
            double t = Math.max(0, Math.min(live, turns - 1));
            double height = length - 3 * wire;
            double rise = cone(mesh) ? rise(coil, t, height, touch) : height * t / live;
            double z =
                    coil.wireRadius()
                            + wire * Math.min(turns, 1)
                            + rise
                            + wire * Math.max(turns - 1 - live, 0);
            double radius =
                    coil.radiusBelow() + t / live * (coil.radiusAbove() - coil.radiusBelow());
            double nx = Math.cos(round) * Math.cos(angle);
            double ny = Math.cos(round) * Math.sin(angle);
            double nz = Math.sin(round);
            out[i] = (float) (radius * Math.cos(angle) + coil.wireRadius() * nx);
            out[i + 1] = (float) (radius * Math.sin(angle) + coil.wireRadius() * ny);
            out[i + 2] = (float) (z + coil.wireRadius() * nz);
            out[i + 3] = (float) nx;
            out[i + 4] = (float) ny;
            out[i + 5] = (float) nz;
        }
        return out;
    }

    /**
     * Height of the live turns of a cone, from its large end: coils give with the cube of their
     * radius, those larger than the one that just touches lie on one another.
     *
     * @param t live turns so far
     * @param height of all of them [m]
     */
    private static double rise(Mesh.Coil coil, double t, double height, double touch) {
        double live = Math.max(coil.turns() - 2, 0.1);
        double wire = 2 * coil.wireRadius();
        double step = (coil.radiusBelow() - coil.radiusAbove()) / live;
        double closed = Math.max(0, Math.min(live, (coil.radiusBelow() - touch) / step));
        double solid = Math.sqrt(Math.max(0, wire * wire - step * step));
        double k = 1 / (4 * step * touch * touch * touch);
        double first = Math.pow(coil.radiusBelow() - step * closed, 4);
        double given = k * (first - Math.pow(coil.radiusAbove(), 4));
        double open = live - closed - given;
        if (open < 0.02 * live) {
            return height * t / live;
        }
        double pitch = (height - solid * (closed + given)) / open;
        if (t < closed) {
            return solid * t;
        }
        double here = k * (first - Math.pow(coil.radiusBelow() - step * t, 4));
        return solid * closed + pitch * (t - closed) - (pitch - solid) * here;
    }
}
