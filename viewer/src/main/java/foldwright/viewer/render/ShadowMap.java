// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.render;

import static org.lwjgl.opengl.GL33C.*;

import foldwright.viewer.gl.Program;
import foldwright.viewer.gl.Target;
import foldwright.viewer.scene.Batch;
import java.util.List;
import java.util.function.Consumer;
import org.joml.Matrix4f;
import org.joml.Matrix4fc;
import org.joml.Vector3f;

/**
 * How near to the light the parts are, seen along it. The map is cut to the parts, in coarse steps
 * so that shadows do not crawl while the deck moves.
 */
final class ShadowMap implements AutoCloseable {
    private static final Vector3f ASIDE = new Vector3f(0.42f, -0.55f, 1.05f).normalize();

    /**
     * Seen from above, shadows of a raised deck would lie far beside it, over everything; there the
     * light stands higher.
     */
    private static final Vector3f HIGH = new Vector3f(0.10f, -0.06f, 1.05f).normalize();

    private static final int SIZE = 512;

    /** Steps of the cut, a share of the reach. */
    private static final float STEP = 1 / 16f;

    private final Family depth = new Family("depth", "depth", Family.Variants.COIL_ONLY);
    private final Target target = new Target(Target.Form.SHADOW, SIZE, SIZE);
    private final Extent seen = new Extent();
    private final Matrix4f turn = new Matrix4f();
    private final Matrix4f matrix = new Matrix4f();
    private final Vector3f origin = new Vector3f();
    private Vector3f light = ASIDE;
    private final Vector3f up = new Vector3f(0, 1, 0);
    private final Vector3f lamp = new Vector3f();
    private final Consumer<Program> uniforms = p -> p.set("view", matrix);

    /** Puts the light where it stands in a view; whether it stood elsewhere. */
    boolean light(View view) {
        Vector3f next = view.above ? HIGH : ASIDE;
        boolean other = next != light;
        light = next;
        return other;
    }

    /** Towards the light. */
    Vector3f light() {
        return light;
    }

    /**
     * Draws the map.
     *
     * @param meshes by the place of their sort
     * @param reach how far from the origin anything is [m]
     */
    void draw(List<Batch> batches, List<List<GpuMesh>> meshes, double reach) {
        float r = (float) reach;
        turn.setLookAt(lamp.set(light).mul(2 * r), origin, up);
        seen.measure(batches, turn, null);
        float step = STEP * r;
        matrix.setOrtho(
                        down(seen.left, step),
                        -down(-seen.right, step),
                        down(seen.bottom, step),
                        -down(-seen.top, step),
                        0,
                        4 * r)
                .mul(turn);
        target.bind();
        MachineRenderer.state();
        glClear(GL_DEPTH_BUFFER_BIT);
        glEnable(GL_POLYGON_OFFSET_FILL);
        glPolygonOffset(1.5f, 3);
        depth.draw(meshes, uniforms, GpuMesh::drawFaces);
        glDisable(GL_POLYGON_OFFSET_FILL);
    }

    /** The next step below, at least a fifth of a step away: what is measured leaves out coils. */
    private static float down(float value, float step) {
        return step * (float) Math.floor(value / step - 0.2f);
    }

    /** From the world to the map, -1 to 1. */
    Matrix4fc matrix() {
        return matrix;
    }

    void bind(int unit) {
        target.bindTexture(unit);
    }

    @Override
    public void close() {
        depth.close();
        target.close();
    }
}
