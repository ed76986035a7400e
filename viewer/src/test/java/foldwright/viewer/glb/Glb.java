// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.glb;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.NoSuchElementException;

/**
 * A model file taken apart by the rules of glTF 2.0 (ISO/IEC 12113), without the code that wrote
 * it.
 */
public final class Glb {
    private static final int MAGIC = 0x46546C67;

    private final JsonNode json;
    private final ByteBuffer numbers;

    public Glb(Path file) throws IOException {
        ByteBuffer all = ByteBuffer.wrap(Files.readAllBytes(file)).order(ByteOrder.LITTLE_ENDIAN);
        if (all.getInt(0) != MAGIC || all.getInt(4) != 2 || all.getInt(8) != all.capacity()) {
            throw new IOException("no glTF 2.0 binary of its stated length: " + file);
        }
        int length = all.getInt(12);
        if (length % 4 != 0) {
            throw new IOException("text chunk of " + length + " bytes, not a multiple of 4");
        }
        json = new ObjectMapper().readTree(all.array(), 20, length);
        numbers = all.slice(28 + length, all.getInt(20 + length)).order(ByteOrder.LITTLE_ENDIAN);
    }

    public JsonNode json() {
        return json;
    }

    /** Number of the node of that name. */
    public int node(String name) {
        JsonNode nodes = json.get("nodes");
        for (int i = 0; i < nodes.size(); i++) {
            if (nodes.get(i).get("name").asText().equals(name)) {
                return i;
            }
        }
        throw new NoSuchElementException(name);
    }

    /** Values of an accessor of 32-bit floats. */
    public float[] floats(int accessor) {
        JsonNode a = json.get("accessors").get(accessor);
        JsonNode view = json.get("bufferViews").get(a.get("bufferView").asInt());
        float[] out = new float[view.get("byteLength").asInt() / 4];
        for (int i = 0; i < out.length; i++) {
            out[i] = numbers.getFloat(view.get("byteOffset").asInt() + 4 * i);
        }
        return out;
    }

    /** Animated values of a path of a node. */
    public float[] animated(int node, String path) {
        JsonNode animation = json.get("animations").get(0);
        for (JsonNode channel : animation.get("channels")) {
            JsonNode target = channel.get("target");
            if (target.get("node").asInt() == node && target.get("path").asText().equals(path)) {
                int sampler = channel.get("sampler").asInt();
                return floats(animation.get("samplers").get(sampler).get("output").asInt());
            }
        }
        throw new NoSuchElementException(path + " of node " + node);
    }

    /**
     * Angle about the file's x axis since the first sample, added up sample by sample [rad].
     * Players turn by the shorter way, so that is what they show.
     */
    public double[] turnedAboutX(int node) {
        float[] q = animated(node, "rotation");
        double[] out = new double[q.length / 4];
        for (int i = 1; i < out.length; i++) {
            int a = 4 * i - 4;
            // x and w of q(i) q(i-1)*.
            double w = 0;
            for (int k = 0; k < 4; k++) {
                w += (double) q[a + 4 + k] * q[a + k];
            }
            double x =
                    -q[a + 7] * q[a]
                            + q[a + 4] * q[a + 3]
                            - q[a + 5] * q[a + 2]
                            + q[a + 6] * q[a + 1];
            double turn = 2 * Math.atan2(x, w);
            out[i] = out[i - 1] + Math.IEEEremainder(turn, 2 * Math.PI);
        }
        return out;
    }
}
