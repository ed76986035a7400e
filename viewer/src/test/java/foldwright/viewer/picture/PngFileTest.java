// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Pictures come back as written, read by the platform's own reader. */
class PngFileTest {
    @TempDir Path folder;

    static Pixels noise(int w, int h, long seed) {
        Pixels pixels = new Pixels(w, h);
        Random random = new Random(seed);
        for (int i = 0; i < w * h; i++) {
            boolean flat = i / w % 3 != 0;
            pixels.data.put(4 * i, (byte) (flat ? 247 : random.nextInt(256)));
            pixels.data.put(4 * i + 1, (byte) (flat ? 243 : random.nextInt(256)));
            pixels.data.put(4 * i + 2, (byte) (flat ? 234 : random.nextInt(256)));
            pixels.data.put(4 * i + 3, (byte) 255);
        }
        return pixels;
    }

    @Test
    void everyPixelComesBack() throws IOException {
        Path file = folder.resolve("a.png");
        try (Pixels pixels = noise(61, 37, 7)) {
            PngFile.write(pixels, file);
            var image = ImageIO.read(file.toFile());
            for (int y = 0; y < 37; y++) {
                for (int x = 0; x < 61; x++) {
                    assertThat(image.getRGB(x, y) & 0xFFFFFF).isEqualTo(pixels.rgb(x, y));
                }
            }
        }
        try (var files = Files.list(folder)) {
            assertThat(files).containsExactly(file);
        }
    }

    @Test
    void gifKeepsItsColoursAndPlacesAcrossFrames() throws IOException {
        Path file = folder.resolve("a.gif");
        try (Pixels first = noise(40, 30, 1);
                Pixels second = noise(40, 30, 1)) {
            for (int i = 0; i < 40 * 4; i++) {
                second.data.put(4 * (600 + i), (byte) 30);
            }
            Film.write(
                    file,
                    new Film.Form(40, 30, 25, 2),
                    (index, into) -> {
                        into.data.put(0, index == 0 ? first.data : second.data, 0, 40 * 30 * 4);
                    });
        }
        var reader = ImageIO.getImageReadersByFormatName("gif").next();
        try (var in = ImageIO.createImageInputStream(file.toFile())) {
            reader.setInput(in);
            assertThat(reader.getNumImages(true)).isEqualTo(2);
            // Row 1 from below is flat paper: kept exactly, being the most frequent colour.
            assertThat(reader.read(0).getRGB(5, 28) & 0xFFFFFF).isEqualTo(0xF7F3EA);
            assertThat(reader.read(1).getHeight()).isLessThan(30);
        } finally {
            reader.dispose();
        }
    }

    @Test
    void nothingIsLeftWhenAPictureFails() {
        Path file = folder.resolve("b.png");
        assertThatThrownBy(
                        () ->
                                WholeFile.write(
                                        file,
                                        out -> {
                                            out.write(1);
                                            throw new IOException("full");
                                        }))
                .hasMessage("full");
        assertThat(folder.toFile().list()).isEmpty();
    }
}
