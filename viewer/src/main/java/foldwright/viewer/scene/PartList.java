// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.scene;

import foldwright.viewer.mesh.Mesh;
import java.util.ArrayList;
import java.util.List;
import org.joml.Matrix4x3f;
import org.joml.Matrix4x3fc;

/** Collects parts while a machine is built. */
final class PartList {
    final Bodies bodies = new Bodies();
    final List<Part> parts = new ArrayList<>();
    private int channels;

    int newChannel() {
        return channels++;
    }

    int channels() {
        return channels;
    }

    void add(String name, PartKind kind, Mesh mesh, int body, Matrix4x3fc local) {
        add(name, kind, mesh, body, local, -1, 1);
    }

    void add(String name, PartKind kind, Mesh mesh, int body) {
        add(name, kind, mesh, body, new Matrix4x3f());
    }

    void add(
            String name,
            PartKind kind,
            Mesh mesh,
            int body,
            Matrix4x3fc local,
            int channel,
            double pitch) {
        parts.add(new Part(parts.size() + 1, name, kind, mesh, body, local, channel, pitch));
    }

    static Matrix4x3f at(double x, double y, double z) {
        return new Matrix4x3f().translation((float) x, (float) y, (float) z);
    }
}
