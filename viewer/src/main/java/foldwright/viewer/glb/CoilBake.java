// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.glb;

import foldwright.viewer.mesh.Mesh;

/** A coil bent to one length, by the same formula as the vertex stage of the renderer. */
final class CoilBake {
    private CoilBake() {}

    static float[] vertices(Mesh mesh, double length) {
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
            double pitch = (length - 3 * wire) / live;
            double z =
                    coil.wireRadius()
                            + wire * Math.min(turns, 1)
                            + pitch * Math.max(0, Math.min(live, turns - 1))
                            + wire * Math.max(turns - 1 - live, 0);
            double radius = coil.radiusBelow() + way * (coil.radiusAbove() - coil.radiusBelow());
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
}
