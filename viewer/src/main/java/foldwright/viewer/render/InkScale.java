// SPDX-License-Identifier: Apache-2.0
package foldwright.viewer.render;

import static org.lwjgl.opengl.GL33C.*;

import foldwright.viewer.theme.Palette;
import java.nio.ByteBuffer;
import org.lwjgl.system.MemoryUtil;

/**
 * The load ink as a texture of 256 colours, interpolated in Lab. The legend is drawn from the same
 * colours.
 */
final class InkScale implements AutoCloseable {
    static final int STEPS = 256;
    private final int texture = glGenTextures();

    /** Which scale the ink follows. */
    enum Kind {
        LOAD,
        SIGNED
    }

    InkScale(Palette palette, Kind kind) {
        ByteBuffer data = MemoryUtil.memAlloc(STEPS * 4);
        for (int i = 0; i < STEPS; i++) {
            double share = i / (STEPS - 1.0);
            int c = kind == Kind.LOAD ? palette.load(share) : palette.signed(2 * share - 1);
            data.put((byte) (c >> 16)).put((byte) (c >> 8)).put((byte) c).put((byte) 255);
        }
        data.flip();
        glBindTexture(GL_TEXTURE_2D, texture);
        glPixelStorei(GL_UNPACK_ALIGNMENT, 4);
        glTexImage2D(GL_TEXTURE_2D, 0, GL_RGBA8, STEPS, 1, 0, GL_RGBA, GL_UNSIGNED_BYTE, data);
        MemoryUtil.memFree(data);
        glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MIN_FILTER, GL_LINEAR);
        glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MAG_FILTER, GL_LINEAR);
        glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_WRAP_S, GL_CLAMP_TO_EDGE);
        glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_WRAP_T, GL_CLAMP_TO_EDGE);
    }

    void bind(int unit) {
        glActiveTexture(GL_TEXTURE0 + unit);
        glBindTexture(GL_TEXTURE_2D, texture);
    }

    @Override
    public void close() {
        glDeleteTextures(texture);
    }
}
