// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.render;

import static org.lwjgl.opengl.GL33C.*;

import foldwright.report.draw.Theme;
import foldwright.viewer.gl.Program;
import foldwright.viewer.gl.Target;
import foldwright.viewer.mesh.Zone;
import foldwright.viewer.scene.Batch;
import foldwright.viewer.theme.Palette;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.joml.Matrix4f;
import org.joml.Vector3f;

/**
 * Draws the parts of a machine into a target. Passes in order: shadow map, shadow on the table,
 * solids, edge lines. Solids are closed, so back faces are culled; edges lie a little nearer to the
 * eye than faces.
 */
public final class MachineRenderer implements AutoCloseable {
    /** Towards the light. */
    private static final Vector3f LIGHT = new Vector3f(0.42f, -0.55f, 1.05f).normalize();

    private static final int SHADOW_SIZE = 1024;
    private static final double PULL = 0.0004;

    /** How a picture is taken. */
    public record Shot(
            View view, Palette palette, Quality quality, Ink ink, double reach, double u) {}

    /** Samples a pixel. */
    public enum Quality {
        MOVING,
        REST
    }

    /** What the ink means. */
    public enum Ink {
        LOAD,
        SIGNED
    }

    private final List<GpuMesh> meshes = new ArrayList<>();
    private final Map<Family.Sort, List<GpuMesh>> sorted = new EnumMap<>(Family.Sort.class);
    private final Family solid = new Family("solid", "solid", Family.Variants.ALL);
    private final Family line = new Family("line", "line", Family.Variants.COIL_ONLY);
    private final Family depth = new Family("depth", "depth", Family.Variants.COIL_ONLY);
    private final Program blur = new Program("whole", "blur");
    private final Program table = new Program("whole", "table");
    private final Target shadow = new Target(Target.Form.SHADOW, SHADOW_SIZE, SHADOW_SIZE);
    private final Map<Theme, InkScale[]> inks = new EnumMap<>(Theme.class);
    private final int empty = glGenVertexArrays();
    private Target samples;
    private Target tableShadow;
    private Target tableBlur;
    private Target idTarget;
    private Family ids;
    private List<Batch> batches = List.of();
    private final Extent shadows = new Extent();
    private final Extent solidsSeen = new Extent();
    private final float[] materials = new float[16 * 3];
    private final Matrix4f light = new Matrix4f();
    private final Matrix4f view = new Matrix4f();
    private final Vector3f origin = new Vector3f();
    private final Vector3f up = new Vector3f(0, 1, 0);
    private final Vector3f lamp = new Vector3f();
    private double shadowReach = Double.NaN;
    private float pale;

    /** Takes new parts; those of before are deleted. */
    public void parts(List<Batch> batches) {
        meshes.forEach(GpuMesh::close);
        meshes.clear();
        this.batches = List.copyOf(batches);
        batches.forEach(b -> meshes.add(new GpuMesh(b)));
        for (Family.Sort sort : Family.Sort.values()) {
            sorted.put(sort, meshes.stream().filter(m -> m.sort() == sort).toList());
        }
        shadowReach = Double.NaN;
    }

    /** Draws nearly in paper colour: 0 not, 1 quite. */
    public void pale(double share) {
        pale = (float) share;
    }

    /** Sends the records written since the last picture and renews the shadow map. */
    public void update(double reach) {
        boolean changed = reach != shadowReach;
        for (int i = 0; i < meshes.size(); i++) {
            changed |= meshes.get(i).upload();
        }
        if (!changed) {
            return;
        }
        shadowReach = reach;
        float r = (float) reach;
        light.identity()
                .ortho(-r, r, -r, r, 0, 4 * r)
                .lookAt(lamp.set(LIGHT).mul(2 * r), origin, up);
        shadow.bind();
        state();
        glClear(GL_DEPTH_BUFFER_BIT);
        glEnable(GL_POLYGON_OFFSET_FILL);
        glPolygonOffset(1.5f, 3);
        depth.draw(
                sorted,
                p -> {
                    p.set("view", light);
                    p.set("flatten", 0, 0, 0);
                },
                GpuMesh::drawFaces);
        glDisable(GL_POLYGON_OFFSET_FILL);
    }

    private static void state() {
        glDisable(GL_BLEND);
        glDisable(GL_STENCIL_TEST);
        glDisable(GL_SCISSOR_TEST);
        glColorMask(true, true, true, true);
        glDepthMask(true);
        glEnable(GL_DEPTH_TEST);
        glDepthFunc(GL_LEQUAL);
        glEnable(GL_CULL_FACE);
        glCullFace(GL_BACK);
        glFrontFace(GL_CCW);
    }

