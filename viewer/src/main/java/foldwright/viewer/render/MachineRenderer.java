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
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.joml.Matrix4f;

/**
 * Draws the parts of a machine into a target. Passes in order: shadow map, shadow on the table,
 * solids, edge lines. Solids are closed, so back faces are culled; edges lie a little nearer to the
 * eye than faces.
 */
public final class MachineRenderer implements AutoCloseable {
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

    private static final Zone[] ZONES = Zone.values();

    private final List<GpuMesh> meshes = new ArrayList<>();
    private List<List<GpuMesh>> sorted = List.of();
    private final Family solid = new Family("solid", "solid", Family.Variants.ALL);
    private final Family line = new Family("line", "line", Family.Variants.COIL_ONLY);
    private final ShadowMap shadow = new ShadowMap();
    private final TableShadow table = new TableShadow();
    private final Map<Theme, InkScale[]> inks = new EnumMap<>(Theme.class);
    private Target samples;
    private Target idTarget;
    private Family ids;
    private List<Batch> batches = List.of();
    private final Extent shadows = new Extent();
    private final Extent solidsSeen = new Extent();
    private final float[] materials = new float[16 * 3];
    private Palette materialsOf;
    private final Matrix4f view = new Matrix4f();
    private double shadowReach = Double.NaN;
    private float pale;

    /** The picture being drawn. */
    private Shot shot;

    private Target onto;
    private final Consumer<Program> solidUniforms = this::solid;
    private final Consumer<Program> lineUniforms = this::line;
    private final Consumer<Program> idUniforms = this::id;

    /** Takes new parts; those of before are deleted. */
    public void parts(List<Batch> batches) {
        meshes.forEach(GpuMesh::close);
        meshes.clear();
        this.batches = List.copyOf(batches);
        batches.forEach(b -> meshes.add(new GpuMesh(b)));
        sorted =
                Stream.of(Family.Sort.values())
                        .map(sort -> meshes.stream().filter(m -> m.sort() == sort).toList())
                        .toList();
        shadowReach = Double.NaN;
    }

    /** Draws nearly in paper colour: 0 not, 1 quite. */
    public void pale(double share) {
        pale = (float) share;
    }

    /** Sends the records written since the last picture and renews the shadow map. */
    public void update(View seen, double reach) {
        boolean changed = shadow.light(seen) | reach != shadowReach;
        for (int i = 0; i < meshes.size(); i++) {
            changed |= meshes.get(i).upload();
        }
        if (!changed) {
            return;
        }
        shadowReach = reach;
        shadow.draw(batches, sorted, reach);
    }

