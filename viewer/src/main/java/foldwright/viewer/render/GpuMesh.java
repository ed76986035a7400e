// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.render;

import static org.lwjgl.opengl.GL33C.*;

import foldwright.viewer.gl.Program;
import foldwright.viewer.mesh.Mesh;
import foldwright.viewer.mesh.Zone;
import foldwright.viewer.scene.Batch;
import java.nio.FloatBuffer;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;
import org.lwjgl.system.MemoryUtil;

/**
 * A mesh on the card with the records of its instances: one vertex array for its faces, one for its
 * edges.
 */
final class GpuMesh implements AutoCloseable {
    private static final Zone[] ZONES = Zone.values();
    private static final Set<Zone> PATTERNS = EnumSet.of(Zone.BELT, Zone.THREAD, Zone.RIM);
    private static final Set<Zone> INKS =
            EnumSet.of(Zone.LOAD, Zone.SPRING, Zone.BLOCK, Zone.MOTOR);
    private static final int EDGE_VERTEX = Mesh.EDGE_FLOATS + 1;

    private final Batch batch;
    private final int faces = glGenVertexArrays();
    private final int lines = glGenVertexArrays();
    private final int[] buffers = new int[5];
    private final FloatBuffer staging;
    private final float[] sent;
    private final Family.Sort sort;

    GpuMesh(Batch batch) {
        this.batch = batch;
        staging = MemoryUtil.memAllocFloat(batch.data.length);
        sent = new float[batch.data.length];
        Arrays.fill(sent, Float.NaN);
        glGenBuffers(buffers);
        Mesh mesh = batch.mesh;
        sort = sort(mesh);
        glBindVertexArray(faces);
        fill(GL_ARRAY_BUFFER, 0, mesh.vertices());
        floats(0, 3, Mesh.VERTEX_FLOATS, 0);
        floats(1, 3, Mesh.VERTEX_FLOATS, 3);
        floats(2, 2, Mesh.VERTEX_FLOATS, 6);
        glBindBuffer(GL_ELEMENT_ARRAY_BUFFER, buffers[1]);
        glBufferData(GL_ELEMENT_ARRAY_BUFFER, mesh.indices(), GL_STATIC_DRAW);
        instances();
        glBindVertexArray(lines);
        fill(GL_ARRAY_BUFFER, 2, corners(mesh));
        floats(0, 3, EDGE_VERTEX, 0);
        floats(1, 3, EDGE_VERTEX, 3);
        floats(2, 3, EDGE_VERTEX, 6);
        floats(9, 3, EDGE_VERTEX, 9);
        floats(10, 1, EDGE_VERTEX, 12);
        glBindBuffer(GL_ELEMENT_ARRAY_BUFFER, buffers[3]);
        glBufferData(GL_ELEMENT_ARRAY_BUFFER, quads(mesh.edgeCount()), GL_STATIC_DRAW);
        instances();
        glBindVertexArray(0);
    }

    private void fill(int target, int which, float[] data) {
        glBindBuffer(target, buffers[which]);
        glBufferData(target, data, GL_STATIC_DRAW);
    }

    private static void floats(int place, int count, int stride, int offset) {
        glEnableVertexAttribArray(place);
        glVertexAttribPointer(place, count, GL_FLOAT, false, stride * 4, offset * 4L);
    }

    private void instances() {
        glBindBuffer(GL_ARRAY_BUFFER, buffers[4]);
        glBufferData(GL_ARRAY_BUFFER, (long) batch.data.length * 4, GL_STREAM_DRAW);
        for (int i = 0; i < Batch.FLOATS / 4; i++) {
            floats(3 + i, 4, Batch.FLOATS, 4 * i);
            glVertexAttribDivisor(3 + i, 1);
        }
    }

    private static float[] corners(Mesh mesh) {
        float[] edges = mesh.edges();
        float[] out = new float[mesh.edgeCount() * 4 * EDGE_VERTEX];
        for (int e = 0; e < mesh.edgeCount(); e++) {
            for (int c = 0; c < 4; c++) {
                int at = (e * 4 + c) * EDGE_VERTEX;
                System.arraycopy(edges, e * Mesh.EDGE_FLOATS, out, at, Mesh.EDGE_FLOATS);
                out[at + Mesh.EDGE_FLOATS] = c;
            }
        }
        return out;
    }

    private static int[] quads(int count) {
        int[] out = new int[count * 6];
        for (int i = 0; i < count; i++) {
            int v = 4 * i;
            int[] quad = {v, v + 1, v + 2, v, v + 2, v + 3};
            System.arraycopy(quad, 0, out, 6 * i, 6);
        }
        return out;
    }

    /** Which shaders it needs. */
    Family.Sort sort() {
        return sort;
    }

    private static Family.Sort sort(Mesh mesh) {
        if (mesh.coil() != null) {
            return Family.Sort.COIL;
        }
        boolean ink = false;
        float[] vertices = mesh.vertices();
        for (int at = 6; at < vertices.length; at += Mesh.VERTEX_FLOATS) {
            Zone zone = ZONES[Math.round(vertices[at])];
            if (PATTERNS.contains(zone)) {
                return Family.Sort.PATTERN;
            }
            ink |= INKS.contains(zone);
        }
        return ink ? Family.Sort.INK : Family.Sort.PLAIN;
    }

    /** Sends the records of this picture if they changed; returns whether they did. */
    boolean upload() {
        if (Arrays.equals(sent, batch.data)) {
            return false;
        }
        System.arraycopy(batch.data, 0, sent, 0, sent.length);
        staging.clear();
        staging.put(batch.data).flip();
        glBindBuffer(GL_ARRAY_BUFFER, buffers[4]);
        glBufferSubData(GL_ARRAY_BUFFER, 0, staging);
        return true;
    }

    private void coil(Program program) {
        Mesh.Coil coil = batch.mesh.coil();
        if (coil != null) {
            program.set(
                    "coil",
                    (float) coil.turns(),
                    (float) coil.radiusBelow(),
                    (float) coil.radiusAbove(),
                    (float) coil.wireRadius());
        }
    }

    void drawFaces(Program program) {
        if (!batch.shown || batch.mesh.indices().length == 0) {
            return;
        }
        coil(program);
        glBindVertexArray(faces);
        glDrawElementsInstanced(
                GL_TRIANGLES, batch.mesh.indices().length, GL_UNSIGNED_INT, 0, batch.count);
    }

    void drawLines(Program program) {
        if (!batch.shown) {
            return;
        }
        coil(program);
        glBindVertexArray(lines);
        glDrawElementsInstanced(
                GL_TRIANGLES, batch.mesh.edgeCount() * 6, GL_UNSIGNED_INT, 0, batch.count);
    }

    @Override
    public void close() {
        MemoryUtil.memFree(staging);
        glDeleteBuffers(buffers);
        glDeleteVertexArrays(faces);
        glDeleteVertexArrays(lines);
    }
}
