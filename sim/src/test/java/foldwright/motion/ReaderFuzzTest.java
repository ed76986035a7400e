// SPDX-License-Identifier: Apache-2.0
package foldwright.motion;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Whatever bytes come, a reader ends with moves or with one named fault; the seed is fixed, so a
 * failure repeats.
 */
class ReaderFuzzTest {
    private static final long SEED = 20261125;
    private static final int FILES = 200_000;
    private static final byte[] SPICE =
            "GMXYZIJKRFPNTS0123456789.-+*;()%/#[]= \t\r\n\0\u00E9"
                    .getBytes(java.nio.charset.StandardCharsets.ISO_8859_1);

    @Test
    void mutatedToolpathsNeverBreakTheReader() throws IOException {
        byte[][] seeds = {
            resource("nist_c1_text.ngc"),
            resource("nist_t12_contour.ngc"),
            Arrays.copyOf(resource("nist_cds_inch.ngc"), 1500)
        };
        Random random = new Random(SEED);
        Move move = new Move();
        for (int i = 0; i < FILES; i++) {
            byte[] text = mutate(seeds[i % seeds.length], random);
            try {
                MoveSource reader =
                        new IsoReader(new ByteArrayInputStream(text), ReaderSettings.standard());
                while (reader.next(move)) {
                    boolean sound =
                            Double.isFinite(move.length())
                                    && move.length() < 1000
                                    && move.feed() >= 0;
                    if (!sound) {
                        throw new AssertionError(
                                "file "
                                        + i
                                        + " of seed "
                                        + SEED
                                        + ": a move that no machine makes");
                    }
                }
            } catch (ToolpathException e) {
                assertThat(e.line()).isPositive();
            } catch (RuntimeException e) {
                throw new AssertionError("file " + i + " of seed " + SEED, e);
            }
        }
    }

    private static byte[] mutate(byte[] seed, Random random) {
        byte[] text = seed.clone();
        int edits = 1 + random.nextInt(12);
        for (int k = 0; k < edits; k++) {
            int at = random.nextInt(text.length);
            switch (random.nextInt(4)) {
                case 0 -> text[at] = SPICE[random.nextInt(SPICE.length)];
                case 1 -> text[at] = (byte) random.nextInt(256);
                case 2 -> text = Arrays.copyOf(text, Math.max(1, at));
                default -> {
                    int from = random.nextInt(text.length);
                    int n = Math.min(random.nextInt(20), text.length - Math.max(at, from));
                    System.arraycopy(text, from, text, at, n);
                }
            }
        }
        return text;
    }

    private static byte[] resource(String name) throws IOException {
        try (InputStream in =
                IsoReader.class.getResourceAsStream("/foldwright/proof/gcode/" + name)) {
            return in.readAllBytes();
        }
    }
}
