// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.picture;

import foldwright.viewer.gl.Target;
import java.nio.ByteBuffer;
import org.lwjgl.system.MemoryUtil;

/** A finished picture in memory: RGBA, bottom row first, as OpenGL gives it. */
public final class Pixels implements AutoCloseable {
    public final int width;
    public final int height;
    public final ByteBuffer data;

    public Pixels(int width, int height) {
        this.width = width;
        this.height = height;
        data = MemoryUtil.memAlloc(width * height * 4);
    }

    /** Reads a target. */
    public static Pixels of(Target target) {
        Pixels pixels = new Pixels(target.width, target.height);
        target.read(pixels.data);
        return pixels;
    }

    /** 0xRRGGBB at a pixel, y from above. */
    public int rgb(int x, int y) {
        int at = ((height - 1 - y) * width + x) * 4;
        return (data.get(at) & 255) << 16 | (data.get(at + 1) & 255) << 8 | data.get(at + 2) & 255;
    }

    @Override
    public void close() {
        MemoryUtil.memFree(data);
    }
}
