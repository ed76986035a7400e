// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.render;

import static org.lwjgl.opengl.GL33C.*;

import foldwright.viewer.gl.Program;
import foldwright.viewer.gl.Target;
import org.joml.Matrix4fc;
import org.joml.Vector3f;

/**
 * The soft shadow on the table: what the shadow map says of the table's points at a quarter of the
 * size, blurred, laid on the paper. Only the box that shadows reach is worked on.
 */
final class TableShadow implements AutoCloseable {
    /** Below this share of the picture the table is seen from its edge. */
    private static final float EDGE_ON = 1e-4f;

    private final Program cast = new Program("whole", "cast");
    private final Program blur = new Program("whole", "blur");
    private final Program table = new Program("whole", "table");
    private final int empty = glGenVertexArrays();
    private final Vector3f corner = new Vector3f();
    private final Vector3f right = new Vector3f();
    private final Vector3f up = new Vector3f();
    private Target small;
    private Target between;
    private int x;
    private int y;
    private int w;
    private int h;

    /** Draws the shadow of the map into a picture of its own, for a picture of this size. */
    void cast(MachineRenderer.Shot shot, Matrix4fc view, ShadowMap map, Extent box, Target whole) {
        size(whole);
        MachineRenderer.state();
        glDisable(GL_DEPTH_TEST);
        glDisable(GL_CULL_FACE);
        glClearColor(0, 0, 0, 0);
        between.bind();
        glClear(GL_COLOR_BUFFER_BIT);
        small.bind();
        glClear(GL_COLOR_BUFFER_BIT);
        box(box, rim(shot), whole);
        if (w == 0 || h == 0 || !points(view, map.matrix())) {
            return;
        }
        glEnable(GL_SCISSOR_TEST);
        glScissor(x / 4, y / 4, w / 4 + 2, h / 4 + 2);
        glBindVertexArray(empty);
        cast.use();
        map.bind(0);
        cast.set("shadow", 0);
        cast.set("corner", corner.x, corner.y, corner.z);
        cast.set("right", right.x, right.y, right.z);
        cast.set("up", up.x, up.y, up.z);
        glDrawArrays(GL_TRIANGLES, 0, 3);
        soften((float) Math.max(0.6, shot.u()));
        glDisable(GL_SCISSOR_TEST);
    }

    private void soften(float step) {
        blur.use();
        blur.set("picture", 0);
        for (int i = 0; i < 2; i++) {
            between.bind();
            small.bindTexture(0);
            blur.set("step", step / small.width, 0);
            glDrawArrays(GL_TRIANGLES, 0, 3);
            small.bind();
            between.bindTexture(0);
            blur.set("step", 0, step / small.height);
            glDrawArrays(GL_TRIANGLES, 0, 3);
        }
    }

    /** Lays the shadow onto the bound picture. */
    void lay(MachineRenderer.Shot shot, float pale) {
        if (w == 0 || h == 0) {
            return;
        }
        glDisable(GL_DEPTH_TEST);
        glEnable(GL_SCISSOR_TEST);
        glScissor(x, y, w, h);
        glBindVertexArray(empty);
        table.use();
        table.set("picture", 0);
        small.bindTexture(0);
        table.colour("paper", shot.palette().paper);
        boolean light = !shot.palette().dark();
        table.colour("ink", light ? shot.palette().ink : 0x000000);
        float shade = light ? 0.17f : shot.view().above ? 0.28f : 0.42f;
        table.set("shade", shade * (1 - 0.7f * pale));
        glDrawArrays(GL_TRIANGLES, 0, 3);
        glDisable(GL_SCISSOR_TEST);
        glEnable(GL_DEPTH_TEST);
    }

    /** How far the blur carries the shadow [px]. */
    static float rim(MachineRenderer.Shot shot) {
        return (float) (40 * Math.max(0.6, shot.u()));
    }

    private void box(Extent e, float rim, Target whole) {
        x = (int) Math.max(0, e.left - rim);
        y = (int) Math.max(0, e.bottom - rim);
        w = Math.max(0, (int) Math.min(whole.width, e.right + rim) - x);
        h = Math.max(0, (int) Math.min(whole.height, e.top + rim) - y);
    }

    /**
     * Where the corners of the picture meet the table, in the map. Both projections are parallel,
     * so all points between follow by straight lines.
     */
    private boolean points(Matrix4fc view, Matrix4fc map) {
        float det = view.m00() * view.m11() - view.m10() * view.m01();
        if (Math.abs(det) < EDGE_ON) {
            return false;
        }
        onTable(-1, -1, view, det, corner);
        onTable(1, -1, view, det, right);
        onTable(-1, 1, view, det, up);
        map.transformPosition(corner).mul(0.5f).add(0.5f, 0.5f, 0.5f);
        map.transformPosition(right).mul(0.5f).add(0.5f, 0.5f, 0.5f).sub(corner);
        map.transformPosition(up).mul(0.5f).add(0.5f, 0.5f, 0.5f).sub(corner);
        return true;
    }

    private static Vector3f onTable(float cx, float cy, Matrix4fc m, float det, Vector3f out) {
        float a = cx - m.m30();
        float b = cy - m.m31();
        return out.set((a * m.m11() - b * m.m10()) / det, (b * m.m00() - a * m.m01()) / det, 0);
    }

    private void size(Target whole) {
        int wide = (whole.width + 3) / 4;
        int high = (whole.height + 3) / 4;
        if (small == null || small.width != wide || small.height != high) {
            closeTargets();
            small = new Target(Target.Form.GREY, wide, high);
            between = new Target(Target.Form.GREY, wide, high);
        }
    }

    private void closeTargets() {
        if (small != null) {
            small.close();
            between.close();
        }
    }

    @Override
    public void close() {
        closeTargets();
        cast.close();
        blur.close();
        table.close();
        glDeleteVertexArrays(empty);
    }
}
