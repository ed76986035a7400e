// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.glb;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import com.fasterxml.jackson.databind.JsonNode;
import foldwright.report.draw.Theme;
import foldwright.study.Question;
import foldwright.viewer.Headless;
import foldwright.viewer.Sample;
import foldwright.viewer.scene.MachineScene;
import foldwright.viewer.scene.Part;
import foldwright.viewer.scene.PartKind;
import foldwright.viewer.session.LoadField;
import foldwright.viewer.session.Overlay;
import foldwright.viewer.session.Results;
import foldwright.viewer.session.SheetBuilder;
import foldwright.viewer.theme.Palette;
import java.io.IOException;
import java.nio.file.Path;
import org.joml.Matrix4f;
import org.joml.Matrix4x3f;
import org.joml.Quaternionf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The model file by the rules of glTF 2.0 (ISO/IEC 12113), and what it must show. */
class GlbFileTest {
    @TempDir Path folder;

    private Glb write() throws IOException {
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
        return new Glb(file);
    }

    @Test
    void peakOfAnArmsLoadIsOnTheArm() throws IOException {
        Glb glb = write();
        JsonNode json = glb.json();
        JsonNode arm = json.get("nodes").get(glb.node("front arm 1 rising"));
        JsonNode faces = json.get("meshes").get(arm.get("mesh").asInt()).get("primitives").get(0);
        float[] at = glb.floats(faces.get("attributes").get("POSITION").asInt());
        float[] colour = glb.floats(faces.get("attributes").get("COLOR_0").asInt());
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

    /** Place, turn and stretch of a node give back where the scene puts its part. */
    @Test
    void everyPartStandsWhereTheSceneHasIt() throws IOException {
        Glb glb = write();
        MachineScene scene = new MachineScene(Headless.machine("van-bench"));
        scene.place(scene.shape().flat());
        int belts = 0;
        for (Part part : scene.parts()) {
            boolean drawn = part.kind() != PartKind.OUTLINE && part.kind() != PartKind.GRID;
            if (!drawn || part.mesh().coil() != null) {
                continue;
            }
            JsonNode node = glb.json().get("nodes").get(glb.node(part.name()));
            Matrix4f found = new Matrix4f();
            if (node.has("translation")) {
                found.translate(
                        at(node, "translation", 0),
                        at(node, "translation", 1),
                        at(node, "translation", 2));
            }
            if (node.has("rotation")) {
                found.rotate(
                        new Quaternionf(
                                at(node, "rotation", 0),
                                at(node, "rotation", 1),
                                at(node, "rotation", 2),
                                at(node, "rotation", 3)));
            }
            if (node.has("scale")) {
                found.scale(at(node, "scale", 0), at(node, "scale", 1), at(node, "scale", 2));
            }
            // Parts of one name are told apart by nothing: the first stands for all.
            if (scene.part(part.name()).orElseThrow() != part) {
                continue;
            }
            Matrix4f expected =
                    new Matrix4f(
                            scene.pose().body[part.body()].mul(part.local(), new Matrix4x3f()));
            assertThat(found.equals(expected, 1e-5f)).as(part.name()).isTrue();
            belts += part.kind() == PartKind.BELT ? 1 : 0;
        }
        assertThat(belts).isGreaterThan(10);
    }

    private static float at(JsonNode node, String key, int index) {
        return (float) node.get(key).get(index).asDouble();
    }

    @Test
    void turnsTakeTheShortWayBetweenSamples() throws IOException {
        Glb glb = write();
        JsonNode json = glb.json();
        for (JsonNode channel : json.get("animations").get(0).get("channels")) {
            if (channel.get("target").get("path").asText().equals("rotation")) {
                JsonNode sampler =
                        json.get("animations")
                                .get(0)
                                .get("samplers")
                                .get(channel.get("sampler").asInt());
                float[] q = glb.floats(sampler.get("output").asInt());
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
        Glb glb = write();
        JsonNode json = glb.json();
        for (JsonNode mesh : json.get("meshes")) {
            for (JsonNode primitive : mesh.get("primitives")) {
                int accessor = primitive.get("attributes").get("POSITION").asInt();
                float[] p = glb.floats(accessor);
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
