// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.paint;

import java.nio.ByteBuffer;
import org.lwjgl.system.MemoryUtil;

/** Repeated tiles, drawn with 8 x 8 samples a pixel so that they meet without a seam. */
final class Tiles {
    private static final int SAMPLES = 8;

    private Tiles() {}

    /**
     * A square tile; the caller's image owns a copy, this buffer is left to the collector of the
     * native heap.
     */
    static ByteBuffer draw(Texture texture, int size, int rgb) {
        ByteBuffer out = org.lwjgl.BufferUtils.createByteBuffer(size * size * 4);
        assert MemoryUtil.memAddress(out) != 0;
        for (int y = 0; y < size; y++) {
            for (int x = 0; x < size; x++) {
                int alpha = Math.round(255f * coverage(texture, size, x, y));
                out.put((byte) (rgb >> 16))
                        .put((byte) (rgb >> 8))
                        .put((byte) rgb)
                        .put((byte) alpha);
            }
        }
        return out.flip();
    }

    private static float coverage(Texture texture, int size, int x, int y) {
        int hit = 0;
        for (int j = 0; j < SAMPLES; j++) {
            for (int i = 0; i < SAMPLES; i++) {
                double px = (x + (i + 0.5) / SAMPLES) / size;
                double py = (y + (j + 0.5) / SAMPLES) / size;
                hit += covers(texture, px, py) ? 1 : 0;
            }
        }
        return (float) hit / (SAMPLES * SAMPLES);
    }

    private static boolean covers(Texture texture, double x, double y) {
        double diagonal = (x + y) - Math.floor(x + y);
        double across = Math.min(diagonal, 1 - diagonal) / Math.sqrt(2);
        return switch (texture) {
            case STRIPES -> across < 2.2 / 6 / 2;
            case HATCH -> across < 0.9 / 6 / 2;
            case DOTS -> near(x, y, 0.25, 0.25) || near(x, y, 0.75, 0.75);
        };
    }

    private static boolean near(double x, double y, double cx, double cy) {
        return Math.hypot(x - cx, y - cy) < 2.1 / 6 / 2 * 0.8;
    }
}
