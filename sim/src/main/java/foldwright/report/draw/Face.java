// SPDX-License-Identifier: Apache-2.0
package foldwright.report.draw;

import java.io.InputStream;

/** The type faces, stored unmodified with their licences. */
public enum Face {
    SERIF_MEDIUM("SourceSerif4_500Medium.ttf", "Foldwright Serif", 500, "normal"),
    SERIF_SEMIBOLD("SourceSerif4_600SemiBold.ttf", "Foldwright Serif", 600, "normal"),
    SANS("SourceSans3-Regular.ttf", "Foldwright Sans", 400, "normal"),
    SANS_MEDIUM("SourceSans3-Medium.ttf", "Foldwright Sans", 500, "normal"),
    SANS_SEMIBOLD("SourceSans3-Semibold.ttf", "Foldwright Sans", 600, "normal"),
    SANS_ITALIC("SourceSans3-It.ttf", "Foldwright Sans", 400, "italic"),
    /** Only for signs the others lack. */
    FALLBACK("DejaVuSans.ttf", "Foldwright Signs", 400, "normal");

    private static final String FOLDER = "/foldwright/report/fonts/";

    private final String file;
    private final String family;
    private final int weight;
    private final String slant;

    Face(String file, String family, int weight, String slant) {
        this.file = file;
        this.family = family;
        this.weight = weight;
        this.slant = slant;
    }

    /** The TrueType file; the caller closes it. */
    public InputStream open() {
        InputStream in = Face.class.getResourceAsStream(FOLDER + file);
        if (in == null) {
            throw new IllegalStateException("missing from the program: " + FOLDER + file);
        }
        return in;
    }

    /** Family name under which a page embeds the face. */
    public String family() {
        return family;
    }

    /** Weight in the sense of CSS. */
    public int weight() {
        return weight;
    }

    /** "normal" or "italic". */
    public String slant() {
        return slant;
    }
}
