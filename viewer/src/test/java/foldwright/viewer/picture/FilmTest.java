// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jcodec.api.FrameGrab;
import org.jcodec.api.JCodecException;
import org.jcodec.common.io.NIOUtils;
import org.jcodec.common.model.Picture;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A film read back: the right number of pictures, paper within a level, noise of the coding below
 * 40 dB.
 */
class FilmTest {
    private static final int W = 320;
    private static final int H = 184;
    private static final int FRAMES = 30;

    @TempDir Path folder;

    /** Paper with a dark bar that moves and two tinted areas. */
    private static void draw(int index, Pixels into) {
        for (int y = 0; y < H; y++) {
            for (int x = 0; x < W; x++) {
                int rgb = 0xF7F3EA;
                if (Math.abs(x - 40 - 6 * index) < 8 && y > 40 && y < 140) {
                    rgb = 0x2C4D78;
                } else if (y > 150 && x > 200) {
                    rgb = 0xB2CFC9;
                } else if (y > 150 && x < 100) {
                    rgb = 0xE6D3A8;
                }
                int at = ((H - 1 - y) * W + x) * 4;
                into.data
                        .put(at, (byte) (rgb >> 16))
                        .put(at + 1, (byte) (rgb >> 8))
                        .put(at + 2, (byte) rgb);
            }
        }
    }

    @Test
    void comesBackWithinForty() throws IOException, JCodecException {
        Path file = folder.resolve("a.mp4");
        Film.write(file, new Film.Form(W, H, 25, FRAMES), FilmTest::draw);
        List<Picture> frames = new ArrayList<>();
        try (var channel = NIOUtils.readableChannel(file.toFile())) {
            FrameGrab grab = FrameGrab.createFrameGrab(channel);
            Picture p;
            while ((p = grab.getNativeFrame()) != null) {
                frames.add(p.cloneCropped());
            }
        }
        assertThat(frames).hasSize(FRAMES);
        try (Pixels expected = new Pixels(W, H)) {
            for (int i : new int[] {0, 7, 29}) {
                draw(i, expected);
                double sum = 0;
                for (int y = 0; y < H; y++) {
                    for (int x = 0; x < W; x++) {
                        int rgb = expected.rgb(x, y);
                        double luma =
                                16
                                        + (0.2126 * (rgb >> 16 & 255)
                                                        + 0.7152 * (rgb >> 8 & 255)
                                                        + 0.0722 * (rgb & 255))
                                                * 219
                                                / 255;
                        double got =
                                frames.get(i)
                                                .getPlaneData(0)[
                                                y * frames.get(i).getPlaneWidth(0) + x]
                                        + 128;
                        sum += (luma - got) * (luma - got);
                    }
                }
                double psnr = 10 * Math.log10(255 * 255 / (sum / (W * H)));
                assertThat(psnr).as("picture " + i).isGreaterThan(40);
                assertPaper(frames.get(i));
            }
        }
    }

    /** Luma and both chroma of paper at a corner far from all edges, BT.709. */
    private static void assertPaper(Picture frame) {
        double y = 16 + (0.2126 * 247 + 0.7152 * 243 + 0.0722 * 234) * 219 / 255;
        double cb = 128 + (234 - (0.2126 * 247 + 0.7152 * 243 + 0.0722 * 234)) / 1.8556 * 224 / 255;
        double cr = 128 + (247 - (0.2126 * 247 + 0.7152 * 243 + 0.0722 * 234)) / 1.5748 * 224 / 255;
        assertThat(frame.getPlaneData(0)[20 * frame.getPlaneWidth(0) + 20] + 128.0)
                .isBetween(y - 1, y + 1);
        assertThat(frame.getPlaneData(1)[10 * frame.getPlaneWidth(1) + 10] + 128.0)
                .isBetween(cb - 1, cb + 1);
        assertThat(frame.getPlaneData(2)[10 * frame.getPlaneWidth(2) + 10] + 128.0)
                .isBetween(cr - 1, cr + 1);
    }
}
