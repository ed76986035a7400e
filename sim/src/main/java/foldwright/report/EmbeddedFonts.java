// SPDX-License-Identifier: Apache-2.0
package foldwright.report;

import foldwright.report.draw.Face;
import foldwright.report.draw.FontMetrics;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TTFSubsetter;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * Style rules that embed the type faces in a document, each cut down to the signs the document
 * uses. The cut faces carry a prefix and another family name, as the licence of the faces asks.
 */
public final class EmbeddedFonts {
    private static final List<Face> FACES =
            List.of(
                    Face.SERIF_MEDIUM,
                    Face.SERIF_SEMIBOLD,
                    Face.SANS,
                    Face.SANS_MEDIUM,
                    Face.SANS_SEMIBOLD,
                    Face.SANS_ITALIC);

    /** What a browser needs; layout features are not used. */
    private static final List<String> TABLES =
            List.of(
                    "head", "hhea", "maxp", "hmtx", "cmap", "glyf", "loca", "name", "post", "OS/2",
                    "cvt ", "fpgm", "prep");

    private EmbeddedFonts() {}

    /** Rules for a text: every face with the signs of the text that it has. */
    public static String rules(String text) {
        return rules(text, FACES);
    }

    /** Rules for a text that uses these faces only. */
    public static String rules(String text, Collection<Face> faces) {
        Set<Integer> signs = new TreeSet<>();
        text.codePoints().filter(c -> c >= ' ').forEach(signs::add);
        StringBuilder out = new StringBuilder();
        Set<Integer> missing = new TreeSet<>();
        for (Face face : faces) {
            FontMetrics metrics = FontMetrics.of(face);
            Set<Integer> own = new TreeSet<>();
            for (int sign : signs) {
                (metrics.has(sign) ? own : missing).add(sign);
            }
            out.append(rule(face, own));
        }
        missing.removeIf(sign -> !FontMetrics.of(Face.FALLBACK).has(sign));
        if (!missing.isEmpty()) {
            out.append(rule(Face.FALLBACK, missing));
        }
        return out.toString();
    }

    private static String rule(Face face, Set<Integer> signs) {
        return String.format(
                Locale.ROOT,
                "@font-face{font-family:'%s';font-weight:%d;font-style:%s;"
                        + "src:url(data:font/ttf;base64,%s) format('truetype')}%n",
                face.family(),
                face.weight(),
                face.slant(),
                Base64.getEncoder().encodeToString(subset(face, signs)));
    }

    private static byte[] subset(Face face, Set<Integer> signs) {
        try (InputStream in = face.open();
                TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in))) {
            TTFSubsetter cut = new TTFSubsetter(font, TABLES);
            cut.setPrefix("FOLDED");
            cut.addAll(signs);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            cut.writeToStream(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(face.name(), e);
        }
    }
}
