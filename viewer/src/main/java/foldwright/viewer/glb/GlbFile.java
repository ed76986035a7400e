// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.glb;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import foldwright.report.draw.Theme;
import foldwright.viewer.mesh.Mesh;
import foldwright.viewer.picture.WholeFile;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.scene.Part;
import foldwright.viewer.scene.PartKind;
import foldwright.viewer.scene.PartLook;
import foldwright.viewer.theme.Palette;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.joml.Matrix4f;
import org.joml.Matrix4x3f;
import org.joml.Quaternionf;
import org.joml.Vector3f;

/** Writes a machine and its unfolding as one .glb file. */
public final class GlbFile {
    private static final int TRIANGLES = 4;
    private static final int LINES = 1;
    private static final int SHADED = 0;
    private static final int UNLIT = 1;
    private static final int INK = 2;

    /** In how many shapes a cone is given besides its last. */
    private static final int SHAPES = 8;

    private final MachineScene scene;
    private final Motion motion;
    private final Palette palette = Palette.of(Theme.LIGHT);
    private final ObjectMapper mapper = new ObjectMapper();
    private final ObjectNode root = mapper.createObjectNode();
    private final BinaryChunk chunk;
    private final ArrayNode nodes;
    private final ArrayNode meshes;
    private final ArrayNode channels;
    private final ArrayNode samplers;
    private int times;

    /**
     * What moves.
     *
     * @param heights pivot heights at even times [m]
     * @param seconds the whole lasts [s]
     * @param look what the parts show
     */
    public record Motion(double[] heights, double seconds, PartLook look) {
        public Motion {
            heights = heights.clone();
        }
    }

    private GlbFile(MachineScene scene, Motion motion) {
        this.scene = scene;
        this.motion = motion;
        root.putObject("asset").put("version", "2.0").put("generator", "Foldwright");
        root.put("scene", 0);
        root.putArray("scenes")
                .addObject()
                .put("name", scene.machine().name())
                .putArray("nodes")
                .add(0);
        root.putArray("extensionsUsed").add("KHR_materials_unlit");
        nodes = root.putArray("nodes");
        meshes = root.putArray("meshes");
        materials();
        chunk = new BinaryChunk(root);
        ObjectNode animation = root.putArray("animations").addObject().put("name", "unfolding");
        channels = animation.putArray("channels");
        samplers = animation.putArray("samplers");
    }

    /** Writes the file. */
    public static void write(MachineScene scene, Motion motion, Path file) throws IOException {
        GlbFile glb = new GlbFile(scene, motion);
        glb.build();
        WholeFile.write(file, glb::write);
    }

    private void materials() {
        ArrayNode list = root.putArray("materials");
        ObjectNode shaded = list.addObject().put("name", "shaded");
        shaded.putObject("pbrMetallicRoughness")
                .put("metallicFactor", 0)
                .put("roughnessFactor", 0.9);
        ObjectNode unlit = list.addObject().put("name", "load");
        unlit.putObject("pbrMetallicRoughness").put("metallicFactor", 0).put("roughnessFactor", 1);
        unlit.putObject("extensions").putObject("KHR_materials_unlit");
        ObjectNode ink = list.addObject().put("name", "edge");
        ObjectNode pbr =
                ink.putObject("pbrMetallicRoughness")
                        .put("metallicFactor", 0)
                        .put("roughnessFactor", 1);
        pbr.putArray("baseColorFactor").add(0.023).add(0.028).add(0.035).add(1);
        ink.putObject("extensions").putObject("KHR_materials_unlit");
    }

    private void build() {
        ObjectNode top = nodes.addObject().put("name", scene.machine().name());
        // glTF has y up; the machine has z up.
        top.putArray("rotation").add(-Math.sqrt(0.5)).add(0).add(0).add(Math.sqrt(0.5));
        ArrayNode children = top.putArray("children");
        float[] at = new float[motion.heights.length];
        for (int i = 0; i < at.length; i++) {
            at[i] = (float) (motion.seconds * i / (at.length - 1));
        }
        times = chunk.samples(at, "SCALAR");
        int count = scene.parts().size();
        Track[] tracks = new Track[count];
        PartMesh.CoilAt[][] coil = new PartMesh.CoilAt[count][at.length];
        for (int i = 0; i < count; i++) {
            tracks[i] = new Track(at.length);
        }
        record(tracks, coil);
        Map<Object, Integer> known = new HashMap<>();
        for (int i = 0; i < count; i++) {
            Part part = scene.parts().get(i);
            if (part.kind() == PartKind.OUTLINE || part.kind() == PartKind.GRID) {
                continue;
            }
            int mesh = mesh(part, coil[i], known);
            ObjectNode node = nodes.addObject().put("name", part.name()).put("mesh", mesh);
            children.add(nodes.size() - 1);
            tracks[i].write(node, nodes.size() - 1);
            if (CoilBake.cone(part.mesh())) {
                weights(nodes.size() - 1, at.length);
            }
        }
        if (channels.isEmpty()) {
            root.remove("animations");
        }
    }