    static void state() {
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
        this.shot = shot;
        onto = target;
        shot.view.matrix(target.width, target.height, shot.reach, view);
        shadows.measure(batches, view, shadow.light(), target.width, target.height);
        solidsSeen.measure(batches, view, null, target.width, target.height);
        table.cast(shot, view, shadow, shadows, target);
        Target into = shot.quality == Quality.REST ? samples() : target;
        into.bind();
        state();
        paper();
        solids();
        lines();
        glBindVertexArray(0);
        if (into != target) {
            resolve(into, target);
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

    /** Averages the samples where anything was drawn; the rest is paper. */
    private void resolve(Target from, Target to) {
        to.bind();
        paperColour();
        glClear(GL_COLOR_BUFFER_BIT);
        float rim = TableShadow.rim(shot);
        int x = (int) Math.max(0, Math.min(shadows.left, solidsSeen.left) - rim);
        int y = (int) Math.max(0, Math.min(shadows.bottom, solidsSeen.bottom) - rim);
        int right = (int) Math.min(to.width, Math.max(shadows.right, solidsSeen.right) + rim);
        int top = (int) Math.min(to.height, Math.max(shadows.top, solidsSeen.top) + rim);
        if (right > x && top > y) {
            from.copyTo(to, x, y, right - x, top - y);
        }
    }

    private void paperColour() {
        int c = shot.palette.paper;
        glClearColor(Program.red(c), Program.green(c), Program.blue(c), 1);
    }

    private Target samples() {
        if (misfit(samples, onto.width, onto.height)) {
            closeIf(samples);
            samples = new Target(Target.Form.SAMPLES_4, onto.width, onto.height);
        }
        return samples;
    }

    private static boolean misfit(Target target, int width, int height) {
        return target == null || target.width != width || target.height != height;
    }

    private static void closeIf(Target target) {
        if (target != null) {
            target.close();
        }
    }

    /** Bare paper, and the shadow only where there is one. */
    private void paper() {
        paperColour();
        glClear(GL_COLOR_BUFFER_BIT | GL_DEPTH_BUFFER_BIT);
        table.lay(shot, pale);
    }

    private void solids() {
        if (materialsOf != shot.palette) {
            materialsOf = shot.palette;
            for (Zone zone : ZONES) {
                int c = materialsOf.material(zone.material);
                materials[zone.ordinal() * 3] = Program.red(c);
                materials[zone.ordinal() * 3 + 1] = Program.green(c);
                materials[zone.ordinal() * 3 + 2] = Program.blue(c);
            }
        }
        ink().bind(1);
        shadow.bind(2);
        glEnable(GL_POLYGON_OFFSET_FILL);
        glPolygonOffset(1, 1);
        solid.draw(sorted, solidUniforms, GpuMesh::drawFaces);
        glDisable(GL_POLYGON_OFFSET_FILL);
    }

    private void solid(Program p) {
        boolean lightTheme = !shot.palette.dark();
        p.set("view", view);
        p.set("light", shadow.matrix());
        p.setVec3Array("materials", materials);
        p.colour("edge", lightTheme ? shot.palette.material("edge") : 0x0B0D10);
        p.colour("paper", shot.palette.paper);
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

    private InkScale ink() {
        Theme theme = shot.palette.roles.theme();
        InkScale[] pair = inks.get(theme);
        if (pair == null) {
            pair =
                    new InkScale[] {
                        new InkScale(shot.palette, InkScale.Kind.LOAD),
                        new InkScale(shot.palette, InkScale.Kind.SIGNED)
                    };
            inks.put(theme, pair);
        }
        return pair[shot.ink.ordinal()];
    }

    private void lines() {
        glEnable(GL_BLEND);
        glBlendFuncSeparate(GL_SRC_ALPHA, GL_ONE_MINUS_SRC_ALPHA, GL_ZERO, GL_ONE);
        glDepthMask(false);
        glDisable(GL_CULL_FACE);
        line.draw(sorted, lineUniforms, GpuMesh::drawLines);
        glDepthMask(true);
    }

    private void line(Program p) {
        p.set("view", view);
        var away = shot.view.away();
        p.set("away", (float) away.x(), (float) away.y(), (float) away.z());
        p.set("size", onto.width, onto.height);
        float k = (float) Math.max(0.8, shot.u);
        p.set("widths[0]", 1.15f * k);
        p.set("widths[1]", 0.8f * k);
        p.set("pull", (float) (PULL / shot.reach));
        boolean lightTheme = !shot.palette.dark();
        int edge = shot.palette.material("edge");
        float alpha = (lightTheme ? 0.86f : 0.50f) * (1 - 0.65f * pale);
        p.set("ink", Program.red(edge), Program.green(edge), Program.blue(edge), alpha);
        p.colour("pine", shot.palette.pine);
    }

    private void id(Program p) {
        p.set("view", view);
        p.set("light", shadow.matrix());
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
            ids = new Family("solid", "id", Family.Variants.COIL_ONLY, "ID");
        }
        seen.matrix(width, height, reach, view);
        ids.draw(sorted, idUniforms, GpuMesh::drawFaces);
        glBindVertexArray(0);
        glDisable(GL_SCISSOR_TEST);
        return idTarget.readId(x, fromBelow);
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
        solid.close();
        line.close();
        if (ids != null) {
            ids.close();
        }
        table.close();
        shadow.close();
        closeIf(samples);
        closeIf(idTarget);
    }
}
