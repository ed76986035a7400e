// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.text;

import static org.lwjgl.opengl.GL33C.*;

import foldwright.report.draw.Face;
import java.nio.ByteBuffer;
import java.util.Arrays;
import org.lwjgl.stb.STBTruetype;
import org.lwjgl.system.MemoryStack;
import org.lwjgl.system.MemoryUtil;

/**
 * Pictures of glyphs, one for each face, size, quarter-pixel step and halo width, packed in rows
 * into one grey texture of 2048 x 2048 px. When it is full it starts anew, which costs one slow
 * frame.
 */
final class GlyphAtlas implements AutoCloseable {
    static final int SIZE = 2048;
    private static final double DARKEN = 1 / 1.15;

    private final int texture;
    private final Fonts fonts;
    private long[] keys = new long[4096];

    /** Of each key: x, y, width, height in the texture; left and top from the pen [px]. */
    private short[] places = new short[4096 * 6];

    private int count;
    private int penX;
    private int penY;
    private int rowHeight;

    GlyphAtlas(Fonts fonts) {
        this.fonts = fonts;
        texture = glGenTextures();
        glBindTexture(GL_TEXTURE_2D, texture);
        ByteBuffer empty = MemoryUtil.memCalloc(SIZE * SIZE);
        glPixelStorei(GL_UNPACK_ALIGNMENT, 1);
        glTexImage2D(GL_TEXTURE_2D, 0, GL_R8, SIZE, SIZE, 0, GL_RED, GL_UNSIGNED_BYTE, empty);
        MemoryUtil.memFree(empty);
        glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MIN_FILTER, GL_NEAREST);
        glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MAG_FILTER, GL_NEAREST);
        clear();
    }

    private void clear() {
        Arrays.fill(keys, -1);
        count = 0;
        penX = 0;
        penY = 0;
        rowHeight = 0;
    }

    void bind() {
        glActiveTexture(GL_TEXTURE0);
        glBindTexture(GL_TEXTURE_2D, texture);
    }

    /** The glyph and its picture; the slot indexes {@link #place}. */
    int slot(Face typeface, int code, int quarterSize, int quarterStep, int quarterHalo) {
        int glyph = fonts.face(typeface).glyph(code);
        long key =
                ((((long) typeface.ordinal() << 20 | glyph) << 12 | quarterSize) << 2 | quarterStep)
                                << 8
                        | quarterHalo;
        int slot = find(key);
        if (keys[slot] == key) {
            return slot;
        }
        if (count * 2 > keys.length) {
            grow();
            slot = find(key);
        }
        keys[slot] = key;
        count++;
        render(
                fonts.face(typeface),
                glyph,
                quarterSize / 4f,
                quarterStep / 4f,
                quarterHalo / 4f,
                slot);
        return slot;
    }

    int place(int slot, int field) {
        return places[slot * 6 + field];
    }

    private int find(long key) {
        int mask = keys.length - 1;
        int slot = (int) ((key * 0x9E3779B97F4A7C15L) >>> 40) & mask;
        while (keys[slot] != -1 && keys[slot] != key) {
            slot = (slot + 1) & mask;
        }
        return slot;
    }

    private void grow() {
        long[] oldKeys = keys;
        short[] oldPlaces = places;
        keys = new long[oldKeys.length * 2];
        places = new short[oldPlaces.length * 2];
        Arrays.fill(keys, -1);
        for (int i = 0; i < oldKeys.length; i++) {
            if (oldKeys[i] != -1) {
                int slot = find(oldKeys[i]);
                keys[slot] = oldKeys[i];
                System.arraycopy(oldPlaces, i * 6, places, slot * 6, 6);
            }
        }
    }

    private void render(Fonts.Opened face, int glyph, float em, float shift, float halo, int slot) {
        float scale = em * face.perEm;
        int margin = halo > 0 ? (int) Math.ceil(halo) + 1 : 0;
        try (MemoryStack stack = MemoryStack.stackPush()) {
            var x0 = stack.mallocInt(1);
            var y0 = stack.mallocInt(1);
            var x1 = stack.mallocInt(1);
            var y1 = stack.mallocInt(1);
            STBTruetype.stbtt_GetGlyphBitmapBoxSubpixel(
                    face.info, glyph, scale, scale, shift, 0, x0, y0, x1, y1);
            int w = x1.get(0) - x0.get(0);
            int h = y1.get(0) - y0.get(0);
            if (w <= 0 || h <= 0) {
                store(slot, 0, 0, 0, 0, 0, 0);
                return;
            }
            ByteBuffer image = MemoryUtil.memCalloc(w * h);
            STBTruetype.stbtt_MakeGlyphBitmapSubpixel(
                    face.info, image, w, h, w, scale, scale, shift, 0, glyph);
            ByteBuffer ready = halo > 0 ? widened(image, w, h, halo, margin) : darkened(image);
            upload(
                    slot,
                    ready,
                    w + 2 * margin,
                    h + 2 * margin,
                    x0.get(0) - margin,
                    y0.get(0) - margin);
            MemoryUtil.memFree(ready);
            if (ready != image) {
                MemoryUtil.memFree(image);
            }
        }
    }

    private static ByteBuffer darkened(ByteBuffer image) {
        for (int i = 0; i < image.capacity(); i++) {
            double coverage = (image.get(i) & 255) / 255.0;
            image.put(i, (byte) Math.round(255 * Math.pow(coverage, DARKEN)));
        }
        return image;
    }

    /** The shape widened by a disc with a soft border of one pixel. */
    private static ByteBuffer widened(ByteBuffer image, int w, int h, float halo, int margin) {
        int wide = w + 2 * margin;
        int high = h + 2 * margin;
        ByteBuffer out = MemoryUtil.memCalloc(wide * high);
        for (int y = 0; y < h; y++) {
            for (int x = 0; x < w; x++) {
                int coverage = image.get(y * w + x) & 255;
                if (coverage > 0) {
                    stamp(out, wide, x + margin, y + margin, coverage, halo, margin);
                }
            }
        }
        return out;
    }

    private static void stamp(
            ByteBuffer out, int wide, int cx, int cy, int coverage, float halo, int margin) {
        for (int dy = -margin; dy <= margin; dy++) {
            for (int dx = -margin; dx <= margin; dx++) {
                double soft = halo + 0.5 - Math.sqrt(dx * dx + dy * dy);
                if (soft > 0) {
                    int at = (cy + dy) * wide + cx + dx;
                    int value = (int) (coverage * Math.min(1, soft));
                    if (value > (out.get(at) & 255)) {
                        out.put(at, (byte) value);
                    }
                }
            }
        }
    }

    private void upload(int slot, ByteBuffer image, int w, int h, int left, int top) {
        if (penX + w + 1 > SIZE) {
            penX = 0;
            penY += rowHeight + 1;
            rowHeight = 0;
        }
        if (penY + h > SIZE) {
            long key = keys[slot];
            clear();
            keys[slot] = key;
            count = 1;
        }
        glBindTexture(GL_TEXTURE_2D, texture);
        glPixelStorei(GL_UNPACK_ALIGNMENT, 1);
        glPixelStorei(GL_UNPACK_ROW_LENGTH, 0);
        glPixelStorei(GL_UNPACK_SKIP_PIXELS, 0);
        glPixelStorei(GL_UNPACK_SKIP_ROWS, 0);
        glTexSubImage2D(GL_TEXTURE_2D, 0, penX, penY, w, h, GL_RED, GL_UNSIGNED_BYTE, image);
        store(slot, penX, penY, w, h, left, top);
        penX += w + 1;
        rowHeight = Math.max(rowHeight, h);
    }

    private void store(int slot, int x, int y, int w, int h, int left, int top) {
        int at = slot * 6;
        places[at] = (short) x;
        places[at + 1] = (short) y;
        places[at + 2] = (short) w;
        places[at + 3] = (short) h;
        places[at + 4] = (short) left;
        places[at + 5] = (short) top;
    }

    @Override
    public void close() {
        glDeleteTextures(texture);
    }
}