    /**
     * Poses the machine at every height and notes where each part is; coils are baked at their last
     * length.
     */
    private void record(Track[] tracks, PartMesh.CoilAt[][] coil) {
        Matrix4x3f m = new Matrix4x3f();
        int last = motion.heights.length - 1;
        for (int k = 0; k <= last; k++) {
            scene.place(motion.heights[k]);
            for (int i = 0; i < tracks.length; i++) {
                Part part = scene.parts().get(i);
                scene.pose().body[part.body()].mul(part.local(), m);
                double length = part.channel() < 0 ? 0 : scene.pose().channel[part.channel()];
                boolean cone = CoilBake.cone(part.mesh());
                double touch = cone ? scene.pose().channel[part.channel() + 1] : 0;
                tracks[i].set(k, m, part.mesh().coil() == null || cone ? 1 : length);
                coil[i][k] = new PartMesh.CoilAt(length, touch);
            }
        }
        for (int i = 0; i < tracks.length; i++) {
            Mesh mesh = scene.parts().get(i).mesh();
            if (mesh.coil() != null && !CoilBake.cone(mesh)) {
                tracks[i].stretchOver(coil[i][last].length());
            }
        }
    }

    /** Frames at which a cone is baked besides the last: from the first on, in even steps. */
    private static int frame(int shape, int frames) {
        return (int) Math.round((double) shape * (frames - 1) / SHAPES);
    }

    /** The shapes of a cone fade into one another, each full at its own frame. */
    private void weights(int node, int frames) {
        float[] out = new float[frames * SHAPES];
        for (int k = 0; k < frames; k++) {
            int from = 0;
            while (from < SHAPES - 1 && frame(from + 1, frames) <= k) {
                from++;
            }
            int low = frame(from, frames);
            float share = (float) (k - low) / Math.max(1, frame(from + 1, frames) - low);
            out[k * SHAPES + from] = 1 - share;
            if (from + 1 < SHAPES) {
                out[k * SHAPES + from + 1] = share;
            }
        }
        animate(node, "weights", chunk.samples(out, "SCALAR"));
    }

    private void animate(int node, String path, int output) {
        ObjectNode sampler = samplers.addObject();
        sampler.put("input", times).put("output", output).put("interpolation", "LINEAR");
        ObjectNode channel = channels.addObject().put("sampler", samplers.size() - 1);
        channel.putObject("target").put("node", node).put("path", path);
    }

    /** A cone's coils close one after the other, so it is given in shapes between which to fade. */
    private void shapes(ObjectNode mesh, ObjectNode faces, PartMesh made, ConeAt cone) {
        ArrayNode targets = faces.putArray("targets");
        ArrayNode weights = mesh.putArray("weights");
        for (int shape = 0; shape < SHAPES; shape++) {
            PartMesh.CoilAt at = cone.coil[frame(shape, cone.coil.length)];
            float[] moved = made.moved(cone.part.mesh(), at);
            targets.addObject().put("POSITION", chunk.vertices(moved, "VEC3"));
            weights.add(shape == 0 ? 1 : 0);
        }
    }

    private record ConeAt(Part part, PartMesh.CoilAt[] coil) {}

    private int mesh(Part part, PartMesh.CoilAt[] coil, Map<Object, Integer> known) {
        float[] load = new float[4];
        motion.look.load(part, load, 0);
        Object key =
                Arrays.asList(part.mesh(), Arrays.asList(coil), load[0], load[1], load[2], load[3]);
        Integer found = known.get(key);
        if (found != null) {
            return found;
        }
        PartMesh made = PartMesh.of(part, load, coil[coil.length - 1], palette);
        ObjectNode mesh = meshes.addObject().put("name", part.kind().word());
        ArrayNode primitives = mesh.putArray("primitives");
        ObjectNode faces = primitives.addObject();
        faces.put("mode", TRIANGLES).put("material", PartMesh.unlit(load) ? UNLIT : SHADED);
        faces.put("indices", chunk.indices(made.indices));
        faces.putObject("attributes")
                .put("POSITION", chunk.vertices(made.positions, "VEC3"))
                .put("NORMAL", chunk.vertices(unit(made.normals), "VEC3"))
                .put("COLOR_0", chunk.vertices(made.colours, "VEC4"));
        if (CoilBake.cone(part.mesh())) {
            shapes(mesh, faces, made, new ConeAt(part, coil));
        }
        if (made.creases.length > 0) {
            ObjectNode lines = primitives.addObject().put("mode", LINES).put("material", INK);
            lines.putObject("attributes").put("POSITION", chunk.vertices(made.creases, "VEC3"));
        }
        known.put(key, meshes.size() - 1);
        return meshes.size() - 1;
    }