    /**
     * Draws the picture into {@code target} (a {@link Target.Form#COLOUR} one); whatever lies there
     * is covered.
     */
    public void draw(Shot shot, Target target) {
        sizes(target, shot);
        view.set(shot.view.matrix(target.width, target.height, shot.reach));
        shadows.measure(batches, view, LIGHT, target.width, target.height);
        solidsSeen.measure(batches, view, null, target.width, target.height);
        tableShadow(shot, view);
        Target into = shot.quality == Quality.REST ? samples : target;
        into.bind();
        state();
        paper(shot);
        solids(shot, view);
        lines(shot, view, target);
        glBindVertexArray(0);
        if (into != target) {
            into.copyTo(target);
        }
    }

    /** Whether parts and shadows of the last picture leave a box free; x, y from below [px]. */
    public boolean clearOf(double left, double bottom, double right, double top) {
        double rim = 40;
        return (solidsSeen.right + 4 < left
                        || solidsSeen.left - 4 > right
                        || solidsSeen.top + 4 < bottom
                        || solidsSeen.bottom - 4 > top)
                && (shadows.right + rim < left
                        || shadows.left - rim > right
                        || shadows.top + rim < bottom
                        || shadows.bottom - rim > top);
    }

    private void sizes(Target target, Shot shot) {
        if (shot.quality == Quality.REST && misfit(samples, target.width, target.height)) {
            replaceSamples(new Target(Target.Form.SAMPLES_4, target.width, target.height));
        }
        int w = (target.width + 3) / 4;
        int h = (target.height + 3) / 4;
        if (misfit(tableShadow, w, h)) {
            closeIf(tableShadow);
            closeIf(tableBlur);
            tableShadow = new Target(Target.Form.GREY, w, h);
            tableBlur = new Target(Target.Form.GREY, w, h);
        }
    }

    private void replaceSamples(Target next) {
        closeIf(samples);
        samples = next;
    }

    private static boolean misfit(Target target, int width, int height) {
        return target == null || target.width != width || target.height != height;
    }

    private static void closeIf(Target target) {
        if (target != null) {
            target.close();
        }
    }

    private void tableShadow(Shot shot, Matrix4f view) {
        tableShadow.bind();
        state();
        glDisable(GL_DEPTH_TEST);
        glDisable(GL_CULL_FACE);
        glClearColor(0, 0, 0, 0);
        glClear(GL_COLOR_BUFFER_BIT);
        depth.draw(
                sorted,
                p -> {
                    p.set("view", view);
                    p.set("flatten", LIGHT.x, LIGHT.y, LIGHT.z);
                    p.set("table", 0f);
                },
                GpuMesh::drawFaces);
        glBindVertexArray(empty);
        blur.use();
        blur.set("picture", 0);
        float step = (float) Math.max(0.6, shot.u);
        for (int i = 0; i < 2; i++) {
            tableBlur.bind();
            tableShadow.bindTexture(0);
            blur.set("step", step / tableShadow.width, 0);
            glDrawArrays(GL_TRIANGLES, 0, 3);
            tableShadow.bind();
            tableBlur.bindTexture(0);
            blur.set("step", 0, step / tableShadow.height);
            glDrawArrays(GL_TRIANGLES, 0, 3);
        }
    }

    /** Bare paper, and the shadow only where there is one. */
    private void paper(Shot shot) {
        int c = shot.palette.paper;
        glClearColor(red(c), green(c), blue(c), 1);
        glClear(GL_COLOR_BUFFER_BIT | GL_DEPTH_BUFFER_BIT);
        glDisable(GL_DEPTH_TEST);
        glEnable(GL_SCISSOR_TEST);
        float rim = (float) (40 * Math.max(0.6, shot.u));
        int x = Math.max(0, (int) (shadows.left - rim));
        int y = Math.max(0, (int) (shadows.bottom - rim));
        glScissor(
                x,
                y,
                Math.max(0, (int) (shadows.right + rim) - x),
                Math.max(0, (int) (shadows.top + rim) - y));
        glBindVertexArray(empty);
        table.use();
        table.set("picture", 0);
        tableShadow.bindTexture(0);
        colour(table, "paper", shot.palette.paper);
        boolean lightTheme = !shot.palette.dark();
        colour(table, "ink", lightTheme ? shot.palette.ink : 0x000000);
        table.set(
                "shade",
                (lightTheme ? 0.17f : shot.view.above ? 0.28f : 0.42f) * (1 - 0.7f * pale));
        glDrawArrays(GL_TRIANGLES, 0, 3);
        glDisable(GL_SCISSOR_TEST);
        glEnable(GL_DEPTH_TEST);
    }

    private void solids(Shot shot, Matrix4f view) {
        for (Zone zone : Zone.values()) {
            put(materials, zone.ordinal() * 3, shot.palette.material(zone.material));
        }
        ink(shot).bind(1);
        shadow.bindTexture(2);
        glEnable(GL_POLYGON_OFFSET_FILL);
        glPolygonOffset(1, 1);
        solid.draw(sorted, p -> solid(p, shot, view), GpuMesh::drawFaces);
        glDisable(GL_POLYGON_OFFSET_FILL);
    }

