// SPDX-License-Identifier: Apache-2.0
package foldwright.report.draw;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * Widths of text from the font files, without kerning (surfaces draw without it, so that measured
 * and drawn widths agree). A sign that a face lacks is measured in the fallback face.
 */
public final class FontMetrics {
    private static final Map<Face, FontMetrics> CACHE = new EnumMap<>(Face.class);

    private final TrueTypeFont font;
    private final CmapLookup glyphs;
    private final double unitsPerEm;
    private final double ascent;
    private final double descent;

    private FontMetrics(TrueTypeFont font) throws IOException {
        this.font = font;
        glyphs = font.getUnicodeCmapLookup();
        unitsPerEm = font.getUnitsPerEm();
        ascent = font.getHorizontalHeader().getAscender() / unitsPerEm;
        descent = -font.getHorizontalHeader().getDescender() / unitsPerEm;
    }

    /** Metrics of a face; read on first use and kept. */
    public static synchronized FontMetrics of(Face face) {
        return CACHE.computeIfAbsent(face, FontMetrics::load);
    }

    private static FontMetrics load(Face face) {
        try (InputStream in = face.open()) {
            return new FontMetrics(new TTFParser().parse(new RandomAccessReadBuffer(in)));
        } catch (IOException e) {
            throw new UncheckedIOException(face.name(), e);
        }
    }

    /** Whether the face has a glyph for the sign. */
    public boolean has(int codePoint) {
        return glyphs.getGlyphId(codePoint) != 0;
    }

    /** Width of a text at the given size [units of the size]. */
    public double width(String text, double size) {
        double units = 0;
        double borrowed = 0;
        for (int i = 0; i < text.length(); ) {
            int sign = text.codePointAt(i);
            i += Character.charCount(sign);
            int glyph = glyphs.getGlyphId(sign);
            if (glyph == 0 && this != fallback()) {
                borrowed += fallback().width(Character.toString(sign), size);
            } else {
                units += advance(glyph);
            }
        }
        return units / unitsPerEm * size + borrowed;
    }

    private static FontMetrics fallback() {
        return of(Face.FALLBACK);
    }

    private double advance(int glyph) {
        try {
            return font.getAdvanceWidth(glyph);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Height above the base line that the face claims, at size 1. */
    public double ascent() {
        return ascent;
    }

    /** Depth below the base line that the face claims, at size 1. */
    public double descent() {
        return descent;
    }
}
