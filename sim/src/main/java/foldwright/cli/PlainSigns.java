// SPDX-License-Identifier: Apache-2.0
package foldwright.cli;

import java.io.FilterWriter;
import java.io.IOException;
import java.io.Writer;
import java.nio.charset.Charset;
import java.text.Normalizer;
import java.util.Map;

/**
 * Writes text in ASCII: signs become the nearest plain ones, so that units and verdicts stay
 * readable.
 */
final class PlainSigns extends FilterWriter {
    /** Signs the program prints most; a terminal that has them has all of them. */
    private static final String SAMPLE = "●◆✕○×·→°−²μ";

    private static final Map<Integer, String> PLAIN =
            Map.ofEntries(
                    Map.entry((int) '●', "o"),
                    Map.entry((int) '◆', "^"),
                    Map.entry((int) '✕', "x"),
                    Map.entry((int) '○', "?"),
                    Map.entry((int) '×', "x"),
                    Map.entry((int) '·', "."),
                    Map.entry((int) '→', ">"),
                    Map.entry((int) '°', "deg"),
                    Map.entry((int) '−', "-"),
                    Map.entry((int) '–', "-"),
                    Map.entry((int) '±', "+-"),
                    Map.entry((int) '≥', ">="),
                    Map.entry((int) '≤', "<="),
                    Map.entry((int) 'µ', "u"),
                    Map.entry((int) 'μ', "mu"),
                    Map.entry((int) 'π', "pi"),
                    Map.entry((int) 'θ', "theta"),
                    Map.entry((int) 'λ', "lambda"),
                    Map.entry((int) 'φ', "phi"),
                    Map.entry((int) 'σ', "sigma"),
                    Map.entry((int) 'τ', "tau"),
                    Map.entry((int) 'Ω', "ohm"),
                    Map.entry((int) 'ß', "ss"),
                    Map.entry((int) '“', "\""),
                    Map.entry((int) '”', "\""),
                    Map.entry((int) '’', "'"));

    PlainSigns(Writer to) {
        super(to);
    }

    /** Whether a character set holds the signs of this program. */
    static boolean shownIn(Charset charset) {
        return charset.canEncode() && charset.newEncoder().canEncode(SAMPLE);
    }

    /** The text in ASCII. */
    static String of(String text) {
        StringBuilder plain = new StringBuilder(text.length());
        text.codePoints().forEach(c -> plain.append(of(c)));
        return plain.toString();
    }

    private static String of(int sign) {
        if (sign < 0x80) {
            return Character.toString(sign);
        }
        if (Character.isSpaceChar(sign)) {
            return " ";
        }
        String plain = PLAIN.get(sign);
        if (plain != null) {
            return plain;
        }
        // ä is a with a mark, ² is a 2 set high.
        String bare =
                Normalizer.normalize(Character.toString(sign), Normalizer.Form.NFKD)
                        .replaceAll("[^\\x00-\\x7f]", "");
        return bare.isEmpty() ? "?" : bare;
    }

    @Override
    public void write(int c) throws IOException {
        out.write(of(Character.toString(c)));
    }

    @Override
    public void write(char[] text, int from, int length) throws IOException {
        out.write(of(new String(text, from, length)));
    }

    @Override
    public void write(String text, int from, int length) throws IOException {
        out.write(of(text.substring(from, from + length)));
    }
}
