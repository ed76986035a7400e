// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.text;

/** The faces of the sheet, by use. */
public enum Typeface {
    /** Titles. */
    TITLE("SourceSerif4_600SemiBold.ttf"),
    /** Questions. */
    QUESTION("SourceSerif4_500Medium.ttf"),
    /** Plain text. */
    TEXT("SourceSans3-Regular.ttf"),
    /** Values of the second rank. */
    MEDIUM("SourceSans3-Medium.ttf"),
    /** Values of the first rank. */
    STRONG("SourceSans3-Semibold.ttf"),
    /** Lettering that lies on the table, and hints. */
    ITALIC("SourceSans3-It.ttf"),
    /** Signs the others lack. */
    FALLBACK("DejaVuSans.ttf");

    final String file;

    Typeface(String file) {
        this.file = file;
    }
}
