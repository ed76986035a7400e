// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.glb;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/** The numbers of a model: buffer views and accessors over one growing chunk. */
final class BinaryChunk {
    private static final int FLOAT = 5126;
    private static final int UNSIGNED_INT = 5125;
    private static final int ARRAY_BUFFER = 34962;
    private static final int ELEMENT_ARRAY_BUFFER = 34963;

    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private final ArrayNode views;
    private final ArrayNode accessors;

    BinaryChunk(ObjectNode root) {
        views = root.putArray("bufferViews");
        accessors = root.putArray("accessors");
    }

    /** Vertex attributes; returns the accessor. */
    int vertices(float[] data, String type) {
        return accessor(floats(data, ARRAY_BUFFER), FLOAT, type, data);
    }

    /** Animation numbers; returns the accessor. */
    int samples(float[] data, String type) {
        return accessor(floats(data, 0), FLOAT, type, data);
    }

    /** Indices; returns the accessor. */
    int indices(int[] data) {
        int view = view(data.length * 4, ELEMENT_ARRAY_BUFFER);
        ByteBuffer buffer = ByteBuffer.allocate(data.length * 4).order(ByteOrder.LITTLE_ENDIAN);
        for (int v : data) {
            buffer.putInt(v);
        }
        bytes.writeBytes(buffer.array());
        ObjectNode node = accessors.addObject();
        node.put("bufferView", view).put("componentType", UNSIGNED_INT).put("count", data.length);
        node.put("type", "SCALAR");
        return accessors.size() - 1;
    }

    private int floats(float[] data, int target) {
        int view = view(data.length * 4, target);
        ByteBuffer buffer = ByteBuffer.allocate(data.length * 4).order(ByteOrder.LITTLE_ENDIAN);
        for (float v : data) {
            buffer.putFloat(v);
        }
        bytes.writeBytes(buffer.array());
        return view;
    }

    private int view(int length, int target) {
        ObjectNode node = views.addObject();
        node.put("buffer", 0).put("byteOffset", bytes.size()).put("byteLength", length);
        if (target != 0) {
            node.put("target", target);
        }
        return views.size() - 1;
    }

    private int accessor(int view, int component, String type, float[] data) {
        int width =
                switch (type) {
                    case "SCALAR" -> 1;
                    case "VEC3" -> 3;
                    default -> 4;
                };
        ObjectNode node = accessors.addObject();
        node.put("bufferView", view)
                .put("componentType", component)
                .put("count", data.length / width);
        node.put("type", type);
        ArrayNode low = node.putArray("min");
        ArrayNode high = node.putArray("max");
        for (int c = 0; c < width; c++) {
            float least = Float.POSITIVE_INFINITY;
            float most = Float.NEGATIVE_INFINITY;
            for (int i = c; i < data.length; i += width) {
                least = Math.min(least, data[i]);
                most = Math.max(most, data[i]);
            }
            low.add(least);
            high.add(most);
        }
        return accessors.size() - 1;
    }

    /** Everything written, padded to four bytes. */
    byte[] array() {
        while (bytes.size() % 4 != 0) {
            bytes.write(0);
        }
        return bytes.toByteArray();
    }
}
