// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.glb;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import foldwright.report.draw.Theme;
import foldwright.study.Question;
import foldwright.viewer.Headless;
import foldwright.viewer.Sample;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.session.LoadField;
import foldwright.viewer.session.Overlay;
import foldwright.viewer.session.Results;
import foldwright.viewer.session.SheetBuilder;
import foldwright.viewer.theme.Palette;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The model file by the rules of glTF 2.0 (ISO/IEC 12113), and what it must show. */
class GlbFileTest {
    @TempDir Path folder;

    private JsonNode json;
    private ByteBuffer numbers;

    private void write() throws IOException {
        MachineScene scene = new MachineScene(Headless.machine("van-bench"));
        Results results = Sample.results(scene.machine());
        double[] heights = new double[61];
        for (int i = 0; i <= 60; i++) {
            heights[i] =
                    scene.shape().flat() + (scene.shape().top() - scene.shape().flat()) * i / 60;
        }
        var choice = SheetBuilder.Choice.of(Question.FOLD, 0.2);
        Path file = folder.resolve("a.glb");
        GlbFile.write(
                scene,
                new GlbFile.Motion(heights, 10, new SheetBuilder(scene).look(results, choice)),
                file);
        ByteBuffer all = ByteBuffer.wrap(Files.readAllBytes(file)).order(ByteOrder.LITTLE_ENDIAN);
        assertThat(all.getInt(0)).isEqualTo(0x46546C67);
        assertThat(all.getInt(4)).isEqualTo(2);
        assertThat(all.getInt(8)).isEqualTo(all.capacity());
        int length = all.getInt(12);
        assertThat(length % 4).isZero();
        json = new ObjectMapper().readTree(all.array(), 20, length);
        numbers = all.slice(28 + length, all.getInt(20 + length)).order(ByteOrder.LITTLE_ENDIAN);
    }

    private float[] floats(int accessor) {
        JsonNode a = json.get("accessors").get(accessor);
        JsonNode view = json.get("bufferViews").get(a.get("bufferView").asInt());
        float[] out = new float[view.get("byteLength").asInt() / 4];
        for (int i = 0; i < out.length; i++) {
            out[i] = numbers.getFloat(view.get("byteOffset").asInt() + 4 * i);
        }
        return out;
    }

    @Test
    void peakOfAnArmsLoadIsOnTheArm() throws IOException {
        write();
        JsonNode arm = null;
        for (JsonNode node : json.get("nodes")) {
            arm = node.get("name").asText().equals("front arm 1 rising") ? node : arm;
        }
        JsonNode faces = json.get("meshes").get(arm.get("mesh").asInt()).get("primitives").get(0);
        float[] at = floats(faces.get("attributes").get("POSITION").asInt());
        float[] colour = floats(faces.get("attributes").get("COLOR_0").asInt());
        Results results = Sample.results(Headless.machine("van-bench"));
        LoadField field =
                LoadField.of(
                                Headless.machine("van-bench"),
                                results.curve().orElseThrow(),
                                Overlay.ARM_BENDING)
                        .orElseThrow();
        int expected =
                Palette.of(Theme.LIGHT).load(field.at("front arm 1 rising", 0.2) / field.end());
        double linear = Math.pow((((expected >> 16 & 255) / 255.0) + 0.055) / 1.055, 2.4);
        boolean found = false;
        for (int i = 0; i < at.length / 3; i++) {
            if (Math.abs(at[3 * i] - 0.095) < 1e-5) {
                assertThat((double) colour[4 * i]).isCloseTo(linear, offset(2e-3));
                found = true;
            }
        }
        assertThat(found).isTrue();
    }

    @Test
    void turnsTakeTheShortWayBetweenSamples() throws IOException {
        write();
        for (JsonNode channel : json.get("animations").get(0).get("channels")) {
            if (channel.get("target").get("path").asText().equals("rotation")) {
                JsonNode sampler =
                        json.get("animations")
                                .get(0)
                                .get("samplers")
                                .get(channel.get("sampler").asInt());
                float[] q = floats(sampler.get("output").asInt());
                for (int i = 0; i < q.length; i += 4) {
                    double norm =
                            q[i] * q[i]
                                    + q[i + 1] * q[i + 1]
                                    + q[i + 2] * q[i + 2]
                                    + q[i + 3] * q[i + 3];
                    assertThat(norm).isCloseTo(1, offset(1e-5));
                    if (i > 0) {
                        double dot =
                                q[i] * q[i - 4]
                                        + q[i + 1] * q[i - 3]
                                        + q[i + 2] * q[i - 2]
                                        + q[i + 3] * q[i - 1];
                        assertThat(dot).isGreaterThanOrEqualTo(0);
                    }
                }
            }
        }
    }

    @Test
    void boundsOfPositionsAreStatedAndRight() throws IOException {
        write();
        for (JsonNode mesh : json.get("meshes")) {
            for (JsonNode primitive : mesh.get("primitives")) {
                int accessor = primitive.get("attributes").get("POSITION").asInt();
                float[] p = floats(accessor);
                JsonNode low = json.get("accessors").get(accessor).get("min");
                JsonNode high = json.get("accessors").get(accessor).get("max");
                for (int i = 0; i < p.length; i++) {
                    assertThat(p[i])
                            .isBetween(
                                    (float) low.get(i % 3).asDouble(),
                                    (float) high.get(i % 3).asDouble());
                }
            }
        }
    }
}