    private void solid(Program p, Shot shot, Matrix4f view) {
        boolean lightTheme = !shot.palette.dark();
        p.set("view", view);
        p.set("light", light);
        p.setVec3Array("materials", materials);
        colour(p, "edge", lightTheme ? shot.palette.material("edge") : 0x0B0D10);
        colour(p, "paper", shot.palette.paper);
        p.set(
                "warm",
                lightTheme ? 0.815f : 0.62f,
                lightTheme ? 0.80f : 0.62f,
                lightTheme ? 0.77f : 0.64f);
        p.set("shade", lightTheme ? 0.20f : 0.38f);
        p.set("pale", pale);
        p.set("ink", 1);
        p.set("shadow", 2);
    }

    private InkScale ink(Shot shot) {
        return inks.computeIfAbsent(
                        shot.palette.roles.theme(),
                        t ->
                                new InkScale[] {
                                    new InkScale(shot.palette, InkScale.Kind.LOAD),
                                    new InkScale(shot.palette, InkScale.Kind.SIGNED)
                                })[shot.ink.ordinal()];
    }

    private void lines(Shot shot, Matrix4f view, Target target) {
        glEnable(GL_BLEND);
        glBlendFuncSeparate(GL_SRC_ALPHA, GL_ONE_MINUS_SRC_ALPHA, GL_ZERO, GL_ONE);
        glDepthMask(false);
        glDisable(GL_CULL_FACE);
        line.draw(sorted, p -> line(p, shot, view, target), GpuMesh::drawLines);
        glDepthMask(true);
    }

    private void line(Program p, Shot shot, Matrix4f view, Target target) {
        p.set("view", view);
        var away = shot.view.away();
        p.set("away", (float) away.x(), (float) away.y(), (float) away.z());
        p.set("size", target.width, target.height);
        float k = (float) Math.max(0.8, shot.u);
        p.set("widths[0]", 1.15f * k);
        p.set("widths[1]", 0.8f * k);
        p.set("pull", (float) (PULL / shot.reach));
        boolean lightTheme = !shot.palette.dark();
        int edge = shot.palette.material("edge");
        float alpha = (lightTheme ? 0.86f : 0.50f) * (1 - 0.65f * pale);
        p.set("ink", red(edge), green(edge), blue(edge), alpha);
        colour(p, "pine", shot.palette.pine);
    }

    /**
     * The id of the part at a pixel, 0 for none; draws five pixels round it.
     *
     * @param x from the left
     * @param y from above
     */
    public int pick(View seen, int width, int height, double reach, int x, int y) {
        if (x < 0 || y < 0 || x >= width || y >= height) {
            return 0;
        }
        if (misfit(idTarget, width, height)) {
            closeIf(idTarget);
            idTarget = new Target(Target.Form.ID, width, height);
        }
        idTarget.bind();
        state();
        glEnable(GL_SCISSOR_TEST);
        int fromBelow = height - 1 - y;
        glScissor(x - 2, fromBelow - 2, 5, 5);
        glClearBufferuiv(GL_COLOR, 0, new int[] {0, 0, 0, 0});
        glClear(GL_DEPTH_BUFFER_BIT);
        if (ids == null) {
            ids = new Family("solid", "id", Family.Variants.COIL_ONLY);
        }
        ids.draw(
                sorted,
                p -> {
                    p.set("view", seen.matrix(width, height, reach));
                    p.set("light", light);
                },
                GpuMesh::drawFaces);
        glBindVertexArray(0);
        glDisable(GL_SCISSOR_TEST);
        return idTarget.readId(x, fromBelow);
    }

    private static float red(int c) {
        return (c >> 16 & 255) / 255f;
    }

    private static float green(int c) {
        return (c >> 8 & 255) / 255f;
    }

    private static float blue(int c) {
        return (c & 255) / 255f;
    }

    private static void put(float[] out, int at, int c) {
        out[at] = red(c);
        out[at + 1] = green(c);
        out[at + 2] = blue(c);
    }

    private static void colour(Program program, String name, int c) {
        program.set(name, red(c), green(c), blue(c));
    }

    @Override
    public void close() {
        meshes.forEach(GpuMesh::close);
        inks.values()
                .forEach(
                        pair -> {
                            pair[0].close();
                            pair[1].close();
                        });
        for (Family f : List.of(solid, line, depth)) {
            f.close();
        }
        if (ids != null) {
            ids.close();
        }
        blur.close();
        table.close();
        shadow.close();
        closeIf(samples);
        closeIf(tableShadow);
        closeIf(tableBlur);
        closeIf(idTarget);
        glDeleteVertexArrays(empty);
    }
}
