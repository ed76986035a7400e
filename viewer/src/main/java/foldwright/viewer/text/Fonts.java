// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.text;

import foldwright.report.draw.Face;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.lwjgl.stb.STBTTFontinfo;
import org.lwjgl.stb.STBTruetype;
import org.lwjgl.system.MemoryStack;
import org.lwjgl.system.MemoryUtil;

/**
 * Metrics of the faces, without any GL context. Sizes are the em in pixels. Kerning is left out:
 * against kerned setting lines differ by less than 1 %.
 */
public final class Fonts {
    private static final int KNOWN = 0x2300;
    private static Fonts standard;

    private final Map<Face, Opened> faces = new EnumMap<>(Face.class);

    /** One open face; its memory lives as long as the program. */
    static final class Opened {
        final STBTTFontinfo info;
        final ByteBuffer data;
        final float perEm;
        final float[] advances = new float[KNOWN];
        final int[] glyphs = new int[KNOWN];

        Opened(ByteBuffer data, String file) {
            this.data = data;
            info = STBTTFontinfo.create();
            if (!STBTruetype.stbtt_InitFont(info, data)) {
                throw new IllegalStateException("font " + file + " cannot be read");
            }
            perEm = STBTruetype.stbtt_ScaleForMappingEmToPixels(info, 1);
            java.util.Arrays.fill(glyphs, -1);
        }

        int glyph(int code) {
            if (code >= KNOWN) {
                return STBTruetype.stbtt_FindGlyphIndex(info, code);
            }
            if (glyphs[code] < 0) {
                glyphs[code] = STBTruetype.stbtt_FindGlyphIndex(info, code);
                advances[code] = measure(glyphs[code]);
            }
            return glyphs[code];
        }

        float advance(int code) {
            int glyph = glyph(code);
            return code < KNOWN ? advances[code] : measure(glyph);
        }

        private float measure(int glyph) {
            try (MemoryStack stack = MemoryStack.stackPush()) {
                var wide = stack.mallocInt(1);
                var left = stack.mallocInt(1);
                STBTruetype.stbtt_GetGlyphHMetrics(info, glyph, wide, left);
                return wide.get(0) * perEm;
            }
        }
    }

    private Fonts() {}

    /** The faces of the sheet, opened on first use. */
    public static synchronized Fonts standard() {
        if (standard == null) {
            standard = new Fonts();
        }
        return standard;
    }

    synchronized Opened face(Face typeface) {
        Opened known = faces.get(typeface);
        if (known == null) {
            known = new Opened(load(typeface), typeface.name());
            faces.put(typeface, known);
        }
        return known;
    }

    private static ByteBuffer load(Face face) {
        try (InputStream in = face.open()) {
            byte[] bytes = in.readAllBytes();
            return MemoryUtil.memAlloc(bytes.length).put(bytes).flip();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The face that has this sign: the one asked for, else the fallback. */
    Face holder(Face wanted, int code) {
        return face(wanted).glyph(code) != 0 ? wanted : Face.FALLBACK;
    }

    /**
     * Advance width of a line.
     *
     * @param em size [px]
     * @return width [px]
     */
    public float width(Face typeface, float em, CharSequence text) {
        float sum = 0;
        for (int i = 0; i < text.length(); i++) {
            int code = text.charAt(i);
            sum += face(holder(typeface, code)).advance(code);
        }
        return sum * em;
    }

    /**
     * Breaks at blanks so that no line is wider than {@code room} [px], unless a single word is.
     */
    public List<String> lines(Face typeface, float em, String text, float room) {
        List<String> out = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(" ", -1)) {
            if (line.length() > 0 && width(typeface, em, line + " " + word) > room) {
                out.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() > 0 ? " " : "").append(word);
        }
        out.add(line.toString());
        return out;
    }

    /** The text, or its longest beginning that fits with an ellipsis. */
    public String fit(Face typeface, float em, String text, float room) {
        if (width(typeface, em, text) <= room) {
            return text;
        }
        int end = text.length();
        while (end > 0
                && width(typeface, em, text.substring(0, end).stripTrailing() + "…") > room) {
            end--;
        }
        return text.substring(0, end).stripTrailing() + "…";
    }
}