    private static float[] unit(float[] normals) {
        for (int i = 0; i < normals.length; i += 3) {
            double len =
                    Math.sqrt(
                            normals[i] * normals[i]
                                    + normals[i + 1] * normals[i + 1]
                                    + normals[i + 2] * normals[i + 2]);
            if (len < 1e-9) {
                normals[i + 2] = 1;
                continue;
            }
            for (int k = 0; k < 3; k++) {
                normals[i + k] = (float) (normals[i + k] / len);
            }
        }
        return normals;
    }

    /** Where one part is over time: place, turn, stretch. */
    private final class Track {
        private final float[] place;
        private final float[] turn;
        private final float[] stretch;
        private final Quaternionf q = new Quaternionf();
        private final Vector3f v = new Vector3f();
        private final Matrix4f turned = new Matrix4f();

        Track(int n) {
            place = new float[3 * n];
            turn = new float[4 * n];
            stretch = new float[3 * n];
        }

        void set(int k, Matrix4x3f m, double alongZ) {
            m.getTranslation(v);
            place[3 * k] = v.x;
            place[3 * k + 1] = v.y;
            place[3 * k + 2] = v.z;
            m.getScale(v);
            stretch[3 * k] = v.x;
            stretch[3 * k + 1] = v.y;
            stretch[3 * k + 2] = (float) (v.z * alongZ);
            // Belts are as long as their first column and may be mirrored, which no turn does.
            turned.set(m);
            if (m.determinant() < 0) {
                stretch[3 * k + 1] = -v.y;
                turned.scale(1, -1, 1);
            }
            turned.getUnnormalizedRotation(q).normalize();
            // One half-space of quaternions, or a part turns the long way round between two
            // samples.
            if (k > 0
                    && q.x * turn[4 * k - 4]
                                    + q.y * turn[4 * k - 3]
                                    + q.z * turn[4 * k - 2]
                                    + q.w * turn[4 * k - 1]
                            < 0) {
                q.set(-q.x, -q.y, -q.z, -q.w);
            }
            turn[4 * k] = q.x;
            turn[4 * k + 1] = q.y;
            turn[4 * k + 2] = q.z;
            turn[4 * k + 3] = q.w;
        }

        void stretchOver(double baked) {
            for (int i = 2; i < stretch.length; i += 3) {
                stretch[i] /= (float) baked;
            }
        }

        void write(ObjectNode node, int index) {
            path(node, index, "translation", "VEC3", place, 3, new float[] {0, 0, 0});
            path(node, index, "rotation", "VEC4", turn, 4, new float[] {0, 0, 0, 1});
            path(node, index, "scale", "VEC3", stretch, 3, new float[] {1, 1, 1});
        }

        private void path(
                ObjectNode node,
                int index,
                String name,
                String type,
                float[] data,
                int width,
                float[] usual) {
            boolean moves = false;
            for (int i = width; i < data.length; i++) {
                moves |= Math.abs(data[i] - data[i % width]) > 1e-6f;
            }
            boolean plain = true;
            for (int i = 0; i < width; i++) {
                plain &= Math.abs(data[i] - usual[i]) < 1e-7f;
            }
            if (!plain || moves) {
                ArrayNode first = node.putArray(name);
                for (int i = 0; i < width; i++) {
                    first.add(data[i]);
                }
            }
            if (moves) {
                animate(index, name, chunk.samples(data, type));
            }
        }
    }

    private void write(OutputStream out) throws IOException {
        byte[] numbers = chunk.array();
        root.putArray("buffers").addObject().put("byteLength", numbers.length);
        byte[] json = mapper.writeValueAsString(root).getBytes(StandardCharsets.UTF_8);
        int padded = (json.length + 3) / 4 * 4;
        ByteBuffer head = ByteBuffer.allocate(20).order(ByteOrder.LITTLE_ENDIAN);
        head.putInt(0x46546C67).putInt(2).putInt(12 + 8 + padded + 8 + numbers.length);
        head.putInt(padded).putInt(0x4E4F534A);
        out.write(head.array());
        out.write(json);
        for (int i = json.length; i < padded; i++) {
            out.write(' ');
        }
        ByteBuffer second = ByteBuffer.allocate(8).order(ByteOrder.LITTLE_ENDIAN);
        second.putInt(numbers.length).putInt(0x004E4942);
        out.write(second.array());
        out.write(numbers);
    }
}
