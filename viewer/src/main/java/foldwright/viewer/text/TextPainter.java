// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.text;

import static org.lwjgl.opengl.GL33C.*;

import foldwright.report.draw.Face;
import foldwright.viewer.gl.Program;
import java.nio.ByteBuffer;
import org.lwjgl.system.MemoryUtil;

/** Collects the letters of a frame and draws them in one call. Baselines lie on whole pixels. */
public final class TextPainter implements AutoCloseable {
    private static final int VERTEX = 20;
    private static final int QUADS = 16_000;

    private final Fonts fonts = Fonts.standard();
    private final GlyphAtlas atlas = new GlyphAtlas(fonts);
    private final Program program = new Program("text", "text");
    private final int array = glGenVertexArrays();
    private final int vertices = glGenBuffers();
    private final int indices = glGenBuffers();
    private final ByteBuffer data = MemoryUtil.memAlloc(QUADS * 4 * VERTEX);
    private int quads;

    public TextPainter() {
        glBindVertexArray(array);
        glBindBuffer(GL_ARRAY_BUFFER, vertices);
        glBufferData(GL_ARRAY_BUFFER, (long) QUADS * 4 * VERTEX, GL_STREAM_DRAW);
        glEnableVertexAttribArray(0);
        glVertexAttribPointer(0, 4, GL_FLOAT, false, VERTEX, 0);
        glEnableVertexAttribArray(1);
        glVertexAttribPointer(1, 4, GL_UNSIGNED_BYTE, true, VERTEX, 16);
        glBindBuffer(GL_ELEMENT_ARRAY_BUFFER, indices);
        glBufferData(GL_ELEMENT_ARRAY_BUFFER, corners(), GL_STATIC_DRAW);
        glBindVertexArray(0);
    }

    private static int[] corners() {
        int[] out = new int[QUADS * 6];
        for (int i = 0; i < QUADS; i++) {
            int v = i * 4;
            int[] quad = {v, v + 1, v + 2, v, v + 2, v + 3};
            System.arraycopy(quad, 0, out, i * 6, 6);
        }
        return out;
    }

    /**
     * Adds a line.
     *
     * @param em size [px], rounded to a quarter
     * @param x left end [px]
     * @param baseline [px from above]
     * @param rgba colour, red in the highest byte
     * @param halo width of the rim [px]; 0 is none
     */
    public void add(
            CharSequence text,
            Face typeface,
            float em,
            float x,
            float baseline,
            int rgba,
            float halo) {
        int size = Math.round(em * 4);
        int rim = Math.round(halo * 4);
        int floor = Math.round(baseline);
        float pen = x;
        for (int i = 0; i < text.length() && quads < QUADS; i++) {
            int code = text.charAt(i);
            Face holder = fonts.holder(typeface, code);
            int step = Math.round(pen * 4);
            int whole = step >> 2;
            int slot = atlas.slot(holder, code, size, step & 3, rim);
            if (atlas.place(slot, 2) > 0) {
                quad(slot, whole + atlas.place(slot, 4), floor + atlas.place(slot, 5), rgba);
            }
            pen += fonts.face(holder).advance(code) * em;
        }
    }

    private void quad(int slot, int left, int top, int rgba) {
        int u = atlas.place(slot, 0);
        int v = atlas.place(slot, 1);
        int w = atlas.place(slot, 2);
        int h = atlas.place(slot, 3);
        vertex(left, top, u, v, rgba);
        vertex(left + w, top, u + w, v, rgba);
        vertex(left + w, top + h, u + w, v + h, rgba);
        vertex(left, top + h, u, v + h, rgba);
        quads++;
    }

    private void vertex(float x, float y, float u, float v, int rgba) {
        data.putFloat(x).putFloat(y).putFloat(u).putFloat(v);
        data.put((byte) (rgba >>> 24))
                .put((byte) (rgba >>> 16))
                .put((byte) (rgba >>> 8))
                .put((byte) rgba);
    }

    /** Draws what was added onto the bound target of this size, and forgets it. */
    public void draw(int width, int height) {
        if (quads == 0) {
            return;
        }
        data.flip();
        glDisable(GL_DEPTH_TEST);
        glDisable(GL_CULL_FACE);
        glEnable(GL_BLEND);
        glBlendFuncSeparate(GL_SRC_ALPHA, GL_ONE_MINUS_SRC_ALPHA, GL_ONE, GL_ONE_MINUS_SRC_ALPHA);
        program.use();
        program.set("size", width, height);
        program.set("glyphs", 0);
        atlas.bind();
        glBindVertexArray(array);
        glBindBuffer(GL_ARRAY_BUFFER, vertices);
        glBufferData(GL_ARRAY_BUFFER, (long) QUADS * 4 * VERTEX, GL_STREAM_DRAW);
        glBufferSubData(GL_ARRAY_BUFFER, 0, data);
        glDrawElements(GL_TRIANGLES, quads * 6, GL_UNSIGNED_INT, 0);
        glBindVertexArray(0);
        data.clear();
        quads = 0;
    }

    @Override
    public void close() {
        MemoryUtil.memFree(data);
        glDeleteBuffers(vertices);
        glDeleteBuffers(indices);
        glDeleteVertexArrays(array);
        program.close();
        atlas.close();
    }
}
